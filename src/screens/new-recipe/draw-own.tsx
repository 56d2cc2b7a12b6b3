import { useState } from 'react';
import { STYLES, styleById } from '../../core/styles';
import { styleReader } from '../../state/own-styles';
import { noteMissingPart } from '../../state/results/unanswered';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { SelectField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { useSay } from '../../ui/words';
import { usePickingWords } from '../../ui/words/picking-words';

/** What drawing starts from: one panel, or a style of ours by its id. */
type From = 'floor' | 'wall' | { readonly style: string };

interface DrawOwnProps {
  /** Makes the box with this style text and opens it for drawing. */
  readonly onDraw: (styleId: string, ownStyle: string, name: string) => void;
}

/** A style of the maker's own, drawn from one panel or from a style that has a file. What draws is fetched when it is asked for. */
export function DrawOwn({ onDraw }: DrawOwnProps) {
  const words = usePickingWords();
  const say = useSay();
  const unit = useWorkbook((state) => state.settings.unit);
  const [known, setKnown] = useState<readonly string[]>([]);
  const [styleId, setStyleId] = useState('');
  const chosen = known.includes(styleId) ? styleId : (known[0] ?? '');
  const drafting = () => Promise.all([import('../../core/draft/first-draft'), styleReader()]);
  const list = async () => {
    const [{ draftFromStyle }] = await drafting();
    setKnown(STYLES.filter((style) => draftFromStyle(style, style.name) !== null).map(({ id }) => id));
  };
  const draw = async (from: From) => {
    const [{ draftFromStyle, emptyBase }, { bringOwnStyle }] = await drafting();
    const style = typeof from === 'object' ? styleById(from.style) : undefined;
    const name = style ? words.drawnFrom(say(style.name)) : words.drawnName;
    const text =
      typeof from === 'object' ? style && draftFromStyle(style, name) : emptyBase(from, name, unit);
    const made = text && bringOwnStyle(text);
    if (made) onDraw(made.id, text, name);
  };
  const start = (from: From) => void draw(from).catch(noteMissingPart);
  return (
    <section className="own-net" aria-labelledby="draw-own-head">
      <h2 id="draw-own-head">{words.drawOwn}</h2>
      <p>{words.drawOwnWhy}</p>
      <div className="own-net-acts">
        <Button tone="act" onClick={() => start('floor')}>
          {words.drawFloor}
        </Button>
        <Button onClick={() => start('wall')}>{words.drawWall}</Button>
      </div>
      <Opening
        head={words.drawFrom}
        onToggle={(open) => {
          if (open && known.length === 0) void list().catch(noteMissingPart);
        }}
      >
        <div className="own-net-acts draw-from">
          <SelectField
            label={words.drawFromStyle}
            value={chosen}
            choices={known.map((id) => ({ id, label: say(styleById(id)?.name ?? id) }))}
            onChange={setStyleId}
          />
          <Button disabled={chosen === ''} onClick={() => start({ style: chosen })}>
            {words.drawFromThis}
          </Button>
        </div>
      </Opening>
    </section>
  );
}

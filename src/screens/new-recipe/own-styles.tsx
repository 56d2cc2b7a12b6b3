import { useState } from 'react';
import { type BoxStyle, styleById } from '../../core/styles';
import { type PickedStyle, readPickedStyle } from '../../state/intents/read-picked-style';
import { noteMissingPart } from '../../state/results/unanswered';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { FilePick } from '../../ui/fields/file-pick';
import { StylePicture } from '../../ui/folded/style-picture';
import { StyleTiles } from '../../ui/folded/style-tiles';
import { usePickingWords } from '../../ui/words/picking-words';
import { ReasonAndRemedy } from './reason-and-remedy';
import { RefusedFile } from './refused-file';
import { StyleProofView } from './style-proof-view';

interface OwnStylesProps {
  readonly onMake: (style: BoxStyle, ownStyle: string) => void;
}

/** Styles of the maker's own: those that boxes of the shelf have, and one brought in by a file, tried at many sizes before it is used. */
export function OwnStyles({ onMake }: OwnStylesProps) {
  const words = usePickingWords();
  const [picked, setPicked] = useState<PickedStyle | null>(null);
  const texts = useOwnTexts();
  return (
    <section className="own-net" aria-labelledby="own-style-head">
      {texts.size > 0 && (
        <>
          <h2>{words.ownStyles}</h2>
          <StyleTiles
            styles={[...texts.keys()]}
            explained
            onChoose={(id) => {
              const style = styleById(id);
              const text = style && texts.get(style);
              if (style && text !== undefined) onMake(style, text);
            }}
          />
        </>
      )}
      <h2 id="own-style-head">{words.ownStyle}</h2>
      <p>{words.ownStyleWhy}</p>
      <FilePick
        label={words.bringStyle}
        accept=".json,application/json"
        onPick={([file]) => void readPickedStyle(file).then(setPicked, noteMissingPart)}
      />
      {picked && <Picked picked={picked} onMake={onMake} onLeave={() => setPicked(null)} />}
    </section>
  );
}

/** The styles that boxes of the shelf bring with them, each with its text. */
function useOwnTexts(): ReadonlyMap<BoxStyle, string> {
  const recipes = useWorkbook((state) => state.rows.recipes);
  const texts = new Map<BoxStyle, string>();
  for (const { styleId, ownStyle } of recipes.values()) {
    const style = ownStyle === undefined ? undefined : styleById(styleId);
    if (style && ownStyle !== undefined && !texts.has(style)) texts.set(style, ownStyle);
  }
  return texts;
}

function Picked({
  picked,
  onMake,
  onLeave,
}: OwnStylesProps & { readonly picked: PickedStyle; readonly onLeave: () => void }) {
  const words = usePickingWords();
  if (!picked.ok)
    return (
      <div className="own-net-picked">
        <RefusedFile
          title={words.styleRefused}
          refusals={picked.refusals}
          say={(refusal) => <ReasonAndRemedy of={refusal} />}
        />
        <Button tone="quiet" onClick={onLeave}>
          {words.leave}
        </Button>
      </div>
    );
  const { style, text } = picked;
  return (
    <div className="own-net-picked">
      <div className="own-style-look">
        <StylePicture style={style} />
        <p>
          <strong>{style.name}</strong> {style.goodFor} <span className="soft">{style.watchOut}</span>
        </p>
      </div>
      <StyleProofView style={style} text={text} />
      <div className="own-net-acts">
        <Button tone="act" onClick={() => onMake(style, text)}>
          {words.makeStyle}
        </Button>
        <Button tone="quiet" onClick={onLeave}>
          {words.leave}
        </Button>
      </div>
    </div>
  );
}

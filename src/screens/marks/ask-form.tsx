import { Link } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { markToolOf } from '../../core/answers';
import type { BoxNet } from '../../core/net';
import { type BoxStyle, optionsFor } from '../../core/styles';
import { type Ticks, ticks } from '../../core/units';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { Button } from '../../ui/fields/button';
import { LengthField } from '../../ui/fields/length-field';
import { lengthWords, sizeWords, useRuler } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import { pageAddress, SHELF, stockAddress, type Workbook } from '../../ui/frame/addresses';
import { Opening } from '../../ui/frame/opening';
import { usePageWords, useSay } from '../../ui/words';
import type { NamedSheet } from './marks-ask';
import type { MarksEdits } from './marks-edits';

interface AskFormProps {
  readonly recipe: Recipe;
  readonly net: BoxNet;
  readonly style: BoxStyle;
  readonly edits: MarksEdits;
  readonly need: readonly [Ticks, Ticks, Ticks];
  readonly fromContents: boolean;
  readonly workbook: Workbook;
  readonly slack: Ticks;
  readonly onSlack: (slack: Ticks) => void;
  readonly sheets: readonly NamedSheet[];
  readonly sheetId: string;
  readonly onSheet: (id: string) => void;
  readonly turnedBack: (() => void) | null;
}

/** What is asked: the room, how far sizes may grow, the sheet, the tool, and what must stay as it is. */
export function AskForm(props: AskFormProps) {
  const words = usePageWords().marks;
  const say = useSay();
  const ruler = useRuler();
  const { recipe, need, fromContents, workbook, slack, sheets, sheetId, turnedBack } = props;
  return (
    <form className="marks-ask" aria-labelledby="marks-ask-head" onSubmit={(event) => event.preventDefault()}>
      <h2 id="marks-ask-head">{words.asked}</h2>
      <div>
        <p className="marks-need">{words.need(sizeWords(need, ruler))}</p>
        <p className="soft">
          {fromContents ? words.fromContents : words.fromBox}{' '}
          {!fromContents && <Link to={pageAddress(workbook, 'contents', recipe.id)}>{words.toContents}</Link>}
        </p>
        {turnedBack && (
          <p>
            {words.turnedNow}{' '}
            <Button tone="quiet" onClick={turnedBack}>
              {words.turnBack}
            </Button>
          </p>
        )}
      </div>
      <LengthField
        label={words.slack}
        help={words.slackHelp}
        value={slack}
        least={ticks(0)}
        most={ticks(16256)}
        onChange={props.onSlack}
      />
      <SelectField
        label={words.sheet}
        value={sheetId}
        choices={sheets.map(({ id, name }) => ({ id, label: say(name) }))}
        onChange={props.onSheet}
      />
      <ToolInHand />
      <Opening head={words.held} open={(recipe.held?.length ?? 0) > 0}>
        <Held {...props} />
      </Opening>
    </form>
  );
}

function ToolInHand() {
  const words = usePageWords().marks;
  const ruler = useRuler();
  const tool = useToolInHand();
  const { reach, grooves, stylus } = markToolOf(tool, ruler);
  const say = (length: Ticks) => lengthWords(length, ruler);
  return (
    <div className="marks-tool">
      <strong>{words.tool}</strong>
      {tool ? (
        <p>
          {words.toolMarks(tool.name, say(ruler.finest), say(reach))}{' '}
          {grooves && `${words.grooves(grooves.length)} `}
          {stylus !== undefined && words.stylus(say(stylus))}
        </p>
      ) : (
        <p>{words.noTool}</p>
      )}
      <Link className="link-alone" to={tool ? stockAddress('tools', tool.id) : SHELF}>
        {words.toShelf}
      </Link>
    </div>
  );
}

/** Every size, allowance and way of construction can be kept. */
function Held({ recipe, net, style, edits }: AskFormProps) {
  const words = usePageWords().marks;
  const say = useSay();
  const ruler = useRuler();
  const held = recipe.held ?? [];
  const sizes = Object.entries(style.symbols).map(([name, { label }]) => {
    const value = net.values[name];
    return {
      name,
      says: value === undefined ? say(label) : words.holdAt(say(label), lengthWords(value, ruler)),
    };
  });
  const ways = optionsFor(style, net.options).map(([name, { label, choices }]) => {
    const chosen = choices.find(({ id }) => id === net.options[name]) ?? choices[0];
    return { name, says: words.holdAt(say(label), say(chosen?.label ?? '')) };
  });
  return (
    <fieldset className="marks-held">
      <legend>{words.heldWhy}</legend>
      {[...sizes, ...ways].map(({ name, says }) => (
        <label key={says}>
          <input
            type="checkbox"
            checked={held.includes(name)}
            onChange={(event) => edits.hold(name, event.target.checked)}
          />
          {says}
        </label>
      ))}
    </fieldset>
  );
}

import type { Bow, Dressing, Tie } from '../../../shared/workbook';
import { outsideSize, tieLength } from '../../core/dress';
import type { BoxNet } from '../../core/net';
import { whyTie } from '../../core/plan/why/dressing-why';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { markAbove, type Ticks, ticks } from '../../core/units';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { CountStepper } from '../../ui/fields/count-stepper';
import { LengthField } from '../../ui/fields/length-field';
import { Length } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import { usePageWords } from '../../ui/words';
import type { DressingEdits } from './dressing-edits';
import { SupplyFields, SupplyRow } from './supply-row';
import { WhyList } from './why-list';

interface TieListProps {
  readonly net: BoxNet;
  readonly dressing: Dressing;
  readonly edits: DressingEdits;
  readonly boxes: number;
  readonly mark: Ticks;
}

const WRAPS = ['cross', 'over-front', 'over-sides', 'ring', 'none', 'pull'] as const;
const NOTHING = ticks(0);
/** source: common practice, no source: loops of 2 in, tails of 2 1/2 in, 1 1/2 in for the knot. */
const USUAL_BOW: Bow = { loops: 2, loopMm: 50.8, tailMm: 63.5, knotMm: 38.1 };

/** Ribbon and twine: how long a piece is cut for each box, and from which supply. */
export function TieList({ net, dressing, edits, boxes, mark }: TieListProps) {
  const words = usePageWords().dressing;
  const ties = dressing.ties ?? [];
  if (ties.length === 0) return null;
  return (
    <section aria-labelledby="ties-head">
      <h3 id="ties-head">{words.ties}</h3>
      <ul className="dressing-rows">
        {ties.map((tie) => {
          const cut = markAbove(tieLength(outsideSize(net), tie), mark);
          return (
            <SupplyRow
              key={tie.id}
              each={tie}
              among="ties"
              edits={edits}
              boxes={boxes}
              size={<Length of={cut} both />}
            >
              <WhyList why={whyTie(net, tie, cut)} />
              <TieFields tie={tie} edits={edits} pulls={outsideSize(net).threaded > 0} />
            </SupplyRow>
          );
        })}
      </ul>
    </section>
  );
}

function TieFields({ tie, edits, pulls }: { tie: Tie; edits: DressingEdits; pulls: boolean }) {
  const words = usePageWords().dressing;
  const supplies = useWorkbook((state) => state.rows.supplies);
  const rolls = ownOf(supplies, tie.supplyId).filter(({ kind }) => kind === 'ribbon' || kind === 'twine');
  const { bow } = tie;
  const set = (label: string, change: Partial<Tie>) => edits.setTie(label, { ...tie, ...change });
  return (
    <div className="dressing-fields">
      <SupplyFields each={tie} from={rolls} onChange={set} />
      <SelectField
        label={words.wrap}
        of={tie.name}
        value={tie.wrap}
        choices={WRAPS.filter((id) => id !== 'pull' || pulls || tie.wrap === 'pull').map((id) => ({
          id,
          label: words.wraps[id],
        }))}
        onChange={(id) => set(words.wrap, { wrap: WRAPS.find((wrap) => wrap === id) ?? 'none' })}
      />
      <div className="field">
        <span className="field-name">{words.perBox}</span>
        <CountStepper
          label={`${words.perBox}: ${tie.name}`}
          value={tie.perBox}
          least={1}
          most={20}
          onChange={(perBox) => set(words.perBox, { perBox })}
        />
      </div>
      <ChoiceStrip
        named
        label={words.bow}
        value={bow ? 'with' : 'without'}
        choices={[
          { id: 'with', label: words.withBow },
          { id: 'without', label: words.withoutBow },
        ]}
        onChange={(id) => set(words.bow, { bow: id === 'with' ? USUAL_BOW : null })}
      />
      {bow && (
        <>
          <div className="field">
            <span className="field-name">{words.bowParts.loops}</span>
            <CountStepper
              label={words.bowParts.loops}
              value={bow.loops}
              most={20}
              onChange={(loops) => set(words.bow, { bow: { ...bow, loops } })}
            />
          </div>
          {(['loopMm', 'tailMm', 'knotMm'] as const).map((part) => (
            <LengthField
              key={part}
              label={words.bowParts[part]}
              help={words.bowHelp[part]}
              value={ticksOfMm(bow[part])}
              least={NOTHING}
              onChange={(length) => set(words.bowParts[part], { bow: { ...bow, [part]: mmOfTicks(length) } })}
            />
          ))}
        </>
      )}
    </div>
  );
}

import {
  estimateCaliperUm,
  FINISHES,
  readCaliperUm,
  readGrammage,
  weightWays,
} from '../../../shared/catalogue';
import type { Paper } from '../../../shared/workbook';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { millimetres, type Ticks } from '../../core/units';
import { useWorkbook } from '../../state/use-workbook';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { CountStepper } from '../../ui/fields/count-stepper';
import { LengthField } from '../../ui/fields/length-field';
import { NumberField } from '../../ui/fields/number-field';
import { TextField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { Swatch } from '../../ui/frame/swatch';
import { useWords } from '../../ui/words';
import { PackList } from './pack-list';

const EDGES = ['left', 'right', 'near', 'far'] as const;
const LEAST = millimetres(20);

/** A paper as it is bought: its true sheet, grain, weight, thickness, packs, and how many lie on hand. */
export function PaperForm({ paper }: { paper: Paper }) {
  const words = useWords().stock;
  const edit = useWorkbook((state) => state.edit);
  const set = (label: string, change: Partial<Paper>) =>
    void edit('papers', paper.id, label, (old) => ({ ...old, ...change }));
  return (
    <form className="stock-form" onSubmit={(event) => event.preventDefault()}>
      <TextField label={words.name} value={paper.name} onChange={(name) => set(words.name, { name })} />
      <div className="field">
        <label htmlFor="paper-colour" className="field-name">
          {words.colour}
        </label>
        <span className="stock-colour">
          <Swatch colour={paper.colour} large />
          <input
            id="paper-colour"
            type="color"
            value={paper.colour}
            onChange={(event) => set(words.colour, { colour: event.target.value })}
          />
        </span>
      </div>
      <SheetFields paper={paper} set={set} />
      <WeightFields paper={paper} set={set} />
      <div className="field">
        <span className="field-name">{words.onHand}</span>
        <CountStepper
          label={words.onHand}
          value={paper.onHandSheets}
          onChange={(onHandSheets) => set(words.onHand, { onHandSheets })}
        />
      </div>
      <PackList
        packs={paper.packs}
        holds={{ field: 'sheets', label: words.packOf, most: 10_000 }}
        first={{ sheets: 25, priceMinor: 0 }}
        onChange={(label, packs) => set(label, { packs })}
      />
      <Opening head={words.squaring}>
        <p className="soft">{words.squaringWhy}</p>
        <div className="stock-edges">
          {EDGES.map((edge) => (
            <LengthField
              key={edge}
              label={words.edges[edge]}
              value={ticksOfMm(paper.squaringMm[edge])}
              onChange={(length) =>
                set(words.squaring, { squaringMm: { ...paper.squaringMm, [edge]: mmOfTicks(length) } })
              }
            />
          ))}
        </div>
      </Opening>
    </form>
  );
}

interface FieldsProps {
  readonly paper: Paper;
  readonly set: (label: string, change: Partial<Paper>) => void;
}

/** The sheet: its true size, its grain, and whether its print has a way up. */
function SheetFields({ paper, set }: FieldsProps) {
  const words = useWords().stock;
  const edit = useWorkbook((state) => state.edit);
  const together = {
    fields: [
      { label: words.across, value: ticksOfMm(paper.acrossMm), least: LEAST },
      { label: words.up, value: ticksOfMm(paper.upMm), least: LEAST },
    ],
    onAll: ([across, up]: readonly Ticks[]) =>
      across && up && set(words.across, { acrossMm: mmOfTicks(across), upMm: mmOfTicks(up) }),
  };
  return (
    <>
      <LengthField
        label={words.across}
        help={words.trueSize}
        value={ticksOfMm(paper.acrossMm)}
        least={LEAST}
        together={together}
        onChange={(length) => set(words.across, { acrossMm: mmOfTicks(length) })}
      />
      <LengthField
        label={words.up}
        value={ticksOfMm(paper.upMm)}
        least={LEAST}
        together={together}
        onChange={(length) => set(words.up, { upMm: mmOfTicks(length) })}
      />
      <ChoiceStrip
        named
        label={words.grain}
        value={paper.grain}
        choices={[
          { id: 'across', label: words.grainAcross },
          { id: 'up', label: words.grainUp },
          { id: 'none', label: words.grainNone },
        ]}
        onChange={(grain) => set(words.grain, { grain })}
      />
      <ChoiceStrip
        named
        label={words.print}
        value={paper.oneWay ? 'one-way' : 'any-way'}
        choices={[
          { id: 'any-way', label: words.printAnyWay },
          { id: 'one-way', label: words.printOneWay },
        ]}
        onChange={(id) =>
          void edit('papers', paper.id, words.print, ({ oneWay: _, ...old }) =>
            id === 'one-way' ? { ...old, oneWay: true } : old,
          )
        }
      />
    </>
  );
}

/** Weight and thickness. */
function WeightFields({ paper, set }: FieldsProps) {
  const words = useWords().stock;
  const uncoated = FINISHES[0]!;
  return (
    <>
      <NumberField
        label={words.gsm}
        unit="g/m²"
        value={paper.gsm}
        least={30}
        most={1000}
        read={readGrammage}
        refusal={words.gsmRefused}
        help={
          <p>
            {words.weighs(weightWays(paper))} {words.gsmHelp}
          </p>
        }
        onChange={(gsm) => set(words.gsm, { gsm })}
      />
      <NumberField
        label={words.caliper}
        unit="mm"
        decimals={3}
        value={paper.caliperUm}
        least={50}
        most={2000}
        read={(text) => readCaliperUm(text, 'mm')}
        refusal={words.caliperRefused}
        help={<p>{words.caliperHelp((estimateCaliperUm(paper.gsm, uncoated.bulk) / 1000).toFixed(2))}</p>}
        onChange={(caliperUm) => set(words.caliper, { caliperUm })}
      />
    </>
  );
}

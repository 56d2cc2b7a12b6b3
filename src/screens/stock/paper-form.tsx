import { Plus, Trash2 } from 'lucide-react';
import { mmOfTicks, ticksOfMm } from '../../../shared/lengths';
import type { Paper } from '../../../shared/workbook';
import { millimetres } from '../../core/units';
import { useWorkbook } from '../../state/use-workbook';
import { Button, IconButton } from '../../ui/button';
import { ChoiceStrip } from '../../ui/choice-strip';
import { CountStepper } from '../../ui/count-stepper';
import { LengthField } from '../../ui/length-field';
import { NumberField } from '../../ui/number-field';
import { Opening } from '../../ui/opening';
import { Swatch } from '../../ui/swatch';
import { TextField } from '../../ui/text-field';
import { useWords } from '../../ui/words';
import { OfferFields, withOffer } from './offer-fields';

const EDGES = ['left', 'right', 'near', 'far'] as const;
const LEAST = millimetres(20);

/** A paper as it is bought: its true sheet, grain, weight, thickness, packs, and how many lie in the cupboard. */
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
      <LengthField
        label={words.across}
        help={words.trueSize}
        value={ticksOfMm(paper.acrossMm)}
        least={LEAST}
        onChange={(length) => set(words.across, { acrossMm: mmOfTicks(length) })}
      />
      <LengthField
        label={words.up}
        value={ticksOfMm(paper.upMm)}
        least={LEAST}
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
      <NumberField
        label={words.gsm}
        unit="g/m²"
        value={paper.gsm}
        least={30}
        most={1000}
        onChange={(gsm) => set(words.gsm, { gsm })}
      />
      <NumberField
        label={words.caliper}
        unit="mm"
        decimals={3}
        value={paper.caliperUm}
        least={50}
        most={2000}
        onChange={(caliperUm) => set(words.caliper, { caliperUm })}
      />
      <div className="field">
        <span className="field-name">{words.onHand}</span>
        <CountStepper
          label={words.onHand}
          value={paper.onHandSheets}
          onChange={(onHandSheets) => set(words.onHand, { onHandSheets })}
        />
      </div>
      <fieldset className="packs">
        <legend>{words.packs}</legend>
        {paper.packs.map((pack, place) => {
          const put = (change: Partial<typeof pack>) =>
            set(words.packs, {
              packs: paper.packs.map((old, at) => (at === place ? { ...old, ...change } : old)),
            });
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: packs have no names, and keep their order
            <div className="pack-row" key={place}>
              <NumberField
                label={words.packOf}
                value={pack.sheets}
                least={1}
                most={10_000}
                onChange={(sheets) => put({ sheets })}
              />
              <NumberField
                label={words.packPrice}
                decimals={2}
                value={pack.priceMinor}
                least={0}
                most={100_000_000}
                onChange={(priceMinor) => put({ priceMinor })}
              />
              <OfferFields
                offer={pack.offer}
                onChange={(offer) =>
                  set(words.offer, {
                    packs: paper.packs.map((old, at) => (at === place ? withOffer(old, offer) : old)),
                  })
                }
              />
              <IconButton
                label={words.removePack(place + 1)}
                icon={<Trash2 />}
                onClick={() => set(words.packs, { packs: paper.packs.filter((_, at) => at !== place) })}
              />
            </div>
          );
        })}
        {paper.packs.length < 10 && (
          <Button
            tone="quiet"
            icon={<Plus aria-hidden="true" />}
            onClick={() => set(words.packs, { packs: [...paper.packs, { sheets: 25, priceMinor: 0 }] })}
          >
            {words.addPack}
          </Button>
        )}
      </fieldset>
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

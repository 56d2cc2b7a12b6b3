import { useCallback } from 'react';
import type { Carrier, FavorEvent } from '../../../shared/workbook';
import { drawCrate } from '../../core/draw/sheet/crate-drawing';
import type { CarriedLine, CarryPlan } from '../../core/plan';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { millimetres, ticks } from '../../core/units';
import { DrawingView, type Space } from '../../ui/drawing/drawing-view';
import { Button } from '../../ui/fields/button';
import { CountStepper } from '../../ui/fields/count-stepper';
import { LengthField } from '../../ui/fields/length-field';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';
import type { EventEdits } from './event-edits';

/** A banana box, and room for a finger. source: common practice, no source; measure your own */
const USUAL_CRATE: Carrier = { widthMm: 381, depthMm: 279.4, heightMm: 228.6, wiggleMm: 3.175, layers: 1 };

const SIDES = ['widthMm', 'depthMm', 'heightMm'] as const;

interface CarryFormProps {
  readonly event: FavorEvent;
  readonly edits: EventEdits;
  readonly carry: CarryPlan | null;
}

/** What the finished favors are carried in: how they stand, and how many crates. */
export function CarryForm({ event, edits, carry }: CarryFormProps) {
  const { carrying: words } = usePageWords();
  const crate = event.carry;
  return (
    <Opening head={<strong>{words.head}</strong>} open={crate !== undefined}>
      <p className="soft">{words.why}</p>
      {crate ? (
        <>
          <div className="event-fields event-fields-narrow">
            {SIDES.map((side) => (
              <LengthField
                key={side}
                label={words.sides[side]}
                value={ticksOfMm(crate[side])}
                least={millimetres(20)}
                onChange={(length) =>
                  edits.setCarry(words.sides[side], { ...crate, [side]: mmOfTicks(length) })
                }
              />
            ))}
            <LengthField
              label={words.wiggle}
              value={ticksOfMm(crate.wiggleMm)}
              least={ticks(0)}
              onChange={(length) => edits.setCarry(words.wiggle, { ...crate, wiggleMm: mmOfTicks(length) })}
            />
            <div className="field">
              <span className="field-name">{words.layers}</span>
              <CountStepper
                label={words.layers}
                value={crate.layers}
                least={1}
                most={10}
                onChange={(layers) => edits.setCarry(words.layers, { ...crate, layers })}
              />
              <p className="field-note">{words.layersHelp}</p>
            </div>
          </div>
          <label className="guest-tick">
            <input
              type="checkbox"
              checked={crate.mayLie ?? false}
              onChange={({ target }) => {
                const { mayLie: _, ...upright } = crate;
                edits.setCarry(words.mayLie, target.checked ? { ...upright, mayLie: true } : upright);
              }}
            />
            {words.mayLie}
          </label>
          {carry && <Crates carry={carry} />}
          <div>
            <Button onClick={() => edits.setCarry(words.remove, undefined)}>{words.remove}</Button>
          </div>
        </>
      ) : (
        <div>
          <Button onClick={() => edits.setCarry(words.begin, USUAL_CRATE)}>{words.begin}</Button>
        </div>
      )}
    </Opening>
  );
}

function Crates({ carry }: { carry: CarryPlan }) {
  const { carrying: words, hours } = usePageWords();
  return (
    <>
      {carry.lines.length > 0 && (
        <p>
          <strong>{words.crates(carry.crates)}</strong>
        </p>
      )}
      <ul className="carry-lines">
        {carry.lines.map((line) => (
          <li key={line.lineId}>
            <p>{words.line(line)}</p>
            <LayerView carry={carry} line={line} />
          </li>
        ))}
      </ul>
      <p>{carry.fillOn === null ? words.fillLate : words.fillOn(hours.day(carry.fillOn))}</p>
      <p>{words.keepDry}</p>
    </>
  );
}

function LayerView({ carry: { floor }, line: { layer } }: { carry: CarryPlan; line: CarriedLine }) {
  const draw = useCallback((space: Space) => drawCrate(floor, layer, space), [floor, layer]);
  return (
    <div className="carry-layer">
      <DrawingView draw={draw} still />
    </div>
  );
}

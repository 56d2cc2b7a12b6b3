import { type ReactNode, useState } from 'react';
import { type Draft, panelOf } from '../../core/draft/draft';
import { isRectangle } from '../../core/draft/sides';
import { type LyingSlit, moveSlit, slitsOf, snapLength, snapMove } from '../../core/draft/slits';
import type { PieceNet } from '../../core/net/types';
import type { At } from '../../core/plane';
import { millimetres, type Ticks, ticks, toMm } from '../../core/units';
import { PX_PER_MM } from '../../ui/drawing/ink-on-screen';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { Grip, type Move } from './grip';
import { LengthPlate } from './length-plate';
import { usePanelNames } from './panel-names';
import type { DraftEdits } from './use-draft';

/** How far the grips are from the slit, so that it can be seen between them. source: our own, CSS pixels */
const OFF = 18 / PX_PER_MM;

type Held = 'whole' | 'low' | 'high';
/** How far a slit’s lower or left end is moved, and how much longer it gets. */
interface Change {
  readonly by: readonly [Ticks, Ticks];
  readonly longer: Ticks;
}
const STILL: Change = { by: [ticks(0), ticks(0)], longer: ticks(0) };

interface SlitsOf {
  readonly draft: Draft;
  readonly piece: PieceNet;
  readonly values: Readonly<Record<string, Ticks>>;
  readonly edits: DraftEdits;
}

/** The slits of the panel that is selected, each moved and made longer by its grips. */
export function useSlits({ draft, piece, values, edits }: SlitsOf) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const ruler = useRuler();
  const [pulled, setPulled] = useState<{
    readonly at: number;
    readonly held: Held;
    readonly change: Change;
  } | null>(null);
  const { place, make } = edits;
  const panel = place.edge === undefined ? panelOf(draft, place) : undefined;
  const ring = piece.faces.find((face) => face.panel === place.panel)?.ring ?? [];
  const slits = isRectangle(panel) && ring.length > 0 ? slitsOf(panel, values) : [];
  const corner = [Math.min(...ring.map(({ x }) => x)), Math.min(...ring.map(({ y }) => y))] as const;

  const take = (slit: LyingSlit, nth: number, { by, longer }: Change) => {
    if (by[0] === 0 && by[1] === 0 && longer === 0) return;
    make(
      words.changes.slit[longer === 0 ? 'moved' : 'pulled'](nth + 1, names.panel(place.panel)),
      moveSlit(place, slit.at, by, longer),
    );
  };

  const hands = (at: (card: At) => At): ReactNode =>
    slits.map((slit, nth) => {
      const now = pulled?.at === slit.at ? pulled : null;
      const { by, longer } = now?.change ?? STILL;
      const low = [0, 1].map((axis) => toMm((corner[axis] ?? 0) + (slit.from[axis] ?? 0) + (by[axis] ?? 0)));
      const long = toMm(slit.long + longer);
      const [x = 0, y = 0] = low;
      const [a, b] = [at([x, y]), at(slit.runs === 'across' ? [x + long, y] : [x, y + long])];
      const middle: At = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
      const level = slit.runs === 'across';
      const places = gripsOf(a, b, middle, level);
      const length = lengthWords(ticks(slit.long + longer), ruler);
      const left = lengthWords(ticks(slit.from[0] + by[0]), ruler);
      const up = lengthWords(ticks(slit.from[1] + by[1]), ruler);
      const where = words.slitAt(left, up);
      return (
        <g key={slit.at}>
          <path d={`M${a.join(' ')}L${b.join(' ')}`} className="style-ghost-edge style-ghost" />
          {(['whole', 'low', 'high'] as const).map((held) => (
            <Grip
              key={held}
              at={places[held]}
              along={held === 'whole' ? 'both' : level ? 'across' : 'up'}
              label={words.slitGrips[held](nth + 1, names.panel(place.panel))}
              says={held === 'whole' ? where : length}
              mm={held === 'whole' ? toMm(slit.from[0]) : toMm(slit.long)}
              scale={at([1, 0])[0] - at([0, 0])[0]}
              onPull={(way) =>
                setPulled(
                  way === null
                    ? null
                    : { at: slit.at, held, change: changeOf(slit, held, inTicks(way), ruler.finest) },
                )
              }
              onDrop={(way) => take(slit, nth, changeOf(slit, held, inTicks(way), ruler.finest))}
              onStep={([across, up]) =>
                take(
                  slit,
                  nth,
                  changeOf(slit, held, [across * ruler.finest, up * ruler.finest], ruler.finest),
                )
              }
            />
          ))}
          {now && (
            <LengthPlate
              at={[middle[0], middle[1] + OFF]}
              says={now.held === 'whole' ? `→ ${left} ↑ ${up}` : length}
            />
          )}
        </g>
      );
    });
  return { hands };
}

const inTicks = ([across, up]: Move): readonly [number, number] => [millimetres(across), millimetres(up)];

/** What a hand does to a slit when it moves so far, in ticks. */
function changeOf(
  slit: LyingSlit,
  held: Held,
  [across, up]: readonly [number, number],
  finest: Ticks,
): Change {
  if (held === 'whole') return { by: snapMove(slit, [across, up], finest), longer: ticks(0) };
  const way = slit.runs === 'across' ? across : up;
  const longer = way === 0 ? ticks(0) : snapLength(slit, held === 'low' ? -way : way, finest);
  const back = ticks(held === 'low' ? -longer : 0);
  return { by: slit.runs === 'across' ? [back, ticks(0)] : [ticks(0), back], longer };
}

/** Where the grips of a slit are: beside its middle and beyond its ends. */
function gripsOf(a: At, b: At, middle: At, level: boolean): Readonly<Record<Held, At>> {
  return {
    whole: level ? [middle[0], middle[1] - OFF] : [middle[0] + OFF, middle[1]],
    low: level ? [a[0] - OFF, a[1]] : [a[0], a[1] + OFF],
    high: level ? [b[0] + OFF, b[1]] : [b[0], b[1] - OFF],
  };
}

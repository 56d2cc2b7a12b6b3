import { AROUND } from '../net/hinge-frame';
import { evaluateForm, formOf } from '../styles/language/linear-form';
import type { Len } from '../styles/language/types';
import { nearestMark, type Ticks, ticks } from '../units';
import { type Draft, type Edit, type Place, panelOf, type RectangleDraft, taken } from './draft';
import { shareOf, withTicksMore } from './forms';
import { type Hole, holesOf, withHole } from './holes';
import { axisOf, DIRECTIONS, hangsOn, isRectangle, isSide } from './sides';

type Slit = Extract<Hole, { readonly hole: 'slit' }>;
type Pair = readonly [number, number];

/** A slit in its panel: how far its lower or left end is from the panel’s left and lower edge. */
export interface LyingSlit {
  /** Which of the panel’s openings it is. */
  readonly at: number;
  readonly runs: 'across' | 'up';
  readonly long: Ticks;
  readonly from: readonly [left: Ticks, low: Ticks];
}

/** Which ways `along` and `out` of a panel’s hinge run on the flat net. The first panel is measured from its lower left corner. */
function waysOf(panel: RectangleDraft): { readonly along: Pair; readonly out: Pair } {
  const edge = hangsOn(panel)?.edge;
  return isSide(edge)
    ? { along: DIRECTIONS[AROUND[edge].end], out: DIRECTIONS[edge] }
    : { along: [1, 0], out: [0, 1] };
}

/** The middle of an opening in the frame of its panel’s hinge; worked out where the opening says none. */
export function middleForms(panel: RectangleDraft, hole: Hole): readonly [along: Len, out: Len] {
  if ('at' in hole) return hole.at;
  const edge = hangsOn(panel)?.edge;
  const [across, up] = [shareOf(panel.size[0], [1, 2]), shareOf(panel.size[1], [1, 2])];
  return isSide(edge) && axisOf(edge) === 0 ? [up, across] : [across, up];
}

/** Every slit of a rectangle. Values in ticks by name. */
export function slitsOf(
  panel: RectangleDraft,
  values: Readonly<Record<string, Ticks>>,
): readonly LyingSlit[] {
  const of = (text: Len): number => evaluateForm(formOf(text), values);
  const size: Pair = [of(panel.size[0]), of(panel.size[1])];
  const { along, out } = waysOf(panel);
  return (panel.holes ?? []).flatMap((hole, at): LyingSlit[] => {
    if (hole.hole !== 'slit') return [];
    const [far, deep] = middleForms(panel, hole).map(of) as unknown as Pair;
    const long = ticks(of(hole.long));
    const from = ([0, 1] as const).map((axis) => {
      const way = along[axis] * far + out[axis] * deep;
      const middle = along[axis] + out[axis] > 0 ? way : size[axis] + way;
      return ticks(Math.round((hole.runs === 'across') === (axis === 0) ? middle - long / 2 : middle));
    });
    return [{ at, runs: hole.runs, long, from: from as unknown as LyingSlit['from'] }];
  });
}

/** A move across and up that puts the slit’s end on marks, counted from the panel’s left and lower edge. */
export const snapMove = ({ from }: LyingSlit, [across, up]: Pair, finest: Ticks): readonly [Ticks, Ticks] => {
  const on = (was: Ticks, by: number): Ticks =>
    ticks(by === 0 ? 0 : nearestMark(ticks(Math.round(was + by)), finest) - was);
  return [on(from[0], across), on(from[1], up)];
};

/** How much longer a slit gets for a pull by `by`: its length ends on a mark, and is one mark at least. */
export const snapLength = ({ long }: LyingSlit, by: number, finest: Ticks): Ticks =>
  ticks(Math.max(finest, nearestMark(ticks(Math.round(long + by)), finest)) - long);

/** Moves a slit across and up as the net lies, and makes it longer by `longer`, all in ticks; its lower or left end is what is moved. */
export const moveSlit =
  (place: Place, at: number, [across, up]: readonly [Ticks, Ticks], longer: Ticks = ticks(0)): Edit =>
  (draft: Draft) => {
    const panel = panelOf(draft, place);
    const hole = holesOf(panel)[at];
    if (!isRectangle(panel) || hole?.hole !== 'slit') return taken(draft);
    const { along, out } = waysOf(panel);
    const half = longer / 2;
    const [dx, dy] = hole.runs === 'across' ? [across + half, up] : [across, up + half];
    const [far, deep] = middleForms(panel, hole);
    const changed: Partial<Slit> = {
      long: withTicksMore(hole.long, longer) ?? hole.long,
      at: [
        withTicksMore(far, along[0] * dx + along[1] * dy) ?? far,
        withTicksMore(deep, out[0] * dx + out[1] * dy) ?? deep,
      ],
    };
    return taken(withHole(draft, place, at, () => ({ ...hole, ...changed })));
  };

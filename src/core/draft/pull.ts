import { AROUND } from '../net/hinge-frame';
import { evaluateForm, formOf } from '../styles/language/linear-form';
import type { Len } from '../styles/language/types';
import { nearestMark, type Ticks, ticks } from '../units';
import { type Draft, type Edit, type Place, panelOf, taken, withPanel } from './draft';
import { readable, withTicksMore } from './forms';
import { axisOf, hangsOn, isFlatRectangle, isRectangle, isSide, SIDES, type Side } from './sides';
import { changeSize } from './sizes';

/** A straight edge of a rectangle that can be pulled, and what its length depends on. */
export interface Pull {
  readonly place: Place;
  readonly side: Side;
  readonly axis: 0 | 1;
  readonly form: Len;
  /** A size of the box that this length grows with, one for one. Pulled, it changes wherever it is used. */
  readonly size: string | null;
  /** The hinge starts at this edge, so that a pull of this panel alone also moves where it starts. */
  readonly starts: boolean;
}

type Values = Readonly<Record<string, Ticks>>;

/** What a pull at this edge changes; null at an edge that is slanted or curved, and at the hinge. */
export function pullAt(draft: Draft, place: Place): Pull | null {
  const panel = panelOf(draft, place);
  const side = place.edge;
  if (!isFlatRectangle(panel) || !isSide(side)) return null;
  const hinge = hangsOn(panel);
  if (hinge !== null && !isSide(hinge.edge)) return null;
  const round = hinge === null ? null : AROUND[hinge.edge as Side];
  if (side === round?.hinge) return null;
  const alongHinge = side === round?.start || side === round?.end;
  if (alongHinge && panel.taper !== undefined) return null;
  const axis = axisOf(side);
  const form = panel.size[axis];
  const read = readable(form);
  if (read === null) return null;
  const size = read.terms.find(({ name, times }) => times === read.over && name in draft.symbols);
  return { place, side, axis, form, size: size?.name ?? null, starts: side === round?.start };
}

/** Every edge of a panel that can be pulled. */
export const pullsOf = (draft: Draft, place: Place): readonly Pull[] =>
  SIDES.flatMap((edge) => pullAt(draft, { ...place, edge }) ?? []);

const plain = (text: Len): Ticks => evaluateForm(formOf(text), {});

/**
 * How much longer an edge gets, in ticks, for a hand that has pulled it by `by`. What changes ends on a mark of the tool: the size, within its
 * limits; or, for the panel `alone`, the plain length in its sum. The panel stays at least one mark long.
 */
export function snapPull(
  draft: Draft,
  values: Values,
  { form, size }: Pull,
  { by, finest, alone }: { readonly by: number; readonly finest: Ticks; readonly alone: boolean },
): Ticks {
  const symbol = alone || size === null ? undefined : draft.symbols[size];
  if (symbol !== undefined && size !== null) {
    const now = values[size] ?? ticks(0);
    const on = nearestMark(ticks(Math.round(now + by)), finest);
    return ticks(Math.min(Math.max(on, plain(symbol.min)), plain(symbol.max)) - now);
  }
  const read = formOf(form);
  const now = Math.round(read.constant / read.over);
  const least = finest - evaluateForm(read, values);
  const snapped = nearestMark(ticks(Math.round(now + by)), finest) - now;
  return ticks(snapped >= least ? snapped : Math.ceil((now + least) / finest) * finest - now);
}

/** Which limit of its size a length has reached; null for neither. */
export function limitAt(draft: Draft, size: string, length: Ticks): 'least' | 'most' | null {
  const symbol = draft.symbols[size];
  if (symbol === undefined) return null;
  return length === plain(symbol.min) ? 'least' : length === plain(symbol.max) ? 'most' : null;
}

/** How long the edge is now, across or up. */
export const lengthOfPull = ({ form }: Pull, values: Values): Ticks => evaluateForm(formOf(form), values);

/** What the length is made of after the pull, as a form: the size itself, or the panel’s own sum. */
export function pulledForm(draft: Draft, values: Values, pull: Pull, by: Ticks, alone: boolean): Len | null {
  if (alone || pull.size === null) return withTicksMore(pull.form, by);
  const was = draft.symbols[pull.size]?.default ?? '0 in';
  const wanted = (values[pull.size] ?? 0) + by;
  return withTicksMore(was, wanted - evaluateForm(formOf(was), values));
}

/** Makes an edge longer or shorter: by the size that it depends on, or on its panel alone. */
export const pullEdge =
  (pull: Pull, values: Values, by: Ticks, alone: boolean): Edit =>
  (draft) => {
    const form = pulledForm(draft, values, pull, by, alone);
    if (form === null || by === 0) return taken(draft);
    if (!alone && pull.size !== null) return changeSize(pull.size, { default: form })(draft);
    return taken(
      withPanel(draft, pull.place, (panel) => {
        if (!isRectangle(panel)) return panel;
        const size: [Len, Len] = pull.axis === 0 ? [form, panel.size[1]] : [panel.size[0], form];
        const at = pull.starts ? movedStart(panel.at ?? '0 in', by) : null;
        return { ...panel, size, ...(at === null ? {} : { at }) };
      }),
    );
  };

/** A start that is earlier by so much, if need be before the corner of its parent. */
function movedStart(at: Len, by: Ticks): Len | null {
  const later = withTicksMore(at, -by);
  if (later !== null) return later;
  const before = withTicksMore('0 in', by - plain(at));
  return before === null ? null : `-${before}`;
}

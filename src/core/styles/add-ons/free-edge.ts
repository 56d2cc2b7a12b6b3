import { TICKS_PER_MM } from '../../units/ticks';
import { formOf } from '../language/linear-form';
import type { Len, PanelSpec, Values } from '../language/types';
import { inMm } from './extension';

type Spot = readonly [along: Len, out: Len];

/** Sums of forms, each so many halves of it, as one form. */
export function sumOf(...parts: readonly (readonly [form: Len, halves: number])[]): Len {
  const terms = parts.flatMap(([text, halves]) => {
    const { terms, constant, over } = formOf(text);
    const part = (times: number, unit: string): string =>
      times === 0 ? '' : `${times * halves < 0 ? '-' : '+'} ${Math.abs(times * halves)}/${2 * over} ${unit}`;
    const said = [
      ...terms.map(({ name, times }) => part(times, name)),
      part(constant, `mm / ${TICKS_PER_MM}`),
    ];
    return said.filter((each) => each !== '');
  });
  return terms.length === 0 ? '0' : terms.join(' ');
}

const half = (form: Len): Len => sumOf([form, 1]);
const less = (form: Len, taken: Len): Len => sumOf([form, 2], [taken, -2]);

/** A spot given across and up in a rectangle as its net lies, in the frame of the score it hangs by. */
function inHingeFrame(on: string | undefined, size: Spot, [x, y]: Spot): Spot {
  switch (on?.split('.')[1]) {
    case undefined:
      return [x, y];
    case 'up':
      return [less(size[0], x), y];
    case 'down':
      return [x, less(size[1], y)];
    case 'right':
      return [y, x];
    case 'left':
      return [less(size[1], y), less(size[0], x)];
    default:
      throw new RangeError(`a rectangle on ${on} does not lie as its net does`);
  }
}

/** The middle of an edge, so far within the panel: where a hole below a rim goes. Only rectangles, and edges of an outline across from its score. */
export function withinEdge(spec: PanelSpec, edge: string, within: Len): Spot {
  if ('size' in spec) {
    const [across, up] = spec.size;
    const spots: Readonly<Record<string, Spot>> = {
      up: [half(across), less(up, within)],
      down: [half(across), within],
      left: [within, half(up)],
      right: [less(across, within), half(up)],
    };
    return inHingeFrame(spec.on, spec.size, spots[edge] ?? [half(across), half(up)]);
  }
  const [from, to] = cornersAcross(spec, edge);
  return [sumOf([from[0], 1], [to[0], 1]), less(from[1], within)];
}

/** How long an edge is, and how far the panel reaches from it to the score it hangs by, mm. */
export function reachAt(spec: PanelSpec, edge: string, values: Values): { long: number; deep: number } {
  if ('size' in spec) {
    const [across, up] = spec.size.map((length) => inMm(length, values)) as [number, number];
    return edge === 'up' || edge === 'down' ? { long: across, deep: up } : { long: up, deep: across };
  }
  const [from, to] = cornersAcross(spec, edge);
  return { long: Math.abs(inMm(to[0], values) - inMm(from[0], values)), deep: inMm(from[1], values) };
}

function cornersAcross(spec: PanelSpec, edge: string): readonly [Spot, Spot] {
  const outline = 'outline' in spec && spec.on !== undefined ? spec.outline : [];
  const at = Number(edge.slice(1)) - 2;
  const [from, to] = [outline[at], outline[at + 1]];
  if (from === undefined || to === undefined || from[1] !== to[1])
    throw new RangeError(`no edge ${edge} across from the score of its panel`);
  return [from, to];
}

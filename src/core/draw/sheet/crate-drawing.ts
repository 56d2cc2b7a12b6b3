import { type At, boxRing } from '../../plane';
import { toMm } from '../../units';
import type { Ticks } from '../../units/ticks';
import { areaMark, frameMarks } from '../strokes/marks';
import type { Drawing } from '../strokes/types';

interface Standing {
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly up: number;
}

/** One layer of favors in their crate, seen from above; as large as fits a space of this width, mm on paper. */
export function drawCrate(
  floor: { readonly across: Ticks; readonly up: Ticks },
  layer: readonly Standing[],
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
): Drawing & { readonly scale: number; readonly origin: At } {
  const scale = Math.min(widthMm / toMm(floor.across), heightMm / toMm(floor.up));
  const ring = ({ x, y, across, up }: Standing) =>
    boxRing({
      left: toMm(x) * scale,
      bottom: toMm(y) * scale,
      right: toMm(x + across) * scale,
      top: toMm(y + up) * scale,
    });
  const title = 'One layer in the crate, from above';
  const drawn = frameMarks(
    [
      areaMark('paper', ring({ x: 0, y: 0, ...floor })),
      areaMark('cut', ring({ x: 0, y: 0, ...floor })),
      ...layer.map((each) => areaMark('part', ring(each))),
    ],
    title,
    `${title}: ${layer.length} ${layer.length === 1 ? 'favor' : 'favors'}.`,
  );
  return { ...drawn, scale };
}

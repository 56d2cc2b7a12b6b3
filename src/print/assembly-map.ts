import { areaMark, centredText, textBox } from '../core/draw/strokes/marks';
import type { Drawing, Mark } from '../core/draw/strokes/types';
import { type At, boxRing } from '../core/plane';
import { TYPE_MM } from './print-document';
import type { Tile, Tiling } from './tiling';

/** The most room the map takes. */
export const MAP_MM = { widthMm: 30, heightMm: 18 } as const;

/** All pages of a template small, the net on them, and this page in a bold frame. Lower right corner of the map: its origin plus its width. */
export function drawAssemblyMap({ tiles }: Tiling, here: Tile, drawn: Drawing): Mark[] {
  const left = Math.min(...tiles.map(({ window }) => window.left));
  const bottom = Math.min(...tiles.map(({ window }) => window.bottom));
  const width = Math.max(...tiles.map(({ window }) => window.right)) - left;
  const height = Math.max(...tiles.map(({ window }) => window.top)) - bottom;
  const scale = Math.min(MAP_MM.widthMm / width, MAP_MM.heightMm / height);
  const start = MAP_MM.widthMm - width * scale;
  const at = ([x, y]: At): At => [start + (x - left) * scale, (y - bottom) * scale];
  const outline = drawn.marks.flatMap((mark): Mark[] => {
    if (mark.kind !== 'line' && mark.kind !== 'arc') return [];
    if (mark.ink !== 'edge' && mark.ink !== 'cut') return [];
    if (mark.kind === 'line') return [{ kind: 'line', ink: 'guide', points: mark.points.map(at) }];
    return [{ ...mark, ink: 'guide', centre: at(mark.centre), radius: mark.radius * scale }];
  });
  const frames = tiles.map((tile) => ({ tile, ring: boxRing(tile.window).map(at) }));
  return [
    ...outline,
    ...frames.map(({ tile, ring }) => areaMark(tile === here ? 'cut' : 'guide', ring)),
    ...frames.flatMap(({ tile, ring }) => nameOn(tile, ring)),
  ];
}

function nameOn({ name }: Tile, ring: readonly At[]): Mark[] {
  const [[left, bottom], , [right, top]] = ring as [At, At, At, At];
  const label = centredText(name, [(left + right) / 2, (bottom + top) / 2], TYPE_MM.small);
  const box = textBox(label);
  return box.left > left && box.right < right && box.bottom > bottom && box.top < top ? [label] : [];
}

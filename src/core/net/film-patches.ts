import { type Ticks, ticks } from '../units/ticks';
import type { BoxNet } from './types';

/** The film behind one window: cut this size, glued to the inside of its panel. `at` is the film's lower left corner on the flat net. */
export interface FilmPatch {
  readonly piece: string;
  readonly panel: string;
  readonly across: Ticks;
  readonly up: Ticks;
  readonly at: { readonly x: Ticks; readonly y: Ticks };
}

/** The film a box needs: every rectangular opening, and the style's film lap past it on all four sides. */
export function filmPatches({ pieces, values }: BoxNet): readonly FilmPatch[] {
  const lap = values['filmLap'] ?? 0;
  return pieces.flatMap(({ id, faces }) =>
    faces.flatMap(({ panel, holes }) =>
      holes
        .filter((hole) => hole.length === 4)
        .map((hole): FilmPatch => {
          const [left, right] = [Math.min(...hole.map(({ x }) => x)), Math.max(...hole.map(({ x }) => x))];
          const [low, high] = [Math.min(...hole.map(({ y }) => y)), Math.max(...hole.map(({ y }) => y))];
          return {
            piece: id,
            panel,
            across: ticks(right - left + 2 * lap),
            up: ticks(high - low + 2 * lap),
            at: { x: ticks(left - lap), y: ticks(low - lap) },
          };
        }),
    ),
  );
}

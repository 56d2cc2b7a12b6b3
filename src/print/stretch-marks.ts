import { pointOfArc } from '../core/draw/strokes/marks';
import type { Mark } from '../core/draw/strokes/types';
import type { At } from '../core/plane';
import type { Stretch } from './scale-bars';

const STEP_DEG = 1; // chords of one degree leave a 200 mm arc by 0.008 mm

/** A drawing made longer or shorter each way by what the printer was measured to be off. Words keep their size. */
export function stretchMarks(marks: readonly Mark[], { across, up }: Stretch): Mark[] {
  if (across === 1 && up === 1) return [...marks];
  const move = ([x, y]: At): At => [x * across, y * up];
  return marks.map((mark) => stretchMark(mark, move));
}

function stretchMark(mark: Mark, move: (point: At) => At): Mark {
  switch (mark.kind) {
    case 'line':
      return { ...mark, points: mark.points.map(move) };
    case 'area':
      return { ...mark, ring: mark.ring.map(move), holes: (mark.holes ?? []).map((hole) => hole.map(move)) };
    case 'text':
      return { ...mark, at: move(mark.at) };
    case 'arc': {
      // An arc stretched unevenly is no arc any more.
      const { centre, radius, fromDeg, sweepDeg, ink, key } = mark;
      const steps = Math.ceil(Math.abs(sweepDeg) / STEP_DEG);
      const points = Array.from({ length: steps + 1 }, (_, i) =>
        move(pointOfArc(centre, radius, fromDeg + (i * sweepDeg) / steps)),
      );
      return { kind: 'line', ink, points, ...(key === undefined ? {} : { key }) };
    }
  }
}

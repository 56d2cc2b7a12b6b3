import type { Blank } from '../../net/types';
import { type Ticks, ticks, toMm } from '../../units/ticks';
import { lineMark } from '../strokes/marks';
import type { RunningMark } from '../strokes/running-marks';
import type { Mark } from '../strokes/types';
import type { NetLine } from './net-lines';
import { leftKey, topKey } from './net-table';

const worked = (lines: readonly NetLine[]) => lines.filter((line) => line.ink !== 'edge');

/** The numbers above a net: every upright line, the ends of all others, and the whole card; from the left edge. */
export const numbersFromLeft = (blank: Blank, lines: readonly NetLine[]): RunningMark[] =>
  gather(
    worked(lines).flatMap(({ way, a, b }) => [a, b].map(({ x }) => ({ at: x, leading: way === 'upright' }))),
    blank.across,
    leftKey,
  );

/** The numbers beside a net: every level line, the ends of all others, and the whole card; from the top edge down. */
export const numbersFromTop = (blank: Blank, lines: readonly NetLine[]): RunningMark[] =>
  gather(
    worked(lines).flatMap(({ way, a, b }) =>
      [a, b].map(({ y }) => ({ at: ticks(blank.up - y), leading: way === 'level' })),
    ),
    blank.up,
    topKey,
  );

function gather(
  found: readonly { readonly at: Ticks; readonly leading: boolean }[],
  whole: Ticks,
  keyOf: (distance: number) => string,
): RunningMark[] {
  const marks = new Map<number, RunningMark>();
  for (const { at, leading } of [...found, { at: whole, leading: true }])
    if (at !== 0)
      marks.set(at, { distance: at, key: keyOf(at), leading: leading || (marks.get(at)?.leading ?? false) });
  return [...marks.values()];
}

const SHORT = 0.5; // mm on paper that a line may stop short of the edge without a guide

/** Fine lines from the top (left) edge to the first end of what a number measures, where no line itself reaches that edge. */
export function drawGuides(lines: readonly NetLine[], blank: Blank, scale: number): Mark[] {
  const tops = new Map<number, number>();
  const lefts = new Map<number, number>();
  for (const { x, y } of worked(lines).flatMap(({ a, b }) => [a, b])) {
    tops.set(x, Math.max(tops.get(x) ?? 0, y));
    lefts.set(y, Math.min(lefts.get(y) ?? blank.across, x));
  }
  const [across, up] = [toMm(blank.across) * scale, toMm(blank.up) * scale];
  const onPaper = (entries: Map<number, number>) =>
    [...entries].map(([at, to]) => [toMm(at) * scale, toMm(to) * scale] as const);
  return [
    ...onPaper(tops)
      .filter(([x, y]) => x > 0 && x < across && up - y > SHORT)
      .map(([x, y]) =>
        lineMark('guide', [
          [x, up],
          [x, y],
        ]),
      ),
    ...onPaper(lefts)
      .filter(([y, x]) => y > 0 && y < up && x > SHORT)
      .map(([y, x]) =>
        lineMark('guide', [
          [0, y],
          [x, y],
        ]),
      ),
  ];
}

import { drawnLie } from '../../bench';
import type { PieceNet } from '../../net/types';
import { roundToTick, type Ticks, ticks } from '../../units/ticks';
import { type FaceUp, linesOfNet, type NetLine } from './net-lines';

/** One line of the net in numbers: the row beside the drawing. Distances in ticks, from the left and the top edge of the card as it lies. */
export interface LineRow {
  readonly key: string;
  readonly ink: NetLine['ink'];
  readonly way: NetLine['way'];
  /** Of the line's two ends; equal for an upright line. */
  readonly fromLeft: readonly [Ticks, Ticks];
  /** Of the line's two ends; equal for a level line. */
  readonly fromTop: readonly [Ticks, Ticks];
  /** Along the line (along the arc for a curve), to the nearest tick. */
  readonly length: Ticks;
  /** A curve's greatest distance from the straight line between its ends. */
  readonly rise: Ticks | null;
  /** From the upright (or level) line before this one; null for slanted and curved lines and the card's own edge. */
  readonly gap: Ticks | null;
  /** Keys in the drawing that belong to this row: the line, and the numbers it is measured by. */
  readonly lights: readonly string[];
}

export const leftKey = (x: number): string => `left ${x}`;
export const topKey = (fromTop: number): string => `top ${fromTop}`;

const WAYS = ['upright', 'level', 'slanted', 'curved'] as const;

/** Every line of a piece as a table: upright from the left, level from the top, then the rest, the card's own edge last. */
export function tableOfLines(piece: PieceNet, faceUp: FaceUp = 'inside'): LineRow[] {
  const rows = linesOfNet(piece, drawnLie(piece, faceUp)).map((line) => rowOf(line, piece.blank.up));
  const place = (row: LineRow) => (row.ink === 'edge' ? WAYS.length : WAYS.indexOf(row.way));
  rows.sort(
    (p, q) =>
      place(p) - place(q) ||
      distance(p) - distance(q) ||
      p.fromTop[0] - q.fromTop[0] ||
      p.fromLeft[0] - q.fromLeft[0],
  );
  return rows.map((row) => ({ ...row, gap: gapBefore(row, rows) }));
}

const distance = (row: LineRow): Ticks => (row.way === 'level' ? row.fromTop[0] : row.fromLeft[0]);

function rowOf({ key, ink, way, a, b, curve }: NetLine, up: Ticks): LineRow {
  const fromTop = [ticks(up - a.y), ticks(up - b.y)] as const;
  const chord = Math.hypot(b.x - a.x, b.y - a.y);
  const half = curve ? Math.asin(Math.min(1, chord / (2 * curve.radius))) : 0;
  return {
    key,
    ink,
    way,
    fromLeft: [a.x, b.x],
    fromTop,
    length: roundToTick(curve ? 2 * half * curve.radius : chord),
    rise: curve ? roundToTick(curve.radius * (1 - Math.cos(half))) : null,
    gap: null,
    lights: [key, ...numbersOf(way, [a.x, b.x], fromTop)],
  };
}

/** An upright line is found by one number, a level one by one, the others by those of both ends. */
function numbersOf(way: NetLine['way'], fromLeft: readonly number[], fromTop: readonly number[]): string[] {
  const left = way === 'level' ? [] : fromLeft.map(leftKey);
  const top = way === 'upright' ? [] : fromTop.map(topKey);
  return [...new Set([...left, ...top])];
}

function gapBefore(row: LineRow, rows: readonly LineRow[]): Ticks | null {
  if (row.ink === 'edge' || (row.way !== 'upright' && row.way !== 'level')) return null;
  const before = rows
    .filter((other) => other.ink !== 'edge' && other.way === row.way)
    .map(distance)
    .filter((at) => at < distance(row));
  return ticks(distance(row) - Math.max(0, ...before));
}

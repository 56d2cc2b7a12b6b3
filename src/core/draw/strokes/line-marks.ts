import type { At } from '../../plane';
import { toMm } from '../../units/ticks';
import type { NetLine } from '../net/net-lines';
import { lineMark } from './marks';
import type { Mark } from './types';

const BAR = 1.1; // half the bar across a slit's end, mm on paper

/** A line of the net on paper: a true arc where it is curved, bars at both ends of a slit. `scale`: paper mm for one mm of card. */
export function drawLine(line: NetLine, scale: number): Mark[] {
  if (line.curve) return [drawCurve(line, line.curve, scale)];
  const at = ({ x, y }: NetLine['a']): At => [toMm(x) * scale, toMm(y) * scale];
  const [from, to] = [at(line.a), at(line.b)];
  const mark = lineMark(line.ink, [from, to], line.key);
  return line.ink === 'slit' ? [mark, endBar(from, to, line.key), endBar(to, from, line.key)] : [mark];
}

function endBar(end: At, other: At, key: string): Mark {
  const length = Math.hypot(other[0] - end[0], other[1] - end[1]);
  const [dx, dy] = [((other[0] - end[0]) / length) * BAR, ((other[1] - end[1]) / length) * BAR];
  const tips: At[] = [
    [end[0] - dy, end[1] + dx],
    [end[0] + dy, end[1] - dx],
  ];
  return lineMark('slit', tips, key);
}

function drawCurve(
  { key, ink, a, b }: NetLine,
  { centre: [cx, cy], radius }: NonNullable<NetLine['curve']>,
  scale: number,
): Mark {
  const degrees = ({ x, y }: NetLine['a']) => (Math.atan2(y - cy, x - cx) * 180) / Math.PI;
  const fromDeg = degrees(a);
  // The short way round: a bowed score or cut is always less than half a circle.
  const sweepDeg = ((degrees(b) - fromDeg + 540) % 360) - 180;
  return {
    kind: 'arc',
    ink,
    centre: [toMm(cx) * scale, toMm(cy) * scale],
    radius: toMm(radius) * scale,
    fromDeg,
    sweepDeg,
    key,
  };
}

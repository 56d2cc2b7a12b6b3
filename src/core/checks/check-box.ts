import { closePiece } from '../fold';
import type { BoxNet } from '../net/types';
import type { BoxStyle } from '../styles/language/types';
import { inches, ticks } from '../units/ticks';
import { checkCollisions } from './check-collisions';
import { checkFits, truestMarks } from './check-fits';
import { checkFlatOverlap } from './check-flat-overlap';
import { checkHandRoom, checkNarrowPanels, checkToolReach, type ToolReach } from './check-handling';
import { checkJoints } from './check-joints';
import { checkLimits } from './check-limits';
import { checkOpenings } from './check-openings';
import { checkPanelShape } from './check-panel-shape';
import { checkParts } from './check-parts';
import { checkPromises } from './check-promises';
import { checkRoom } from './check-room';
import { checkSeams } from './check-seams';
import type { Finding } from './finding';

/**
 * Everything a maker should know about their box, worst first. `box` is the net of `style`; without a tool, limits come on 1/16 in marks.
 * Where the style's own limits stop it, only they are told: what else goes wrong follows from them. The closing path is `checkClosingPath`.
 */
export function checkBox(style: BoxStyle, box: BoxNet, tool?: ToolReach): Finding[] {
  const limits = checkLimits(style, box.values, tool?.finestMark ?? inches(0, 1, 16), box.options);
  if (limits.some(({ severity }) => severity === 'stop')) return worstFirst(limits);
  const handling = box.pieces.flatMap((piece) => [
    ...checkNarrowPanels(piece),
    ...(tool === undefined ? [] : checkToolReach(piece, tool)),
  ]);
  // a mark is hit within half of the finest one. source: common practice, no source
  const offBy = ticks(Math.round((tool?.finestMark ?? inches(0, 1, 16)) / 2));
  return worstFirst([
    ...limits,
    ...checkGeometry(style, box),
    ...handling,
    ...checkHandRoom(box),
    ...truestMarks(style, box, offBy),
  ]);
}

/** Does it close? Every piece in the flat, at its seams and joints, against itself, and by the room it holds. */
export function checkGeometry(style: BoxStyle, box: BoxNet): Finding[] {
  const closed = [...box.pieces, ...(box.whole === undefined ? [] : [box.whole])].map(closePiece);
  const caliperMm = box.caliperUm / 1000;
  return [
    ...box.pieces.flatMap((piece) => [...checkPanelShape(piece), ...checkFlatOverlap(piece)]),
    ...closed.flatMap((piece) => [
      ...checkSeams(piece),
      ...checkJoints(piece),
      ...checkOpenings(piece),
      ...checkCollisions(piece, caliperMm),
      ...checkRoom(piece),
    ]),
    ...checkParts(box),
    ...checkPromises(style, box, closed),
    ...checkFits(style, box),
  ];
}

const RANK = { stop: 0, warn: 1, note: 2 } as const;
const worstFirst = (findings: readonly Finding[]): Finding[] =>
  [...findings].sort((p, q) => RANK[p.severity] - RANK[q.severity]);

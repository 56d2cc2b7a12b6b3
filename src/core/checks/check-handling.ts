import { FINGER_REACH, HAND_WIDTH } from '../net/hand-reach';
import { asItStands } from '../net/lay-net';
import { linesOf } from '../net/lines';
import type { BoxNet, Face, PieceNet } from '../net/types';
import { inches, roundToTick, type Ticks, ticks, toMm } from '../units/ticks';
import { type Finding, panelWords } from './finding';

/** What a tool can do, as the checks need it: finest mark, how far from its fence it scores, and its longest cut. */
export interface ToolReach {
  readonly finestMark: Ticks;
  readonly reach: Ticks;
  readonly longestCut: Ticks;
}

/** Narrowest strip between two scores that hands fold cleanly. source: common practice, no source */
const NARROWEST_FOLD = inches(0, 1, 4);

/** Strips between two scores too narrow to fold by hand. Where a wall rolls over, the strip is meant to be narrow: it folds as one. */
export function checkNarrowPanels(piece: PieceNet): Finding[] {
  const scored = piece.faces.map((): Set<string> => new Set());
  for (const { a, b, left, right, kind } of piece.edges)
    if (kind === 'score')
      for (const face of [left, right]) if (face !== null) scored[face]?.add(`${a.x},${a.y},${b.x},${b.y}`);
  return piece.faces.flatMap((face, at): Finding[] => {
    const wide = (scored[at]?.size ?? 0) < 2 || face.role === 'liner' ? null : betweenScores(piece, at);
    if (wide === null || wide >= NARROWEST_FOLD) return [];
    return [
      {
        code: 'panel-narrow-between-scores',
        severity: 'warn',
        where: face.panel,
        facts: { panel: panelWords(face.panel), wide, least: NARROWEST_FOLD },
        says: 'The {panel} is only {wide} between two scores, too narrow to fold cleanly by hand.',
        remedy: 'Make it at least {least}.',
      },
    ];
  });
}

/** Least distance between two parallel scores of a face, or null. */
function betweenScores({ edges }: PieceNet, face: number): Ticks | null {
  const own = edges.filter(({ left, right, kind }) => kind === 'score' && (left === face || right === face));
  let least: number | null = null;
  for (const p of own)
    for (const q of own) {
      const [dx, dy] = [p.b.x - p.a.x, p.b.y - p.a.y];
      const long = Math.hypot(dx, dy);
      const off = (point: { readonly x: number; readonly y: number }) =>
        Math.abs(dx * (point.y - p.a.y) - dy * (point.x - p.a.x)) / long;
      const apart = off(q.a);
      if (apart < 1 || Math.abs(apart - off(q.b)) > 1) continue;
      least = Math.min(least ?? apart, apart);
    }
  return least === null ? null : roundToTick(least);
}

/** Scores farther from every edge of the card than the tool scores, and blanks longer than it cuts. */
export function checkToolReach(piece: PieceNet, tool: ToolReach): Finding[] {
  const findings: Finding[] = [];
  const long = ticks(Math.max(piece.blank.across, piece.blank.up));
  if (long > tool.longestCut)
    findings.push({
      code: 'blank-longer-than-cut',
      severity: 'warn',
      where: piece.id,
      facts: { piece: piece.label.toLowerCase(), long, cut: tool.longestCut },
      says: 'The {piece} is {long} long before folding; your tool cuts {cut}.',
      remedy: 'Cut it with a knife and ruler, or make the box smaller.',
    });
  const farthest = linesOf(piece).reduce((far, { kind, from, to }) => {
    if (kind !== 'score' || (from.x !== to.x && from.y !== to.y)) return far;
    const [at, side] = from.x === to.x ? [from.x, piece.blank.across] : [from.y, piece.blank.up];
    return Math.max(far, Math.min(at, side - at));
  }, 0);
  if (farthest > tool.reach)
    findings.push({
      code: 'score-beyond-reach',
      severity: 'warn',
      where: piece.id,
      facts: { piece: piece.label.toLowerCase(), far: ticks(farthest), reach: tool.reach },
      says: 'One score of the {piece} is {far} from the nearest edge; your tool scores up to {reach}.',
      remedy: 'Draw that line with a ruler and a bone folder, or make the box smaller.',
    });
  return findings;
}

/** A glued bottom that a hand cannot press from inside. */
export function checkHandRoom(box: BoxNet): Finding[] {
  const flaps = (faces: readonly Face[], at: number) => faces[at]?.role === 'bottomFlap';
  const glued = asItStands(box).some(({ faces, joints }) =>
    joints.some(({ tab, target }) => flaps(faces, tab) && flaps(faces, target)),
  );
  const { width, depth, height } = box.inside;
  const narrow = ticks(Math.min(width, depth));
  if (!glued || narrow >= HAND_WIDTH || height <= FINGER_REACH || toMm(narrow) <= 0) return [];
  return [
    {
      code: 'opening-narrow-for-hand',
      severity: 'note',
      where: 'depth',
      facts: { narrow, hand: HAND_WIDTH },
      says: 'The opening is {narrow} wide, too narrow for a hand ({hand}).',
      remedy: 'Press the glued bottom from inside with a bone folder.',
    },
  ];
}

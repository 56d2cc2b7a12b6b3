import { tapeJoints } from '../../net/joint-tape';
import type { ClosingAct, Face, PieceNet } from '../../net/types';
import { areaOf, atOf } from '../../plane';
import type { BenchOp, CloseWay } from '../types';

type Op<Name extends BenchOp['op']> = Extract<BenchOp, { op: Name }>;
/** What is done to creased card. */
export type ClosingOp = 'stick' | 'glue' | 'close' | 'thread';

type Turning = Exclude<ClosingAct, { do: 'glue' }>;

/** Adhesive, pressing and closing, in the order hands do it: adhesive goes on before the fold that brings its two faces together. */
export function closingActs(piece: PieceNet): readonly Op<ClosingOp>[] {
  const before = new Map<number, Op<'stick'>[]>();
  for (const [at, act] of piece.closing.entries())
    if (act.do === 'glue') {
      const place = whereFacesMeet(piece, act.joint, at);
      before.set(place, withStrips(before.get(place) ?? [], stickAct(piece, act.joint)));
    }
  const folded = new Map<number, number>();
  const closes = piece.closing.flatMap((act, at) => [
    ...(before.get(at) ?? []),
    act.do === 'glue' ? glueAct(piece, act) : closeAct(piece, act, folded),
  ]);
  return [...closes, ...(piece.threads ?? []).map((thread) => ({ op: 'thread' as const, ...thread }))];
}

/** The last act before the glue that turns one of its two faces towards the other; the glue itself if none does. */
function whereFacesMeet({ joints, hinges, closing }: PieceNet, joint: number, glue: number): number {
  const { tab = 0, target = 0 } = joints[joint] ?? {};
  const above = (face: number): readonly number[] => {
    const hinge = hinges.findIndex(({ child }) => child === face);
    return hinge < 0 ? [] : [hinge, ...above(hinges[hinge]?.parent ?? 0)];
  };
  const [one, other] = [above(tab), above(target)];
  const between = new Set(
    [...one, ...other].filter((hinge) => one.includes(hinge) !== other.includes(hinge)),
  );
  const turns = (act: ClosingAct): boolean => act.do !== 'glue' && act.hinges.some((at) => between.has(at));
  const last = closing.slice(0, glue).findLastIndex(turns);
  return last < 0 ? glue : last;
}

/** Tape is said, where it fits; what is glued instead goes on the same face. Facets of one bent tab are one joint. */
function stickAct(piece: PieceNet, joint: number): readonly Op<'stick'>[] {
  const glued = piece.joints[joint];
  const panelOf = (face: number | undefined): string => piece.faces[face ?? -1]?.panel ?? '';
  const [panel, onto] = [panelOf(glued?.tab), panelOf(glued?.target)];
  const tape = tapeJoints(piece).find((strip) => strip.panel === panel && strip.onto === onto);
  if (!glued || !tape) return [];
  const face = glued.lap === 'inside' ? 'outside' : 'inside';
  const { strips, length, glueOnly } = tape;
  return [{ op: 'stick', panel, face, tape: glueOnly ? 'glue' : { strips, length } }];
}

/** A panel that is stuck to two others takes all its strips in one go. */
function withStrips(sticks: readonly Op<'stick'>[], more: readonly Op<'stick'>[]): Op<'stick'>[] {
  const merged = [...sticks];
  for (const stick of more) {
    const { panel, face, tape } = stick;
    const length = tape === 'glue' ? null : tape.length;
    const at = merged.findIndex(
      (one) => one.panel === panel && one.face === face && one.tape !== 'glue' && one.tape.length === length,
    );
    const known = merged[at]?.tape;
    if (known && known !== 'glue' && tape !== 'glue')
      merged[at] = { ...stick, tape: { ...tape, strips: known.strips + tape.strips } };
    else merged.push(stick);
  }
  return merged;
}

function glueAct(piece: PieceNet, { joint, tip }: Extract<ClosingAct, { do: 'glue' }>): Op<'glue'> {
  const glued = piece.joints[joint];
  const panelOf = (face: number | undefined): string => piece.faces[face ?? -1]?.panel ?? '';
  return {
    op: 'glue',
    panel: panelOf(glued?.tab),
    onto: panelOf(glued?.target),
    lap: glued?.lap ?? 'inside',
    tip,
  };
}

/** From here on a fold is said to lie flat. source: our choice */
const FLAT_DEG = 170;

/** `folded` holds how far each hinge has been turned, and takes what this act turns. */
function closeAct(piece: PieceNet, act: Turning, folded: Map<number, number>): Op<'close'> {
  const ways = new Set<CloseWay>();
  for (const [i, hinge] of act.hinges.entries()) {
    if (piece.hinges[hinge]?.kind !== 'score') continue;
    ways.add(wayOf(piece, hinge, folded.get(hinge) ?? 0, act.toDeg[i] ?? 0));
  }
  for (const [i, hinge] of act.hinges.entries()) folded.set(hinge, act.toDeg[i] ?? 0);
  const rolls = act.hinges.length > 0 && act.hinges.every((at) => piece.hinges[at]?.kind === 'join');
  const way = rolls ? 'round' : oneWay(ways);
  const panels = [...new Set(act.panels)];
  return {
    op: 'close',
    panels: way === 'flat' ? panels.map((panel) => lighterSide(piece, panel)) : panels,
    by: act.do,
    way,
    tip: act.tip,
  };
}

function wayOf({ faces, hinges }: PieceNet, hinge: number, from: number, to: number): CloseWay {
  if (Math.abs(to) >= FLAT_DEG) return to > 0 ? 'flat' : 'back';
  if (Math.abs(from) >= FLAT_DEG || to === 0) return 'open';
  if (to < 0) return 'out';
  return faces[hinges[hinge]?.parent ?? -1]?.role === 'base' ? 'up' : 'in';
}

/** One way of several: opening takes the rest along, and what goes up takes its tabs in. */
function oneWay(ways: ReadonlySet<CloseWay>): CloseWay {
  const [first = 'in'] = ways;
  if (ways.size <= 1) return first;
  if (ways.has('open')) return 'open';
  return [...ways].every((way) => way === 'up' || way === 'in') ? 'up' : 'together';
}

/** Hands fold the smaller side of a score over the larger: a panel, or what it hangs on where that is less card. */
function lighterSide({ faces, hinges }: PieceNet, panel: string): string {
  const at = hinges.findIndex((hinge) => hinge.panel === panel && hinge.kind === 'score');
  const hinge = hinges[at];
  const parent = faces[hinge?.parent ?? -1];
  if (!hinge || !parent) return panel;
  const beyond = new Set([hinge.child]);
  for (const { parent: from, child } of hinges) if (beyond.has(from)) beyond.add(child);
  const area = (side: readonly Face[]): number =>
    side.reduce((sum, { ring }) => sum + Math.abs(areaOf(ring.map(atOf))), 0);
  const isHeavier =
    area(faces.filter((_, face) => beyond.has(face))) > area(faces.filter((_, face) => !beyond.has(face)));
  return isHeavier ? parent.panel : panel;
}

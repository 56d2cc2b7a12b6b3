import { samePoint } from '../../net/point';
import type { Blank } from '../../net/types';
import { isOnMark, type Ruler } from '../../units';
import { type Lie, toNet } from '../equal/card-lie';
import { legsOf } from '../equal/card-outline';
import type { Segment } from '../equal/line-stretches';
import type { BenchOp, BenchPoint } from '../types';
import type { ActGroup } from './group-acts';
import {
  type Op,
  type Speech,
  sayBlank,
  sayClose,
  sayCorners,
  sayCurve,
  sayCurvedCut,
  sayFlip,
  sayFoldRow,
  sayGlue,
  sayHole,
  sayPath,
  sayRuler,
  sayScores,
  saySlits,
  saySnip,
  sayTemplate,
  sayTurn,
  sayWindow,
} from './say-act';
import { sayLength, sayList, sayPoint } from './say-length';

/** What one step says: sentences for the headline, rows below it, template points. */
export interface Said {
  readonly headline: readonly string[];
  readonly details: readonly string[];
  readonly template: readonly string[];
}

/** A curve scored earlier, in the net's own frame, so that a fold can name it. */
interface NamedCurve {
  readonly name: string;
  readonly points: readonly BenchPoint[];
}

/** Says groups in order, numbering what is laid out by template. */
export function sayGroups(groups: readonly ActGroup[], blank: Blank, speech: Speech): readonly Said[] {
  const curves: NamedCurve[] = [];
  const counts = { curve: 0, cut: 0, hole: 0 };
  const next = (thing: keyof typeof counts): string => `${thing} ${++counts[thing]}`;
  return groups.map((group) => {
    const turns = group.before.map((op) => sayMove(op, group.lie, speech));
    const said = sayActs(group, blank, speech, curves, next);
    return { ...said, headline: [...turns, ...said.headline] };
  });
}

const sayMove = (op: ActGroup['before'][number], { quarters, mirrored }: Lie, speech: Speech): string =>
  op.op === 'turn' ? sayTurn(op, quarters === 0, speech) : sayFlip(mirrored === (speech.fence === 'left'));

function sayActs(
  { family, acts, lie }: ActGroup,
  blank: Blank,
  speech: Speech,
  curves: NamedCurve[],
  next: (thing: 'curve' | 'cut' | 'hole') => string,
): Said {
  const just = (headline: readonly string[]): Said => ({ headline, details: [], template: [] });
  switch (family) {
    case 'blank':
      return just(only(acts, 'blank').map((op) => sayBlank(op, speech)));
    case 'score':
      return just(
        alike(only(acts, 'score'), (op) => JSON.stringify(op.span)).map((run) => sayScores(run, speech)),
      );
    case 'slit': {
      const runs = alike(only(acts, 'slit'), (op) => `${op.from} ${op.to}`);
      return just([
        ...runs.map((run) => saySlits(run, speech)),
        ...only(acts, 'slitLine').map((op) => sayRuler(op, speech)),
      ]);
    }
    case 'corner': {
      const runs = alike(only(acts, 'corner'), (op) => `${op.across} ${op.up}`);
      return just([
        ...runs.map((run) => sayCorners(run, speech)),
        ...only(acts, 'snip').map((op) => saySnip(op, speech)),
      ]);
    }
    case 'glue':
      return just(only(acts, 'glue').map((op) => sayGlue(op, speech)));
    case 'close':
      return just(only(acts, 'close').map((op) => sayClose(op, speech)));
    case 'ruler': {
      const details = only(acts, 'scoreLine').map((op) => sayRuler(op, speech));
      return { headline: ['Score the slanted lines along a ruler.'], details, template: [] };
    }
    case 'curve': {
      const named = only(acts, 'scoreCurve').map((op) => ({ op, name: next('curve') }));
      curves.push(
        ...named.map(({ op, name }) => ({ name, points: op.points.map((p) => toNet(blank, lie, p)) })),
      );
      return {
        headline: ['Score the curved lines along the template.'],
        details: named.map(({ op, name }) => sayCurve(name, op, speech)),
        template: named.map(({ op, name }) => sayTemplate(name, op.points)),
      };
    }
    case 'path':
      return sayPaths(only(acts, 'cutPath'), speech, next);
    case 'window':
      return sayWindows(only(acts, 'window'), speech, next);
    case 'fold':
      return {
        headline: [sayFolding(only(acts, 'fold'))],
        details: only(acts, 'fold').map((op) => sayFoldRow(op, sayWhere(op, curves, speech), speech)),
        template: [],
      };
  }
}

const only = <Name extends BenchOp['op']>(acts: readonly BenchOp[], name: Name): readonly Op<Name>[] =>
  acts.filter((op): op is Op<Name> => op.op === name);

/** Runs of acts that share a key, in order. */
function alike<T>(acts: readonly T[], keyOf: (act: T) => string): readonly (readonly T[])[] {
  const runs: T[][] = [];
  for (const act of acts) {
    const last = runs.at(-1);
    if (last?.[0] !== undefined && keyOf(last[0]) === keyOf(act)) last.push(act);
    else runs.push([act]);
  }
  return runs;
}

function sayPaths(paths: readonly Op<'cutPath'>[], speech: Speech, next: (thing: 'cut') => string): Said {
  const details: string[] = [];
  const template: string[] = [];
  for (const path of paths) {
    if (!path.curved && isOnMarks(path.points, speech.ruler)) details.push(sayPath(path, speech));
    else {
      const name = next('cut');
      details.push(sayCurvedCut(name, path, speech));
      template.push(sayTemplate(name, path.points));
    }
  }
  const along = template.length > 0 ? 'along the template' : 'along a ruler';
  return { headline: [`Cut the outline ${along}.`], details, template };
}

function sayWindows(holes: readonly Op<'window'>[], speech: Speech, next: (thing: 'hole') => string): Said {
  const details: string[] = [];
  const template: string[] = [];
  for (const hole of holes) {
    if (hole.hole === 'window' && (hole.ring.length === 4 || isOnMarks(hole.ring, speech.ruler)))
      details.push(sayWindow(hole, speech));
    else {
      const name = next('hole');
      details.push(sayHole(name, hole, speech));
      template.push(sayTemplate(name, hole.ring));
    }
  }
  return { headline: ['Cut out what is open.'], details, template };
}

/** Points that a maker can find with a ruler; any other outline is laid out by template. */
const isOnMarks = (points: readonly BenchPoint[], { finest }: Ruler): boolean =>
  points.every(({ x, y }) => isOnMark(x, finest) && isOnMark(y, finest));

const sayFolding = (folds: readonly Op<'fold'>[]): string =>
  folds.every(({ deg }) => deg > 0)
    ? 'Inside face up, as it lay at first: fold every score up and crease it.'
    : 'Inside face up, as it lay at first: fold every score its own way and crease it.';

/** Which score a fold is on, as the net is drawn: a curve by its name, a straight one by where it runs. */
function sayWhere({ lines }: Op<'fold'>, curves: readonly NamedCurve[], { ruler }: Speech): string {
  const curve = curves.find(({ points }) => isSamePath(legsOf(points), lines));
  return curve ? curve.name : sayList(lines.map((line) => `the score ${saySegment(line, ruler)}`));
}

function saySegment({ a, b }: Segment, ruler: Ruler): string {
  if (a.x === b.x)
    return `${sayLength(a.x, ruler)} across, from ${sayLength(a.y, ruler)} to ${sayLength(b.y, ruler)} up`;
  if (a.y === b.y)
    return `${sayLength(a.y, ruler)} up, from ${sayLength(a.x, ruler)} to ${sayLength(b.x, ruler)} across`;
  return `from ${sayPoint(a, ruler)} to ${sayPoint(b, ruler)}`;
}

/** The same chords, in any order and direction. */
function isSamePath(legs: Op<'fold'>['lines'], lines: Op<'fold'>['lines']): boolean {
  const isOneOf = ({ a, b }: (typeof lines)[number]): boolean =>
    legs.some(
      (leg) => (samePoint(leg.a, a) && samePoint(leg.b, b)) || (samePoint(leg.a, b) && samePoint(leg.b, a)),
    );
  return legs.length === lines.length && lines.every(isOneOf);
}

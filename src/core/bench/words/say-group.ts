import type { Blank } from '../../net/types';
import { asSeen, type Lie, quartersOf, sizeAsItLies } from '../equal/card-lie';
import { firstLie } from '../first-lie';
import type { BenchOp, BenchPoint } from '../types';
import type { ActGroup } from './group-acts';
import { isRing } from './panel-ring';
import { gatherMirrors, sayAgain } from './same-again';
import {
  isUpright,
  type Op,
  type Speech,
  sayBlank,
  sayClose,
  sayCorners,
  sayCrease,
  sayCurve,
  sayCurvedCut,
  sayFlip,
  sayFoldOnto,
  sayGlue,
  sayHole,
  sayPath,
  sayRuler,
  sayScores,
  saySlits,
  saySnip,
  sayStick,
  sayTemplate,
  sayTurn,
  sayWindow,
  turnWords,
} from './say-act';
import { sayPanels } from './say-panels';

/** What one step says: sentences for the headline, rows below it, template points. */
interface Said {
  readonly headline: readonly string[];
  readonly details: readonly string[];
  readonly template: readonly string[];
}

/** A step, and its headline without its turns and in full. */
interface SaidStep extends Said {
  readonly alone: string;
}

type Numbered = (thing: 'curve' | 'cut' | 'hole') => string;

/** Says groups in order, numbering what is laid out by template. */
export function sayGroups(groups: readonly ActGroup[], blank: Blank, by: Speech): readonly SaidStep[] {
  const faces = new Set(groups.filter(({ kind }) => kind === 'score').map(({ lie }) => lie.mirrored));
  const speech = { ...by, scoredOnBoth: faces.size > 1 };
  const counts = { curve: 0, cut: 0, hole: 0 };
  const next: Numbered = (thing) => `${thing} ${++counts[thing]}`;
  const first = groups.find(({ family }) => family !== 'blank')?.lie;
  return groups.map((group, i) => {
    const before = groups[i - 1];
    const fresh = before?.family === 'blank';
    const said = sayActs(group, sizeAsItLies(blank, group.lie), speech, next);
    const alone = said.headline.join(' ');
    const again = before && sayTheSame(group, before, speech);
    if (again) return { headline: [again], details: [], template: [], alone };
    const moves = fresh
      ? [sayFirstLie(group, speech)]
      : group.before.map((op) => sayMove(op, group, first, speech));
    return { ...said, alone, headline: [...moves.filter((move) => move !== ''), ...said.headline] };
  });
}

/** A step that repeats the one before it: at the fence after a turn, or at the top as it was at the bottom. */
function sayTheSame(group: ActGroup, before: ActGroup, speech: Speech): string | null {
  const [turn, ...others] = group.before;
  const spelled = JSON.stringify(group.acts);
  if (turn?.op === 'turn' && others.length === 0 && spelled === JSON.stringify(before.acts))
    return `${sayTurn(turn, false, speech).slice(0, -1)}; the same.`;
  if (turn || group.family !== before.family || !before.acts.some((op) => op.op === 'close')) return null;
  const atTop = before.acts.map((op) => withPanels(op, (panel) => atOtherEnd(panel, speech)));
  return JSON.stringify(atTop) === spelled && spelled !== JSON.stringify(before.acts)
    ? 'Do the same at the top.'
    : null;
}

/** An act with its panels called otherwise. */
const withPanels = (op: BenchOp, other: (panel: string) => string): BenchOp => {
  if (op.op === 'close') return { ...op, panels: op.panels.map(other) };
  if (op.op === 'glue') return { ...op, panel: other(op.panel), onto: other(op.onto) };
  return op.op === 'stick' ? { ...op, panel: other(op.panel) } : op;
};

function atOtherEnd(panel: string, { labels }: Speech): string {
  const wanted = labels.get(panel)?.replace(/\bbottom\b/, 'top');
  return [...labels].find(([, label]) => label === wanted)?.[0] ?? panel;
}

/** `first`: how the piece lay when the first line was measured. */
function sayMove(
  op: ActGroup['before'][number],
  { lie, family }: ActGroup,
  first: Lie | undefined,
  speech: Speech,
): string {
  if (op.op === 'flip') return sayFlip(lie.mirrored === (speech.fence === 'left'), family !== 'crease');
  const back = lie.quarters === first?.quarters && lie.mirrored === first.mirrored;
  return sayTurn(op, back, speech);
}

/** Card that has only been cut lies any way up; said is which side, and how it lies to its drawing. */
function sayFirstLie({ before, lie }: ActGroup, { fence, tabEnd }: Speech): string {
  const { quarters, mirrored } = asSeen(lie, fence);
  const turn = quartersOf(quarters - firstLie(tabEnd, mirrored).quarters);
  if (before.length === 0 && turn === 0) return '';
  const way = turn === 0 ? '' : `, ${turnWords({ op: 'turn', quarters: turn }, 'left')} from the drawing`;
  return `Lay it ${mirrored ? 'good side' : 'inside'} up${way}.`;
}

/** `size`: the card as it lies. */
function sayActs({ family, acts }: ActGroup, size: Blank, speech: Speech, next: Numbered): Said {
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
        ...runs.map((run) => saySlits(run, size.up, speech)),
        ...sayLines(only(acts, 'slitLine'), size, (op, again) => sayRuler(op, again, speech)),
      ]);
    }
    case 'corner': {
      const runs = alike(only(acts, 'corner'), (op) => `${op.across} ${op.up}`);
      return just([
        ...runs.map((run) => sayCorners(run, speech)),
        ...sayLines(only(acts, 'snip'), size, (op, again) => saySnip(op, again, speech)),
      ]);
    }
    case 'ruler':
      return just(sayLines(only(acts, 'scoreLine'), size, (op, again) => sayRuler(op, again, speech)));
    case 'curve':
      return sayCurves(only(acts, 'scoreCurve'), speech, next);
    case 'path':
      return sayPaths(only(acts, 'cutPath'), size, speech, next);
    case 'window':
      return sayWindows(only(acts, 'window'), speech, next);
    case 'crease':
      return just(only(acts, 'crease').map((op) => sayCrease(op, speech)));
    case 'stick':
    case 'glue':
    case 'close':
      return just(sayJoining(acts, speech));
  }
}

/** Adhesive, folds and presses as they come; those of one kind that follow one another in the fewest sentences. */
function sayJoining(acts: readonly BenchOp[], speech: Speech): readonly string[] {
  const runs = acts.reduce<BenchOp[][]>((found, act) => {
    const last = found.at(-1);
    if (last?.[0]?.op === act.op) last.push(act);
    else found.push([act]);
    return found;
  }, []);
  const said: string[] = [];
  let it = '';
  const say = (named: string, sentence: string): void => {
    said.push(
      named === it ? sentence.replace(named, /^all |, | and |s$/.test(named) ? 'them' : 'it') : sentence,
    );
    it = named;
  };
  const named = (panels: readonly string[]): string => sayPanels([...new Set(panels)], speech.labels);
  const stuck = new Map(only(acts, 'stick').map(({ panel, face }) => [panel, face]));
  for (const [i, run] of runs.entries()) {
    for (const those of alike(only(run, 'stick'), (op) => `${op.face} ${JSON.stringify(op.tape)}`))
      say(named(those.map(({ panel }) => panel)), sayStick(those, speech));
    const closes = only(run, 'close');
    const pressed = gatherJoints(only(runs[i + 1] ?? [], 'glue'));
    const onto = closes[0] && pressed[0] && sayFoldOnto(closes[0], pressed[0], stuck, speech);
    if (onto && closes.length === 1 && pressed.length === 1) {
      say(named(closes[0]?.panels ?? []), onto);
      runs[i + 1] = [];
      it = '';
    } else if (closes.length === 1 && closes[0]) say(named(closes[0].panels), sayClose(closes[0], speech));
    else said.push(...sayCloses(closes, speech));
    for (const those of gatherJoints(only(run, 'glue')))
      say(named(those.map(({ panel }) => panel)), sayGlue(those, stuck, speech));
  }
  return said;
}

/** `Fold the left flap in, then the right flap.` */
function sayCloses(closes: readonly Op<'close'>[], speech: Speech): readonly string[] {
  const said: string[] = [];
  closes.forEach((op, i) => {
    const before = closes[i - 1];
    const goesOn = before?.by === 'fold' && op.by === 'fold' && before.way === 'in' && op.way === 'in';
    if (goesOn) said.push(`${said.pop()?.slice(0, -1)}, then ${sayPanels(op.panels, speech.labels)}.`);
    else said.push(sayClose(op, speech));
  });
  return said;
}

const only = <Name extends BenchOp['op']>(acts: readonly BenchOp[], name: Name): readonly Op<Name>[] =>
  acts.filter((op): op is Op<Name> => op.op === name);

/** Acts that share a key, in the order of the first of each. */
function alike<T>(acts: readonly T[], keyOf: (act: T) => string): readonly (readonly T[])[] {
  const runs = new Map<string, T[]>();
  for (const act of acts) runs.set(keyOf(act), [...(runs.get(keyOf(act)) ?? []), act]);
  return [...runs.values()];
}

/** Lines between two points, each with its mirrors. */
const sayLines = <T extends Op<'slitLine' | 'scoreLine' | 'snip'>>(
  lines: readonly T[],
  size: Blank,
  say: (line: T, again: string) => string,
): readonly string[] =>
  gatherMirrors(lines, ({ a, b }): readonly BenchPoint[] => [a, b], size).map(({ said, again }) =>
    say(said, sayAgain(again)),
  );

function sayCurves(scores: readonly Op<'scoreCurve'>[], speech: Speech, next: Numbered): Said {
  const named = scores.map((op) => ({ op, name: next('curve') }));
  return {
    headline: ['Score along the template.'],
    details: named.map(({ op, name }) => sayCurve(name, op, speech)),
    template: named.map(({ op, name }) => sayTemplate(name, op.points)),
  };
}

/** True curves are cut along the template; any other outline is said by its corners. */
function sayPaths(paths: readonly Op<'cutPath'>[], size: Blank, speech: Speech, next: Numbered): Said {
  const curved = paths.filter((path) => path.curved).map((path) => ({ path, name: next('cut') }));
  const straight = gatherMirrors(
    paths.filter((path) => !path.curved),
    ({ points }) => points,
    size,
  );
  return {
    headline: [
      ...(straight.length > 0 ? ['Cut corner to corner, across × up.'] : []),
      ...(curved.length > 0 ? ['Cut along the template.'] : []),
    ],
    details: [
      ...straight.map(({ said, again }) => sayPath(said, sayAgain(again), speech)),
      ...curved.map(({ path, name }) => sayCurvedCut(name, path, speech)),
    ],
    template: curved.map(({ path, name }) => sayTemplate(name, path.points)),
  };
}

function sayWindows(holes: readonly Op<'window'>[], speech: Speech, next: Numbered): Said {
  const headline: string[] = [];
  const details: string[] = [];
  const template: string[] = [];
  for (const hole of holes) {
    if (hole.hole === 'window' && (isUpright(hole.ring) || hole.ring.length <= 6))
      headline.push(sayWindow(hole, speech));
    else {
      const name = next('hole');
      details.push(sayHole(name, hole, speech));
      template.push(sayTemplate(name, hole.ring));
    }
  }
  return { headline: details.length > 0 ? [...headline, 'Cut out the holes.'] : headline, details, template };
}

/** Joints onto one panel in one sentence, and one panel onto several; a ring of them, each onto the next, in one. */
function gatherJoints(glued: readonly Op<'glue'>[]): readonly (readonly Op<'glue'>[])[] {
  if (isRing(glued)) return [glued];
  const byPanel = alike(glued, ({ panel, lap }) => `${panel} ${lap}`);
  const byTarget = alike(glued, ({ onto, lap }) => `${onto} ${lap}`);
  return byTarget.length < byPanel.length ? byTarget : byPanel;
}

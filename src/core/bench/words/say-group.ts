import type { Blank } from '../../net/types';
import { asSeen, quartersOf, sizeAsItLies } from '../equal/card-lie';
import { firstLie } from '../first-lie';
import type { BenchOp, BenchPoint } from '../types';
import type { ActGroup } from './group-acts';
import { chainLines } from './line-chains';
import { isRing } from './panel-ring';
import { gatherRepeats, type Repeated, sayAgain } from './same-again';
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
  sayFoldOntoTheirs,
  sayGlue,
  sayHole,
  sayKept,
  sayPath,
  sayScores,
  saySlits,
  sayStick,
  sayTemplate,
  sayTurn,
  sayWay,
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
  return groups.map((group, i) => {
    const before = groups[i - 1];
    const fresh = before?.family === 'blank';
    const said = sayActs(group, sizeAsItLies(blank, group.lie), speech, next);
    const alone = said.headline.join(' ');
    const again = before && sayTheSame(group, before, speech);
    if (again) return { headline: [again], details: [], template: [], alone };
    const moves = fresh
      ? [groups.some(({ kind }) => kind === 'score') ? sayFirstLie(group, speech) : '']
      : group.before.map((op) => sayMove(op, group, groups.slice(0, i), speech));
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

/** `done`: the steps before. A turn that undoes the one before it is said as that. */
function sayMove(
  op: ActGroup['before'][number],
  { lie, family, before }: ActGroup,
  done: readonly ActGroup[],
  speech: Speech,
): string {
  if (op.op === 'flip') return sayFlip(lie.mirrored === (speech.fence === 'left'), family !== 'crease');
  const last = done.findLast((group) => group.before.length > 0);
  const [undone] = last?.before ?? [];
  const back =
    before.length === 1 &&
    last?.before.length === 1 &&
    done.some(({ to, kind }) => to <= last.from && kind !== 'blank') &&
    undone?.op === 'turn' &&
    undone.quarters + op.quarters === 4;
  return sayTurn(op, back, speech);
}

/** Card that has only been cut lies any way up; said is which side, and how it lies to its drawing. */
function sayFirstLie({ lie }: ActGroup, { fence, tabEnd }: Speech): string {
  const { quarters, mirrored } = asSeen(lie, fence);
  const turn = quartersOf(quarters - firstLie(tabEnd, mirrored).quarters);
  const way = turn === 0 ? '' : `, ${turnWords({ op: 'turn', quarters: turn }, 'left')} from the drawing`;
  return `${mirrored ? 'Good side' : 'Inside'} up${way}.`;
}

/** `size`: the card as it lies. */
function sayActs({ family, acts }: ActGroup, size: Blank, speech: Speech, next: Numbered): Said {
  const just = (headline: readonly string[]): Said => ({ headline, details: [], template: [] });
  switch (family) {
    case 'blank':
      return just(only(acts, 'blank').map((op) => sayBlank(op, speech)));
    case 'score':
      return just(sayStraight(only(acts, 'score'), speech));
    case 'slit': {
      const runs = alike(only(acts, 'slit'), (op) => `${op.from} ${op.to}`);
      return just([
        ...runs.map((run) => saySlits(run, size.up, speech)),
        ...sayLines('Slit', only(acts, 'slitLine'), size, speech),
      ]);
    }
    case 'corner': {
      const runs = alike(only(acts, 'corner'), (op) => `${op.across} ${op.up}`);
      return just([
        ...runs.map((run) => sayCorners(run, speech)),
        ...sayLines('Snip', only(acts, 'snip'), size, speech),
      ]);
    }
    case 'ruler':
      return just(sayLines('Score', only(acts, 'scoreLine'), size, speech));
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
  const named = (panels: readonly string[]): string => sayPanels([...new Set(panels)], speech.labels);
  /** What was named last is `it` or `them`. */
  const say = (sentence: string, panels: readonly string[]): void => {
    const [verb = '', met] = sentence.split(' onto ');
    const isIt = (words: string | undefined): boolean => it !== '' && words === `${it}.`;
    const pronoun = /^all |^both |, | and |s$/.test(it) ? 'them' : 'it';
    if (isIt(met)) said.push(`${verb} onto ${pronoun}.`);
    else said.push(named(panels) === it ? sentence.replace(it, pronoun) : sentence);
    it = named(panels);
  };
  const stuck = new Map(only(acts, 'stick').map(({ panel, face }) => [panel, face]));
  for (const [i, run] of runs.entries()) {
    const sticks = only(run, 'stick');
    if (sticks.length > 0) {
      said.push(sayTogether(alike(sticks, stickKey).map((those) => sayStick(those, speech))));
      it = named(sticks.map(({ panel }) => panel));
    }
    const closes = only(run, 'close');
    const glued = only(runs[i + 1] ?? [], 'glue');
    const pressed = gatherJoints(glued);
    const [fold] = closes;
    const onto =
      fold &&
      closes.length === 1 &&
      (sayFoldOntoTheirs(fold, glued, stuck, speech) ??
        (pressed[0] && pressed.length === 1 ? sayFoldOnto(fold, pressed[0], stuck, speech) : null));
    if (onto) {
      say(onto, fold.panels);
      runs[i + 1] = [];
      it = '';
    } else if (fold && closes.length === 1) say(sayClose(fold, speech), fold.panels);
    else said.push(...sayCloses(closes, speech));
    const presses = gatherJoints(only(run, 'glue'));
    if (presses.length > 1) said.push(sayTogether(presses.map((those) => sayGlue(those, stuck, speech))));
    else
      for (const those of presses)
        say(
          sayGlue(those, stuck, speech),
          those.map(({ panel }) => panel),
        );
  }
  return said;
}

const stickKey = ({ face, tape }: Op<'stick'>): string => `${face} ${JSON.stringify(tape)}`;

/** Sentences that start with the same verb as one: `Press the tab to the wall, and the fin to the fin.` */
function sayTogether(sentences: readonly string[]): string {
  const [first = '', ...others] = sentences.map((sentence) => sentence.slice(0, -1));
  const [verb = ''] = first.split(' ');
  return others
    .reduce(
      (said, other) =>
        other.startsWith(`${verb} `) ? `${said}, and ${other.slice(verb.length + 1)}` : `${said}. ${other}`,
      first,
    )
    .concat('.');
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

/** Scores that run right across first, then those that stop: marks with the same stops, and stops of the same mark, in one sentence. */
function sayStraight(scores: readonly Op<'score'>[], speech: Speech): readonly string[] {
  const byStops = alike(scores, ({ span }) => JSON.stringify(span));
  const byMark = alike(scores, ({ at, span }) => `${at} ${span === null}`);
  const marks = (run: readonly Op<'score'>[]) => [...new Set(run.map(({ at }) => at))];
  const stops = ({ span }: Op<'score'>) => (span ? [span] : []);
  return byMark.length < byStops.length
    ? byMark.map((run) => sayScores(marks(run), run.flatMap(stops), speech))
    : byStops.map((run) => sayScores(marks(run), run.slice(0, 1).flatMap(stops), speech));
}

/** Lines between two points: those that repeat with their repeats, the others end to end where they meet; the fewest words of two ways. */
function sayLines(
  verb: 'Score' | 'Slit' | 'Snip',
  lines: readonly Op<'slitLine' | 'scoreLine' | 'snip'>[],
  size: Blank,
  speech: Speech,
): readonly string[] {
  const kept = alike(lines, (line) => (line.op === 'snip' ? sayKept(line) : ''));
  return kept.flatMap((run) => {
    const keeps = run[0]?.op === 'snip' ? sayKept(run[0]) : '';
    const single = gatherRepeats(run, ({ a, b }): readonly BenchPoint[] => [a, b], size);
    const alone = single.filter(({ mirrors, farther }) => mirrors.length === 0 && !farther);
    const chains = verb === 'Score' ? chainLines(run) : [];
    const ways = [
      sayWays(
        verb,
        keeps,
        [
          ...single
            .filter((one) => !alone.includes(one))
            .map(({ said: { a, b }, ...again }) => ({ said: [a, b], ...again })),
          ...(verb === 'Score'
            ? chainLines(alone.map(({ said }) => said))
            : alone.map(({ said: { a, b } }) => [a, b])
          ).map((said) => ({ said, mirrors: [], farther: null })),
        ],
        speech,
      ),
      ...(chains.length > 0
        ? [
            sayWays(
              verb,
              keeps,
              gatherRepeats(chains, (points) => points, size),
              speech,
            ),
          ]
        : []),
    ];
    return ways.toSorted((a, b) => a.join(' ').length - b.join(' ').length)[0] ?? [];
  });
}

/** `Snip from A to B, and from C to D.`, each that repeats in a sentence of its own. */
function sayWays(
  verb: string,
  keeps: string,
  runs: readonly Repeated<readonly BenchPoint[]>[],
  speech: Speech,
): readonly string[] {
  const said = (run: Repeated<readonly BenchPoint[]>) => sayAgain(run, speech.ruler);
  const alone = runs.filter((run) => said(run) === '').map((run) => sayWay(run.said, speech));
  return [
    ...runs
      .filter((run) => said(run) !== '')
      .map((run) => `${verb} ${sayWay(run.said, speech)}${keeps}${said(run)}.`),
    ...(alone.length > 0 ? [`${verb} ${alone.join(', and ')}${keeps}.`] : []),
  ];
}

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
  const straight = gatherRepeats(
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
      ...straight.map((path) => sayPath(path.said, sayAgain(path, speech.ruler), speech)),
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

import type { Blank } from '../../net/types';
import { asSeen, quartersOf, sizeAsItLies } from '../equal/card-lie';
import { firstLie } from '../first-lie';
import type { BenchOp } from '../types';
import { alike, only } from './alike-acts';
import type { ActGroup } from './group-acts';
import { gatherRepeats, sayAgain } from './same-again';
import {
  isUpright,
  type Op,
  type Speech,
  sayBlank,
  sayCorners,
  sayCrease,
  sayCurve,
  sayCurvedCut,
  sayFlip,
  sayHole,
  sayPath,
  saySlits,
  sayTemplate,
  sayThread,
  sayTurn,
  sayWindow,
  turnWords,
} from './say-act';
import { sayJoining } from './say-joining';
import { sayLines, sayStraight } from './say-lines';

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
  return op.op === 'stick' || op.op === 'thread' ? { ...op, panel: other(op.panel) } : op;
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
    case 'thread':
      return just(only(acts, 'thread').map((op) => sayThread(op, speech)));
    case 'stick':
    case 'glue':
    case 'close':
      return just(sayJoining(acts, speech));
  }
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

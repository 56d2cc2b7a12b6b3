import { FINGER_REACH, HAND_WIDTH } from '../../net/hand-reach';
import { paringsOf } from '../../net/parings';
import type { BoxNet, PieceNet } from '../../net/types';
import type { Role } from '../../styles/language/types';
import { inches, millimetres, printLength, ticks } from '../../units';
import { sizeAsItLies } from '../equal/card-lie';
import type { BenchTool } from '../types';
import type { ActGroup } from './group-acts';
import type { Speech } from './say-act';

/** A narrower strip is not for the trimmer: fingers come too near the blade. source: common practice, no source */
const SAFE_STRIP = inches(0, 1, 2);

interface Bench {
  readonly piece: PieceNet;
  readonly box: BoxNet;
  readonly tool: BenchTool;
  readonly groups: readonly ActGroup[];
  readonly speech: Speech;
}

/** What a practiced maker adds to a step, where its numbers call for it. `words`: what the step says. */
export const tipsFor = (group: ActGroup, bench: Bench, words: string): readonly string[] => [
  ...styleTips(group),
  ...workTips(group, bench),
  ...markTips(words),
];

/** Tips the style itself gives with a closing step. */
const styleTips = ({ acts }: ActGroup): readonly string[] =>
  acts.flatMap((op) =>
    (op.op === 'close' || op.op === 'glue' || op.op === 'thread') && op.tip !== null ? [op.tip] : [],
  );

function workTips(group: ActGroup, bench: Bench): readonly string[] {
  switch (group.kind) {
    case 'blank':
      return longBlank(group, bench);
    case 'score':
      return [...fenceStays(group, bench), ...truestMark(group, bench)];
    case 'slit':
      return slitEnds(group, bench);
    case 'cut':
      return [...narrowStrip(group), ...pareFlaps(group, bench)];
    case 'fold':
      return [];
    case 'glue':
      return narrowOpening(group, bench);
    case 'close':
      return [];
  }
}

function slitEnds({ acts, lie }: ActGroup, { piece }: Bench): readonly string[] {
  const { up } = sizeAsItLies(piece.blank, lie);
  if (acts.some((op) => op.op === 'slit' && op.from === 0)) return ['Stop at the cross score.'];
  return acts.some((op) => op.op === 'slit' && op.to === up) ? ['Start at the cross score.'] : [];
}

function longBlank({ acts }: ActGroup, { tool }: Bench): readonly string[] {
  const [blank] = acts;
  if (blank?.op !== 'blank' || Math.max(blank.across, blank.up) <= tool.longestCut) return [];
  return ['Longer than the trimmer cuts: use a knife and metal ruler.'];
}

/** On a trimmer half the work is setting the fence: say so when it need not be touched. */
function fenceStays({ acts, from }: ActGroup, { groups, tool }: Bench): readonly string[] {
  const before = groups.filter((group) => group.family === 'score' && group.to <= from).at(-1);
  const [last, first] = [before?.acts.at(-1), acts[0]];
  const isSame = last?.op === 'score' && first?.op === 'score' && last.at === first.at;
  return isSame && tool.kind === 'fence' ? ['Same fence setting.'] : [];
}

/** Marks with more play than this need no more care than any other. source: our choice */
const EASY = inches(0, 1, 16);

/** Before the first score: the marks that must be truest, how far they may be off, and what keeps them alike. */
function truestMark({ from }: ActGroup, { box, groups, speech }: Bench): readonly string[] {
  const [least] = box.fits ?? [];
  const isFirst = groups.find(({ kind }) => kind === 'score')?.from === from;
  if (!isFirst || least === undefined || least.eachMark < 0 || least.eachMark >= EASY) return [];
  const { unit } = speech.ruler;
  const step = unit === 'in' ? inches(0, 1, 64) : millimetres(0.1);
  const play = ticks(Math.floor(least.eachMark / step) * step);
  const within = play === 0 ? 'to a hair' : `within ${printLength(play, { unit, finest: step }).text}`;
  return [`Be most exact, ${within}, with ${least.fit.truest}. ${least.fit.saves}`];
}

function narrowStrip({ acts }: ActGroup): readonly string[] {
  const narrow = acts.some((op) => op.op === 'corner' && Math.min(op.across, op.up) < SAFE_STRIP);
  return narrow ? ['Narrow strip: use scissors, or a knife and metal ruler.'] : [];
}

/** What flaps are called that are pared at both sides. */
const PARED_FLAPS: Readonly<Partial<Record<Role, string>>> = {
  bottomFlap: 'inner bottom flaps',
  dustFlap: 'dust flaps',
  lid: 'inner flaps',
  lockFlap: 'corner tabs',
};

/** Flaps that fold in first are slit as wide as their wall, and lie between walls that are a card nearer. */
function pareFlaps({ to }: ActGroup, { piece, groups, speech }: Bench): readonly string[] {
  const isLastCut = groups.filter(({ kind }) => kind === 'cut' || kind === 'slit').at(-1)?.to === to;
  if (!isLastCut) return [];
  const pared = speech.ruler.unit === 'in' ? '1/32 in' : '0.8 mm';
  const roles = paringsOf(piece).map(({ face }) => piece.faces[face]?.role ?? 'wall');
  const flaps = [...new Set(roles)].flatMap((role) => PARED_FLAPS[role] ?? []);
  const tabs = roles.filter((role) => role === 'glueTab').length;
  return [
    ...(flaps.length > 0 ? [`Pare ${pared} off each side of the ${flaps.join(' and the ')}.`] : []),
    ...(tabs > 0 ? [`Pare ${pared} off the foot of the ${tabs > 1 ? 'corner tabs' : 'glue tab'}.`] : []),
  ];
}

/** The last bottom flap is pressed from inside, and a small opening lets no hand in. */
function narrowOpening({ to }: ActGroup, { piece, box, groups }: Bench): readonly string[] {
  const flaps = new Set(piece.faces.filter(({ role }) => role === 'bottomFlap').map(({ panel }) => panel));
  const closesBottom = ({ acts }: ActGroup): boolean =>
    acts.some((op) => op.op === 'glue' && flaps.has(op.panel) && flaps.has(op.onto));
  const isLast = groups.filter(closesBottom).at(-1)?.to === to;
  const { width, depth } = box.inside;
  const [opening] = width < depth ? [width] : [depth];
  if (!isLast || opening >= HAND_WIDTH || box.inside.height <= FINGER_REACH) return [];
  return ['Too narrow for a hand: press the bottom with a bone folder.'];
}

/** `full` and `scant` want saying once, and what stands in brackets. */
const markTips = (words: string): readonly string[] =>
  / (full|scant)\b/.test(words) ? ['Full is a hair past the mark, scant a hair short; mm in brackets.'] : [];

import type { BenchOp } from '../types';
import { alike, only } from './alike-acts';
import { isRing } from './panel-ring';
import { type Op, type Speech, sayClose, sayFoldOnto, sayFoldOntoTheirs, sayGlue, sayStick } from './say-act';
import { sayPanels } from './say-panels';

/** Adhesive, folds and presses as they come; those of one kind that follow one another in the fewest sentences. */
export function sayJoining(acts: readonly BenchOp[], speech: Speech): readonly string[] {
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

/** Joints onto one panel in one sentence, and one panel onto several; a ring of them, each onto the next, in one. */
function gatherJoints(glued: readonly Op<'glue'>[]): readonly (readonly Op<'glue'>[])[] {
  if (isRing(glued)) return [glued];
  const byPanel = alike(glued, ({ panel, lap }) => `${panel} ${lap}`);
  const byTarget = alike(glued, ({ onto, lap }) => `${onto} ${lap}`);
  return byTarget.length < byPanel.length ? byTarget : byPanel;
}

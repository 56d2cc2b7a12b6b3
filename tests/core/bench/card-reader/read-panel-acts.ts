import type { BenchOp, CloseWay } from '../../../../src/core/bench/types';
import type { HeardSoFar, Reader } from './heard';
import { every, readSaid } from './read-length-words';
import { readPanels } from './read-panels';

/** The step before with every panel of the bottom as its like at the top. */
export function readAtTop(
  [end = '']: readonly string[],
  { key, before }: HeardSoFar,
): readonly BenchOp[] | null {
  const other = (panel: string): string => {
    const wanted = key.labels
      .get(panel)
      ?.split(' ')
      .map((word) => (word === 'bottom' ? end : word));
    return [...key.labels].find(([, label]) => label === wanted?.join(' '))?.[0] ?? panel;
  };
  return before.map((op) => {
    if (op.op === 'close') return { ...op, panels: op.panels.map(other) };
    if (op.op === 'glue') return { ...op, panel: other(op.panel), onto: other(op.onto) };
    return op.op === 'stick' ? { ...op, panel: other(op.panel) } : op;
  });
}

export function readStick(
  [face, panels = '', strips = '1', long = '']: readonly (string | undefined)[],
  heard: HeardSoFar,
): readonly BenchOp[] | null {
  const length = readSaid(long, heard.key.unit);
  if (length === null) return null;
  return (
    readThose(panels, heard)?.map((panel) => ({
      op: 'stick',
      panel,
      face: face === 'inside' ? 'inside' : 'outside',
      tape: { strips: Number(strips), length },
    })) ?? null
  );
}

export const readDab = (
  [face, panels = '']: readonly (string | undefined)[],
  heard: HeardSoFar,
): readonly BenchOp[] | null =>
  readThose(panels, heard)?.map((panel) => ({
    op: 'stick',
    panel,
    face: face === 'inside' ? 'inside' : 'outside',
    tape: 'glue',
  })) ?? null;

/** Ribbon through a panel; what it is for is a tip, and no part of the program. */
export const readThread = (
  [long = '', panel = '']: readonly (string | undefined)[],
  heard: HeardSoFar,
): readonly BenchOp[] | null => {
  const length = readSaid(long, heard.key.unit);
  if (length === null) return null;
  return readThose(panel, heard)?.map((one) => ({ op: 'thread', panel: one, length, tip: '' })) ?? null;
};

/** Panels by name, or those named last. */
const readThose = (words: string, { key, it }: HeardSoFar): readonly string[] | null =>
  words === 'it' || words === 'them' ? [...new Set(it)] : readPanels(words, key.labels);

/** Adhesive on one face meets the other face of what it is pressed to, where no face is said. */
const press = (panel: string, onto: string, lap: string | undefined, { stuck }: HeardSoFar): BenchOp => ({
  op: 'glue',
  panel,
  onto,
  lap: (lap ?? (stuck.get(panel) === 'outside' ? 'inside' : 'outside')) === 'inside' ? 'inside' : 'outside',
  tip: null,
});

export function readGlue(
  [tabs = '', lap, targets = '']: readonly (string | undefined)[],
  heard: HeardSoFar,
): BenchOp[] | null {
  const [panels, ontos] = [readThose(tabs, heard), readPanels(targets, heard.key.labels)];
  return panels && ontos && panels.flatMap((panel) => ontos.map((onto) => press(panel, onto, lap, heard)));
}

const WAYS_ONTO: Readonly<Record<string, CloseWay>> = { over: 'flat', up: 'up', in: 'in' };

/** One panel folded onto others and pressed: it has the adhesive, or they have. */
export function readFoldOnto(
  [which = '', way = '', met = '']: readonly string[],
  heard: HeardSoFar,
): BenchOp[] | null {
  const [panels, others] = [readThose(which, heard), readThose(met, heard)];
  const [folded] = panels ?? [];
  const how = WAYS_ONTO[way];
  if (panels?.length !== 1 || folded === undefined || !others || how === undefined) return null;
  return [
    { op: 'close', panels, by: 'fold', way: how, tip: null },
    ...others.map((other) =>
      heard.stuck.has(folded)
        ? press(folded, other, undefined, heard)
        : press(other, folded, undefined, heard),
    ),
  ];
}

/** Walls, each onto the tabs with adhesive that are named after it. */
export function readFoldOntoTheirs(
  [which = '', way = '']: readonly string[],
  heard: HeardSoFar,
): BenchOp[] | null {
  const { labels } = heard.key;
  const walls = readThose(which, heard);
  const how = WAYS_ONTO[way];
  const words = (panel: string): readonly string[] => labels.get(panel)?.split(' ') ?? [];
  const places = (wall: string): readonly string[] =>
    words(wall).filter((word) => word !== words(wall).at(-1));
  if (!walls || how === undefined) return null;
  return [
    { op: 'close', panels: walls, by: 'fold', way: how, tip: null },
    ...walls.flatMap((wall) =>
      [...heard.stuck.keys()]
        .filter((tab) => places(wall).every((word) => words(tab).includes(word)))
        .map((tab) => press(tab, wall, undefined, heard)),
    ),
  ];
}

/** Numbered panels, each onto the one after it, the last onto the first. */
export function readRing(
  [tabs = '', lap, target = '']: readonly (string | undefined)[],
  heard: HeardSoFar,
): BenchOp[] | null {
  const panels = readThose(tabs, heard);
  const called = (number: number): string | undefined =>
    [...heard.key.labels].find(([, label]) => label === `${target} ${number}`)?.[0];
  const count = panels?.length ?? 0;
  const numbered = panels?.map((panel) => ({ panel, number: Number(/\d+$/.exec(panel)?.[0]) }));
  return numbered
    ? (every(numbered, ({ panel, number }) => {
        const onto = called((number % count) + 1);
        return onto === undefined ? null : press(panel, onto, lap, heard);
      })?.slice() ?? null)
    : null;
}

/** Sentences that turn panels, each with how and which way. */
export function readsOfClose(): readonly (readonly [RegExp, Reader])[] {
  const turn = (by: 'fold' | 'tuck', way: CloseWay, panels: readonly string[] | null): BenchOp[] | null =>
    panels && [{ op: 'close', panels, by, way, tip: null }];
  const ways: readonly (readonly [RegExp, CloseWay])[] = [
    [/^Fold (.+) over\.$/, 'flat'],
    [/^Fold (.+) back\.$/, 'back'],
    [/^Fold (.+?) up(, then .+)?\.$/, 'up'],
    [/^Fold (.+?) in(, then .+)?\.$/, 'in'],
    [/^Fold (.+?) out(, then .+)?\.$/, 'out'],
    [/^Bring (.+) together\.$/, 'together'],
    [/^Roll up (.+)\.$/, 'round'],
  ];
  return [
    [/^Open and square it\.$/, () => turn('fold', 'open', [])],
    [/^Open and tuck it in\.$/, () => turn('tuck', 'open', [])],
    [
      /^Tuck (the (?:.+ )?lid) in\.$/,
      ([lid = ''], { key }) =>
        turn('tuck', 'in', readPanels(`${lid} and ${lid.replace(/lid$/, 'tuck')}`, key.labels)),
    ],
    [/^Tuck (.+) in\.$/, ([panels = ''], heard) => turn('tuck', 'in', readThose(panels, heard))],
    ...ways.map(([pattern, way]): readonly [RegExp, Reader] => [
      pattern,
      ([panels = '', then = ''], heard) =>
        every(`${panels}${then}`.split(', then '), (those) =>
          turn('fold', way, readThose(those, heard)),
        )?.flat() ?? null,
    ]),
  ];
}

import type { BlankSide } from '../../net/tab-end';
import type { Blank } from '../../net/types';
import { type LengthUnit, type Ticks, ticks } from '../../units';
import { asSeen, flipped, type Lie, quartersOf, sizeAsItLies } from '../equal/card-lie';
import { firstLie } from '../first-lie';
import type { BenchOp, BenchPoint, CardFace, CloseWay, HoleKind } from '../types';
import { every, readSaid, readSaidList, readSaidPoint, splitList } from './read-length-words';
import { readPanels } from './read-panels';
import type { Op } from './say-act';

/** What a reader of the card knows besides its words. */
export interface CardKey {
  readonly unit: LengthUnit;
  readonly fence: 'left' | 'right';
  /** Where the tab ends in the net, which says how the piece lies in its drawing. */
  readonly tabEnd: BlankSide | null;
  /** What each panel is called on the card, as `panelLabels` gives it. */
  readonly labels: ReadonlyMap<string, string>;
}

/** What was read before a sentence and gives it its meaning. */
export interface HeardSoFar {
  readonly key: CardKey;
  readonly blank: Blank | null;
  readonly lie: Lie;
  readonly templates: ReadonlyMap<string, readonly BenchPoint[]>;
  /** By how many quarters it was turned last. */
  readonly turned: 1 | 2 | 3 | null;
  /** What the step before said. */
  readonly before: readonly BenchOp[];
  /** The panels named last, which `it` and `them` mean. */
  readonly it: readonly string[];
  /** The panels that got adhesive in this step, and on which face. */
  readonly stuck: ReadonlyMap<string, CardFace>;
}

type Reader = (words: readonly string[], heard: HeardSoFar) => readonly BenchOp[] | null;

/** Each kind of sentence and what it says. The words are the card's own; nothing is shared with what writes them. */
const SENTENCES: readonly (readonly [RegExp, Reader])[] = [
  [/^Cut (\d.*?) × (.+?)( in| mm)?\.$/, readBlank],
  [/^(half turn|quarter turn clockwise|quarter turn counterclockwise)\.$/i, readTurn],
  [
    /^Turn back\.$/,
    (_, { turned }) => turned && [{ op: 'turn', quarters: quartersOf(-turned) as 1 | 2 | 3 }],
  ],
  [/^(half turn|quarter turn clockwise|quarter turn counterclockwise); the same\.$/i, readAgain],
  [/^Do the same at the (top)\.$/, readAtTop],
  [/^Turn (?:over left to right, )?(?:good side|inside) up\.$/, () => [{ op: 'flip' }]],
  [/^(Good side|Inside) up(?:, (.+) from the drawing)?\.$/, readFirstLie],
  [/^(Score|Slit) at (.+), from (.+) up\.$/, readStopped],
  [
    /^Score at (.+)\.$/,
    ([at = ''], { key }) => eachLength(at, key.unit, (at) => ({ op: 'score', at, span: null })),
  ],
  [/^Slit the lower (.+) at (.+)\.$/, ([to = '', at = ''], { key }) => slits(at, '0 mm', to, key.unit)],
  [/^Cut away (?:the (.+)|all four) corners?: (.+) × (.+?)( in| mm)?\.$/, readCorners],
  [/^(Score|Slit|Snip) from (.+?)(; keep the smaller part)?(?:; the same (.+))?\.$/, readRuled],
  [/^Cut out the window from (.+) to (.+)\.$/, readUprightWindow],
  [/^Cut out the window with corners (.+)\.$/, readWindow],
  [
    /^Fold every score right over(?:, (away from|towards) its scored side)?; rub down, open\.$/,
    ([way]) => [{ op: 'crease', over: way === 'towards' ? 'groove' : 'bead' }],
  ],
  [/^(Tape|Press) (.+), and (.+)\.$/, readTogether],
  [/^Tape the (inside|outside) of (.+?), (?:(\d+) strips of )?([^,]+?)( each)?\.$/, readStick],
  [
    /^Dab liquid glue on the (inside|outside) of (.+)\.$/,
    ([face, panels = ''], heard) =>
      readThose(panels, heard)?.map((panel) => ({
        op: 'stick',
        panel,
        face: face === 'inside' ? 'inside' : 'outside',
        tape: 'glue',
      })) ?? null,
  ],
  [/^Press (.+), each to (?:the (inside|outside) of )?the next (.+)\.$/, readRing],
  [/^Press (.+?) to (?:the (inside|outside) of )?(.+)\.$/, readGlue],
  [/^Fold (.+) (over|up|in) onto their tabs\.$/, readFoldOntoTheirs],
  [/^Fold (.+?) (over|up|in) onto (.+)\.$/, readFoldOnto],
  ...readsOfClose(),
  [/^(?:Score|Cut) along the template\.$|^Cut out the holes\.$/, () => []],
  [/^Cut corner to corner, across × up\.$/, () => []],
  [/^(\d.* × .+?)(; keep the smaller part)?(?:; the same (.+))?\.$/, readPath],
];

/** Lines laid out by template: their points were read before. */
const TEMPLATE_LINES = [
  /^(Curve \d+), from .+, (.+) deep\.$/,
  /^(Cut \d+), from .+?(; keep the smaller part)?\.$/,
  /^(Hole \d+): ([a-z ]+, .+, middle at .+)\.$/,
] as const;

/** The acts that a sentence says, or null if it says nothing known. */
export function readSentence(sentence: string, heard: HeardSoFar): readonly BenchOp[] | null {
  for (const pattern of TEMPLATE_LINES) {
    const [, name, what = ''] = pattern.exec(sentence) ?? [];
    if (name !== undefined) return readTemplateLine(name, what, heard);
  }
  for (const [pattern, reader] of SENTENCES) {
    const found = pattern.exec(sentence);
    const ops = found ? reader(found.slice(1), heard) : null;
    if (ops) return ops;
  }
  return null;
}

/** A template row as its name and points; null if it is none. */
export function readTemplate(row: string): readonly [string, readonly BenchPoint[]] | null {
  const [, name, list] = /^(\w+ \d+) runs through (.+) mm\.$/.exec(row) ?? [];
  const points = every((list ?? '').split('; '), (pair) => {
    const [x, y] = pair.split(' × ').map((length) => readSaid(`${length} mm`, 'mm'));
    return x == null || y == null ? null : { x, y };
  });
  return name === undefined || !points ? null : [name, points];
}

function readTemplateLine(
  name: string,
  what: string,
  { key, templates }: HeardSoFar,
): readonly BenchOp[] | null {
  const points = templates.get(name);
  if (!points) return null;
  if (name.startsWith('Cut'))
    return [{ op: 'cutPath', points, curved: true, ...(what ? { keeps: 'smaller' } : {}) }];
  if (name.startsWith('Hole')) {
    const hole = readHole(what, points, key.unit);
    return hole && [{ op: 'window', ring: points, hole }];
  }
  const rise = readSaid(what, key.unit);
  return rise === null ? null : [{ op: 'scoreCurve', points, rise }];
}

const HOLES: readonly HoleKind[] = ['window', 'rounded window', 'arch', 'round', 'oval', 'heart', 'slot'];

/** Which kind of hole, if its size and middle are those of its points; a middle between two ticks is said as either. */
function readHole(
  what: string,
  points: readonly BenchPoint[],
  unit: LengthUnit,
): Op<'window'>['hole'] | null {
  const [, kind, wide = '', high, mark = '', at = ''] =
    /^([a-z ]+), (.+?)(?: × (.+?))?( in| mm)?, middle at (.+)$/.exec(what) ?? [];
  const up = readSaid(`${high ?? wide}${mark}`, unit);
  const across = high === undefined ? up : readSaid(wide, unit);
  const middle = readSaidPoint(at, unit);
  if (across === null || up === null || middle === null) return null;
  const fits = (all: readonly number[], long: number, mid: number): boolean => {
    const [least, most] = [Math.min(...all), Math.max(...all)];
    return most - least === long && Math.abs(most + least - 2 * mid) <= 1;
  };
  const same =
    fits(
      points.map(({ x }) => x),
      across,
      middle.x,
    ) &&
    fits(
      points.map(({ y }) => y),
      up,
      middle.y,
    );
  return same ? (HOLES.find((each) => each === kind) ?? null) : null;
}

/** `11 × 4 1/2 in`: where both are on their marks the unit is said once. */
function readBlank(
  [first = '', second = '', unit = '']: readonly string[],
  { key }: HeardSoFar,
): BenchOp[] | null {
  const across = readSaid(first, key.unit);
  const up = readSaid(`${second}${unit}`, key.unit);
  return across === null || up === null ? null : [{ op: 'blank', across, up }];
}

function readTurn([turn = '']: readonly string[], { key }: HeardSoFar): BenchOp[] {
  return [{ op: 'turn', quarters: quartersSaid(turn, key.fence) }];
}

/** Counterclockwise as eyes see it; measured from a fence on the right, a turn runs the other way. */
function quartersSaid(turn: string, fence: CardKey['fence']): 1 | 2 | 3 {
  const said = turn.toLowerCase();
  if (said === 'half turn') return 2;
  return (said === 'quarter turn counterclockwise') === (fence === 'left') ? 1 : 3;
}

function readAgain([turn = '']: readonly string[], heard: HeardSoFar): BenchOp[] {
  return [...readTurn([turn], heard), ...heard.before.filter(({ op }) => op !== 'turn' && op !== 'flip')];
}

/** The step before with every panel of the bottom as its like at the top. */
function readAtTop([end = '']: readonly string[], { key, before }: HeardSoFar): readonly BenchOp[] | null {
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

/** What brings the blank from the net's own frame to how it is said to lie, which is seen from the drawing. */
function readFirstLie(
  [face, turn]: readonly (string | undefined)[],
  { lie, key: { fence, tabEnd } }: HeardSoFar,
): BenchOp[] {
  const drawn = firstLie(tabEnd, face === 'Good side');
  const said = turn === undefined ? 0 : quartersSaid(turn, 'left');
  const wanted = asSeen({ ...drawn, quarters: quartersOf(drawn.quarters + said) }, fence);
  const flips = wanted.mirrored !== lie.mirrored;
  const by = quartersOf(wanted.quarters - (flips ? flipped(lie) : lie).quarters);
  return [
    ...(flips ? [{ op: 'flip' } as const] : []),
    ...(by === 0 ? [] : [{ op: 'turn', quarters: by } as const]),
  ];
}

function eachLength(words: string, unit: LengthUnit, act: (at: Ticks) => BenchOp): readonly BenchOp[] | null {
  return readSaidList(words, unit)?.map(act) ?? null;
}

/** Marks and stops: `from 3 in` to the far edge, or `from 1 to 2 and 4 to 5 in`, every mark with every stop. */
function readStopped(
  [verb, at = '', stops = '']: readonly string[],
  { key, blank, lie }: HeardSoFar,
): readonly BenchOp[] | null {
  const { unit } = key;
  if (!stops.includes(' to ')) {
    const [from, to] = [readSaid(stops, unit), blank && sizeAsItLies(blank, lie).up];
    if (from === null || to === null) return null;
    return eachLength(at, unit, (place) => ({ op: 'slit', at: place, from, to }));
  }
  const spans = every(splitList(stops), (span) => {
    const [from, to] = span.split(' to ').map((end) => readSaid(end, unit));
    return from == null || to == null ? null : { from, to };
  });
  return (
    spans &&
    (every(spans, ({ from, to }) =>
      eachLength(at, unit, (place) =>
        verb === 'Slit'
          ? { op: 'slit', at: place, from, to }
          : { op: 'score', at: place, span: { from, to } },
      ),
    )?.flat() ??
      null)
  );
}

function slits(at: string, from: string, to: string, unit: LengthUnit): readonly BenchOp[] | null {
  const [a, b] = [readSaid(from, unit), readSaid(to, unit)];
  if (a === null || b === null) return null;
  return eachLength(at, unit, (place) => ({ op: 'slit', at: place, from: a, to: b }));
}

const ALL_CORNERS = 'near left, near right, far left and far right';

/** Left and right as hands see them; measured from a fence on the right they change places. */
function readCorners(
  [names = ALL_CORNERS, across = '', up = '', unit = '']: readonly string[],
  { key }: HeardSoFar,
): readonly BenchOp[] | null {
  const size = [readSaid(across, key.unit), readSaid(`${up}${unit}`, key.unit)];
  return every(splitList(names), (name): BenchOp | null => {
    const [, end, seen] = /^(near|far) (left|right)$/.exec(name) ?? [];
    if (size[0] == null || size[1] == null || seen === undefined) return null;
    const measured = (seen === 'left') === (key.fence === 'left') ? 'left' : 'right';
    const corner = end === 'near' ? (`near-${measured}` as const) : (`far-${measured}` as const);
    return { op: 'corner', corner, across: size[0], up: size[1] };
  });
}

const readPoints = (words: readonly string[], { key }: HeardSoFar): readonly BenchPoint[] | null =>
  every(words, (one) => readSaidPoint(one, key.unit));

/** A run of points as it is, and wherever it comes again on the card as it lies. */
function readRuns(
  points: readonly BenchPoint[] | null,
  same: string | undefined,
  { key, blank, lie }: HeardSoFar,
): readonly (readonly BenchPoint[])[] | null {
  if (!points || !blank || points.length < 2) return null;
  if (same === undefined) return [points];
  const { across, up } = sizeAsItLies(blank, lie);
  const [, by, way] = /^(.+) farther (across|up)$/.exec(same) ?? [];
  if (by !== undefined) {
    const moved = (far: Ticks) =>
      points.map(({ x, y }) => (way === 'up' ? { x, y: ticks(y + far) } : { x: ticks(x + far), y }));
    const runs = readSaidList(by, key.unit)?.map(moved);
    return runs ? [points, ...runs] : null;
  }
  const mirrored = ([left, near]: Sides) =>
    points.map(({ x, y }) => ({ x: left > 0 ? x : ticks(across - x), y: near > 0 ? y : ticks(up - y) }));
  const runs = readMirrors(same)?.map(mirrored);
  return runs ? [points, ...runs] : null;
}

/** Straight lines: `A to B to C`, one after the other, and more of them after `and from`. */
function readRuled(
  [verb, ways = '', smaller, same]: readonly (string | undefined)[],
  heard: HeardSoFar,
): readonly BenchOp[] | null {
  const keeps = smaller === undefined ? {} : ({ keeps: 'smaller' } as const);
  const runs = every(ways.split(', and from '), (way) =>
    readRuns(readPoints(way.split(' to '), heard), same, heard),
  );
  return (
    runs?.flat().flatMap((run) =>
      run.slice(1).map((b, i): BenchOp => {
        const a = run[i] ?? b;
        if (verb === 'Snip') return { op: 'snip', a, b, ...keeps };
        return { op: verb === 'Score' ? 'scoreLine' : 'slitLine', a, b };
      }),
    ) ?? null
  );
}

/** A cut from edge to edge, corner by corner. */
function readPath(
  [way = '', smaller, same]: readonly (string | undefined)[],
  heard: HeardSoFar,
): readonly BenchOp[] | null {
  const keeps = smaller === undefined ? {} : ({ keeps: 'smaller' } as const);
  const runs = readRuns(readPoints(way.split(', '), heard), same, heard);
  return runs?.map((points) => ({ op: 'cutPath', points, curved: false, ...keeps })) ?? null;
}

/** Two sentences with one verb. */
function readTogether(
  [verb = '', one = '', other = '']: readonly string[],
  heard: HeardSoFar,
): readonly BenchOp[] | null {
  const [first, second] = [readSentence(`${verb} ${one}.`, heard), readSentence(`${verb} ${other}.`, heard)];
  return first && second && [...first, ...second];
}

type Sides = readonly [acrossKept: 1 | -1, upKept: 1 | -1];

const MIRRORED: Readonly<Record<string, Sides>> = {
  'mirrored left to right': [-1, 1],
  'mirrored near to far': [1, -1],
  'turned half round': [-1, -1],
};

const readMirrors = (same: string): readonly Sides[] | null =>
  same === 'at all four corners'
    ? Object.values(MIRRORED)
    : every(same.split(' and '), (one) => MIRRORED[one] ?? null);

function readUprightWindow([from = '', to = '']: readonly string[], heard: HeardSoFar): BenchOp[] | null {
  const [a, c] = readPoints([from, to], heard) ?? [];
  return a && c
    ? [{ op: 'window', ring: [a, { x: c.x, y: a.y }, c, { x: a.x, y: c.y }], hole: 'window' }]
    : null;
}

function readWindow([corners = '']: readonly string[], heard: HeardSoFar): BenchOp[] | null {
  const ring = readPoints(corners.split(', '), heard);
  return ring && [{ op: 'window', ring, hole: 'window' }];
}

function readStick(
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

function readGlue(
  [tabs = '', lap, targets = '']: readonly (string | undefined)[],
  heard: HeardSoFar,
): BenchOp[] | null {
  const [panels, ontos] = [readThose(tabs, heard), readPanels(targets, heard.key.labels)];
  return panels && ontos && panels.flatMap((panel) => ontos.map((onto) => press(panel, onto, lap, heard)));
}

const WAYS_ONTO: Readonly<Record<string, CloseWay>> = { over: 'flat', up: 'up', in: 'in' };

/** One panel folded onto others and pressed: it has the adhesive, or they have. */
function readFoldOnto(
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
function readFoldOntoTheirs([which = '', way = '']: readonly string[], heard: HeardSoFar): BenchOp[] | null {
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
function readRing(
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
function readsOfClose(): readonly (readonly [RegExp, Reader])[] {
  const turn = (by: 'fold' | 'tuck', way: CloseWay, panels: readonly string[] | null): BenchOp[] | null =>
    panels && [{ op: 'close', panels, by, way, tip: null }];
  const ways: readonly (readonly [RegExp, CloseWay])[] = [
    [/^Fold (.+) over\.$/, 'flat'],
    [/^Fold (.+) back\.$/, 'back'],
    [/^Fold (.+?) up(, then .+)?\.$/, 'up'],
    [/^Fold (.+?) in(, then .+)?\.$/, 'in'],
    [/^Fold (.+?) out(, then .+)?\.$/, 'out'],
    [/^Bring (.+) together\.$/, 'together'],
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

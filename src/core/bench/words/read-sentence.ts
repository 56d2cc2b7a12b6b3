import type { Blank, Point } from '../../net/types';
import { type LengthUnit, type Ticks, ticks } from '../../units';
import type { Lie } from '../equal/card-lie';
import { legsOf } from '../equal/card-outline';
import type { BenchOp, BenchPoint } from '../types';
import { every, readSaid, readSaidList, readSaidPoint, splitList } from './read-length-words';
import type { Op } from './say-act';
import { FOLD_WORDS, readFold } from './say-fold';

/** What a reader of the card knows besides its words. */
export interface CardKey {
  readonly unit: LengthUnit;
  readonly fence: 'left' | 'right';
  /** What each panel is called on the card, as `panelLabels` gives it. */
  readonly labels: ReadonlyMap<string, string>;
}

/** What was read before a sentence and gives it its meaning. */
export interface HeardSoFar {
  readonly key: CardKey;
  readonly blank: Blank | null;
  readonly lie: Lie;
  readonly templates: ReadonlyMap<string, readonly BenchPoint[]>;
  /** Curves already scored, in the net's own frame. */
  readonly curves: ReadonlyMap<string, readonly Point[]>;
}

interface Said {
  readonly ops: readonly BenchOp[];
  /** What the sentence called the line it laid out. */
  readonly name: string | null;
}

type Reader = (words: readonly string[], heard: HeardSoFar) => readonly BenchOp[] | null;

/** Each kind of sentence and what it says. The words are the card's own; nothing is shared with what writes them. */
const SENTENCES: readonly (readonly [RegExp, Reader])[] = [
  [/^Cut the blank (.+) × (.+?)( in| mm)?\.$/, readBlank],
  [
    /^Turn the card (?:back, )?(half round|a quarter turn clockwise|a quarter turn counter-clockwise)\.$/,
    readTurn,
  ],
  [/^Flip the card over, left to right: the (?:in|out)side faces up\.$/, () => [{ op: 'flip' }]],
  [
    /^Score edge to edge at (.+)\.$/,
    ([at = ''], { key }) => eachLength(at, key.unit, (at) => ({ op: 'score', at, span: null })),
  ],
  [/^(Score|Slit) at (.+), from (the near edge|.+) up to (.+)\.$/, readStopped],
  [/^Slit the lower (.+) at (.+)\.$/, ([to = '', at = ''], { key }) => slits(at, '0 mm', to, key.unit)],
  [/^Cut away the (.+) corners?: (.+) across, (.+) up\.$/, readCorners],
  [/^(Score|Slit) from (.+ up) to (.+ up)\.$/, readRuler],
  [/^Snip from (.+ up) to (.+ up); the card on the (?:left|right) stays\.$/, readSnip],
  [/^Cut from (.+); the card on the (?:left|right) stays\.$/, readPath],
  [/^Cut out the window with corners at (.+)\.$/, readWindow],
  [/^The (.+?) (as it lies|square .+|flat .+|up to .+|down to .+), on (.+)\.$/, readFoldRow],
  [/^Glue the (.+) to the (inside|outside) of the (.+)\.$/, readGlue],
  [/^(Fold|Tuck)( and bend)? the (.+)\.$/, readClose],
  [/^(?:Score the slanted lines along a ruler|Score the curved lines along the template)\.$/, () => []],
  [/^Cut the outline along (?:a ruler|the template)\.$|^Cut out what is open\.$/, () => []],
  [/^Inside face up, as it lay at first: fold every score (?:up|its own way) and crease it\.$/, () => []],
];

/** Lines laid out by template: their points were read before. */
const TEMPLATE_LINES = [
  /^(Curve \d+), from .+, rising (.+)\.$/,
  /^(Cut \d+), from .+; the card on the (?:left|right) stays\.$/,
  /^(Hole \d+), a ((?:window|round hole|slot) .+ × .+, its middle .+)\.$/,
] as const;

/** What a sentence says, or null if it says nothing known. */
export function readSentence(sentence: string, heard: HeardSoFar): Said | null {
  for (const pattern of TEMPLATE_LINES) {
    const [, name, what = ''] = pattern.exec(sentence) ?? [];
    if (name !== undefined) return readTemplateLine(name, what, heard);
  }
  for (const [pattern, reader] of SENTENCES) {
    const found = pattern.exec(sentence);
    const ops = found ? reader(found.slice(1), heard) : null;
    if (ops) return { ops, name: null };
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

function readTemplateLine(name: string, what: string, { key, templates }: HeardSoFar): Said | null {
  const points = templates.get(name);
  if (!points) return null;
  if (name.startsWith('Cut')) return { name, ops: [{ op: 'cutPath', points, curved: true }] };
  if (name.startsWith('Hole')) {
    const hole = readHole(what, points, key.unit);
    return hole && { name, ops: [{ op: 'window', ring: points, hole }] };
  }
  const rise = readSaid(what, key.unit);
  return rise === null ? null : { name, ops: [{ op: 'scoreCurve', points, rise }] };
}

/** Which kind of hole, if its size and middle are those of its points; a middle between two ticks is said as either. */
function readHole(
  what: string,
  points: readonly BenchPoint[],
  unit: LengthUnit,
): Op<'window'>['hole'] | null {
  const [, kind, wide = '', high = '', at = ''] =
    /^(window|round hole|slot) (.+) × (.+), its middle (.+)$/.exec(what) ?? [];
  const [across, up, middle] = [readSaid(wide, unit), readSaid(high, unit), readSaidPoint(at, unit)];
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
  return same ? (kind === 'round hole' ? 'round' : kind === 'slot' ? 'slot' : 'window') : null;
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

function readTurn([turn]: readonly string[], { key }: HeardSoFar): BenchOp[] {
  if (turn === 'half round') return [{ op: 'turn', quarters: 2 }];
  const isForward = (turn === 'a quarter turn counter-clockwise') === (key.fence === 'left');
  return [{ op: 'turn', quarters: isForward ? 1 : 3 }];
}

function eachLength(words: string, unit: LengthUnit, act: (at: Ticks) => BenchOp): readonly BenchOp[] | null {
  return readSaidList(words, unit)?.map(act) ?? null;
}

function readStopped(
  [verb, at = '', from = '', to = '']: readonly string[],
  { key }: HeardSoFar,
): readonly BenchOp[] | null {
  const start = from === 'the near edge' ? '0 mm' : from;
  if (verb === 'Slit') return slits(at, start, to, key.unit);
  const [a, b] = [readSaid(start, key.unit), readSaid(to, key.unit)];
  if (a === null || b === null) return null;
  return eachLength(at, key.unit, (place) => ({ op: 'score', at: place, span: { from: a, to: b } }));
}

function slits(at: string, from: string, to: string, unit: LengthUnit): readonly BenchOp[] | null {
  const [a, b] = [readSaid(from, unit), readSaid(to, unit)];
  if (a === null || b === null) return null;
  return eachLength(at, unit, (place) => ({ op: 'slit', at: place, from: a, to: b }));
}

/** Left and right as hands see them; measured from a fence on the right they change places. */
function readCorners(
  [names = '', across = '', up = '']: readonly string[],
  { key }: HeardSoFar,
): readonly BenchOp[] | null {
  const size = [readSaid(across, key.unit), readSaid(up, key.unit)];
  return every(splitList(names), (name): BenchOp | null => {
    const [, end, seen] = /^(near|far) (left|right)$/.exec(name) ?? [];
    if (size[0] == null || size[1] == null || seen === undefined) return null;
    const measured = (seen === 'left') === (key.fence === 'left') ? 'left' : 'right';
    const corner = end === 'near' ? (`near-${measured}` as const) : (`far-${measured}` as const);
    return { op: 'corner', corner, across: size[0], up: size[1] };
  });
}

function readPoints(words: readonly string[], { key }: HeardSoFar): readonly BenchPoint[] | null {
  return every(words, (one) => readSaidPoint(one, key.unit));
}

function readRuler([verb, from = '', to = '']: readonly string[], heard: HeardSoFar): BenchOp[] | null {
  const [a, b] = readPoints([from, to], heard) ?? [];
  return a && b ? [{ op: verb === 'Score' ? 'scoreLine' : 'slitLine', a, b }] : null;
}

function readSnip([from = '', to = '']: readonly string[], heard: HeardSoFar): BenchOp[] | null {
  const [a, b] = readPoints([from, to], heard) ?? [];
  return a && b ? [{ op: 'snip', a, b }] : null;
}

function readPath([way = '']: readonly string[], heard: HeardSoFar): BenchOp[] | null {
  const points = readPoints(way.split(/(?<= up) to /), heard);
  return points && [{ op: 'cutPath', points, curved: false }];
}

function readWindow([corners = '']: readonly string[], heard: HeardSoFar): BenchOp[] | null {
  const ring = readPoints(corners.split(/(?<= up) and /), heard);
  return ring && [{ op: 'window', ring, hole: 'window' }];
}

function readFoldRow(
  [label = '', fold = '', where = '']: readonly string[],
  heard: HeardSoFar,
): BenchOp[] | null {
  const panel = panelCalled(label, heard);
  const deg = readFold(fold);
  const curve = heard.curves.get(where.replace(/^c/, 'C'));
  const lines = curve
    ? legsOf(curve)
    : every(where.split(/ and (?=the score)/), (one) => readScore(one, heard));
  return panel === null || deg === null || !lines ? null : [{ op: 'fold', panel, deg, lines }];
}

/** A straight score as the net is drawn: `the score 5 in across, from 1 in to 4 in up`, the like upwards, or from point to point. */
function readScore(words: string, heard: HeardSoFar): Op<'fold'>['lines'][number] | null {
  const [, place = '', way, start = '', end = ''] =
    /^the score (.+) (across|up), from (.+) to (.+) (?:across|up)$/.exec(words) ?? [];
  const lengths = every([place, start, end], (length) => readSaid(length, heard.key.unit));
  if (way !== undefined && lengths) {
    const [at = ticks(0), from = at, to = at] = lengths;
    return way === 'across'
      ? { a: { x: at, y: from }, b: { x: at, y: to } }
      : { a: { x: from, y: at }, b: { x: to, y: at } };
  }
  const [, first = '', last = ''] = /^the score from (.+ up) to (.+ up)$/.exec(words) ?? [];
  const [a, b] = readPoints([first, last], heard) ?? [];
  return a && b ? { a, b } : null;
}

function panelCalled(label: string, { key }: HeardSoFar): string | null {
  for (const [panel, name] of key.labels) if (name === label) return panel;
  return null;
}

function readGlue([tab = '', lap, target = '']: readonly string[], heard: HeardSoFar): BenchOp[] | null {
  const [panel, onto] = [panelCalled(tab, heard), panelCalled(target, heard)];
  if (panel === null || onto === null) return null;
  return [{ op: 'glue', panel, onto, lap: lap === 'inside' ? 'inside' : 'outside', tip: null }];
}

const TURNED = new RegExp(`^(.+) (${FOLD_WORDS})$`);

function readClose([verb, bends, rest = '']: readonly string[], heard: HeardSoFar): BenchOp[] | null {
  const turned = every(rest.split(', the '), (group) => {
    const [, names = '', fold = ''] = TURNED.exec(group) ?? [];
    const panels = every(splitList(names), (name) => panelCalled(name, heard));
    const deg = readFold(fold);
    return panels && deg !== null ? panels.map((panel) => ({ panel, deg })) : null;
  })?.flat();
  if (!turned) return null;
  return [
    {
      op: 'close',
      panels: turned.map(({ panel }) => panel),
      by: verb === 'Fold' ? 'fold' : 'tuck',
      toDeg: turned.map(({ deg }) => deg),
      bends: bends !== undefined,
      tip: null,
    },
  ];
}

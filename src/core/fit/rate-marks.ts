import { MARK_STEPS, markRoughness, type Ruler, type Ticks, ticks } from '../units';
import type { CoordinateForm, MarkForm } from './mark-forms';

/** The tool the marks are set on. */
export interface MarkTool {
  readonly ruler: Ruler;
  /** How far from its fence the tool scores. */
  readonly reach: Ticks;
  /** A board with fixed grooves scores only on these, measured from its fence; none given: anywhere on the ruler's marks. */
  readonly grooves?: readonly Ticks[] | undefined;
  /** Two scores of one edge this far apart are made at one setting, by the two points of the tool. */
  readonly stylus?: Ticks | undefined;
}

/** How the marks of one set of sizes read on a tool. */
export interface Rating {
  /** Sum over all marks of their place in the row of marks, each from its easier end. */
  readonly roughness: number;
  /** Different distances the fence is set to, and edges it is set from, among the easiest readings. */
  readonly settings: number;
  readonly edges: number;
}

/** The rating of some of a net's marks; the distances stand as a list, so that the ratings of other marks can be joined to it. */
export interface PartRating {
  readonly roughness: number;
  readonly settings: readonly number[];
  readonly edges: number;
}

/** A mark as it is read: its distance from the end that reads easier. */
export interface ReadMark {
  readonly piece: string;
  readonly what: MarkForm['what'];
  readonly way: MarkForm['way'];
  readonly at: Ticks;
  readonly fromFarEnd: boolean;
  readonly roughness: number;
}

export interface MarkReader {
  /** Null where a mark lies between the tool's marks, or beyond reach from both ends. */
  readonly rate: (values: readonly number[]) => PartRating | null;
  /** Measures the marks of one depth; whether all of them read. */
  readonly measure: (depth: number, values: readonly number[]) => boolean;
  /** The rating of what every depth last measured; all of it must read. */
  readonly rated: () => PartRating;
  readonly read: (values: readonly number[]) => readonly ReadMark[];
}

/** The parts of one net as one rating. */
export function joinRatings(a: PartRating, b: PartRating): Rating {
  let settings = a.settings.length;
  for (const distance of b.settings) if (!a.settings.includes(distance)) settings++;
  return { roughness: a.roughness + b.roughness, settings, edges: a.edges + b.edges };
}

const HARD = 100; // between marks or out of reach: more than any sum of halvings
const groupOf = ({ piece, way, span }: MarkForm): string =>
  `${piece} ${way} ${span === null ? 'side' : 'place'}`;

/**
 * A reader of these marks on this tool. Where both ends read alike, marks that can all be read from one end are. `depths` parts them for
 * whoever chooses one symbol after the other: per mark, when its place is known.
 */
export function markReader(
  marks: readonly MarkForm[],
  tool: MarkTool,
  depths: readonly number[] = marks.map(() => 0),
): MarkReader {
  const { reach, stylus } = tool;
  const anywhere = roughnessOn(tool.ruler);
  const onScores = tool.grooves ? roughnessInGrooves(tool.grooves, tool.ruler) : anywhere;
  const { group, groups } = groupsOf(marks);
  const isPlace = marks.map(({ span }) => span !== null);
  const count = marks.length;
  const ats = marks.map(({ at }) => readerOf(at));
  const spans = marks.map(({ span }) => (span === null ? null : readerOf(span)));
  const hards = marks.map(({ what }) => (what === 'score' ? onScores : anywhere));
  const near = new Float64Array(count);
  const far = new Float64Array(count);
  const lean = new Int8Array(count);
  const easiest = new Int32Array(count);
  const { leanByGroup, isFar } = farReader(lean, isPlace, group, groups);
  const byEdge = Array.from({ length: 2 * groups }, (): number[] => []);
  const byDepth = marksByDepth(marks, depths);

  /** Fills near, far, the easier reading and which end it is from (−1 near, 1 far, 0 alike). */
  const measure = (depth: number, values: readonly number[]): boolean => {
    const now = byDepth[depth];
    if (now === undefined) return true;
    for (let i = 0; i < now.length; i++) {
      const m = now[i] as number;
      const at = (ats[m] as FormReader)(values);
      const span = spans[m] as FormReader | null;
      const rest = span === null ? -1 : span(values) - at;
      const hard = hards[m] as (length: number) => number;
      const nearHard = span !== null && at > reach ? HARD : hard(at);
      const farHard = rest > reach ? HARD : hard(rest);
      const easier = Math.min(nearHard, farHard);
      if (easier >= HARD) return false;
      near[m] = at;
      far[m] = rest;
      lean[m] = Math.sign(nearHard - farHard);
      easiest[m] = easier;
    }
    return true;
  };

  const rated = (): PartRating => {
    leanByGroup();
    for (const distances of byEdge) distances.length = 0;
    let roughness = 0;
    let edges = 0;
    for (let m = 0; m < count; m++) {
      roughness += easiest[m] as number;
      if (isPlace[m] !== true) continue;
      const fromFar = isFar(m);
      const distance = (fromFar ? far[m] : near[m]) as number;
      const known = byEdge[(group[m] as number) * 2 + Number(fromFar)] as number[];
      if (known.length === 0) edges++;
      if (!known.includes(distance)) known.push(distance);
    }
    return { roughness, settings: settingsOf(byEdge, stylus), edges };
  };

  const measureAll = (values: readonly number[]): boolean =>
    byDepth.every((_, depth) => measure(depth, values));

  return {
    measure,
    rated,
    rate: (values) => (measureAll(values) ? rated() : null),
    read(values) {
      measureAll(values);
      leanByGroup();
      return marks.map(({ piece, what, way }, m): ReadMark => {
        const fromFarEnd = isFar(m);
        const at = ticks((fromFarEnd ? far[m] : near[m]) ?? 0);
        return { piece, what, way, at, fromFarEnd, roughness: hards[m]?.(at) ?? HARD };
      });
    },
  };
}

/** For each depth, the marks that are known there by number. */
const marksByDepth = (
  marks: readonly MarkForm[],
  depths: readonly number[],
): readonly (readonly number[])[] =>
  Array.from({ length: 1 + Math.max(0, ...depths) }, (_, depth) =>
    marks.flatMap((_mark, m) => (depths[m] === depth ? [m] : [])),
  );

/** The group of each mark by number, and how many groups there are. */
function groupsOf(marks: readonly MarkForm[]) {
  const names = [...new Set(marks.map(groupOf))];
  return { group: Int32Array.from(marks, (mark) => names.indexOf(groupOf(mark))), groups: names.length };
}

/** Which end each mark is read from, by `lean` as it was last filled; `leanByGroup` comes first. */
function farReader(lean: Int8Array, isPlace: readonly boolean[], group: Int32Array, groups: number) {
  const leansFar = new Uint8Array(groups);
  const leansNear = new Uint8Array(groups);
  return {
    leanByGroup: (): void => {
      leansFar.fill(0);
      leansNear.fill(0);
      for (let m = 0; m < lean.length; m++) {
        const leaning = lean[m] as number;
        if (leaning > 0) leansFar[group[m] as number] = 1;
        if (leaning < 0) leansNear[group[m] as number] = 1;
      }
    },
    /** Marks that read alike from both ends are read from the far one only if some mark of the group leans that way and none the other. */
    isFar: (m: number): boolean => {
      const leaning = lean[m] as number;
      if (leaning !== 0) return leaning > 0;
      const g = group[m] as number;
      return isPlace[m] === true && leansFar[g] === 1 && leansNear[g] === 0;
    },
  };
}

type FormReader = (values: readonly number[]) => number;

/** `valueAt` of one form with the symbols it does not ask for left out: it is asked tens of thousands of times. */
function readerOf({ constant, times }: CoordinateForm): FormReader {
  const places = times.flatMap((n, i) => (n === 0 ? [] : [i]));
  const factors = places.map((i) => times[i] as number);
  return (values) => {
    let sum = constant;
    for (let i = 0; i < places.length; i++)
      sum += (factors[i] as number) * (values[places[i] as number] as number);
    return Math.round(sum);
  };
}

/** Distances the fence is set to, over all edges; with two scoring points a second score in their distance needs no setting of its own. */
function settingsOf(byEdge: readonly (readonly number[])[], stylus: Ticks | undefined): readonly number[] {
  const settings: number[] = [];
  for (const distances of byEdge) {
    const own = stylus === undefined ? distances : withoutSeconds(distances, stylus);
    for (const distance of own) if (!settings.includes(distance)) settings.push(distance);
  }
  return settings;
}

function withoutSeconds(distances: readonly number[], stylus: number): number[] {
  const own: number[] = [];
  const done = new Set<number>();
  for (const distance of [...distances].sort((a, b) => a - b)) {
    if (done.has(distance)) continue;
    own.push(distance);
    done.add(distance + stylus);
  }
  return own;
}

/** Roughness of a length on a ruler; HARD between its marks and below zero. */
function roughnessOn({ unit, finest }: Ruler): (length: number) => number {
  const cycle = MARK_STEPS[unit][0] ?? ticks(1);
  const table = Int8Array.from(
    { length: cycle / finest },
    (_, i) => markRoughness(ticks(i * finest), unit) ?? HARD,
  );
  return (length) =>
    length < 0 || length % finest !== 0 ? HARD : (table[(length % cycle) / finest] ?? HARD);
}

/** In a groove the score lies by itself; finding the groove is as hard as reading its mark, and hardest where it has none. */
function roughnessInGrooves(grooves: readonly Ticks[], { unit }: Ruler): (length: number) => number {
  const known = new Map<number, number>(
    grooves.map((groove) => [groove, markRoughness(groove, unit) ?? MARK_STEPS[unit].length]),
  );
  return (length) => known.get(length) ?? HARD;
}

import { MARK_STEPS, markRoughness, type Ruler, type Ticks, ticks } from '../units';
import { type MarkForm, valueAt } from './mark-forms';

/** How the marks of one set of sizes read on a ruler. */
export interface Rating {
  /** Sum over all marks of their place in the row of marks, each from its easier end. */
  readonly roughness: number;
  /** Different distances the fence is set to, and edges it is set from, among the easiest readings. */
  readonly settings: number;
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
  /** Null where a mark lies between the ruler's marks, or beyond reach from both ends. */
  readonly rate: (values: readonly number[]) => Rating | null;
  readonly read: (values: readonly number[]) => readonly ReadMark[];
}

/** A reader of these marks on this ruler. `reach`: how far from its fence the tool scores. Where both ends read alike, marks that can all be read from one end are. */
export function markReader(marks: readonly MarkForm[], { unit, finest }: Ruler, reach: Ticks): MarkReader {
  const cycle = MARK_STEPS[unit][0] ?? ticks(1);
  const table = Int8Array.from(
    { length: cycle / finest },
    (_, i) => markRoughness(ticks(i * finest), unit) ?? HARD,
  );
  const roughnessOf = (length: number, within: number): number =>
    length < 0 || length > within || length % finest !== 0
      ? HARD
      : (table[(length % cycle) / finest] ?? HARD);
  const groups = [...new Set(marks.map(groupOf))];
  const group = marks.map((mark) => groups.indexOf(groupOf(mark)));
  const near = new Float64Array(marks.length);
  const far = new Float64Array(marks.length);
  const lean = new Int8Array(marks.length);

  /** Fills near, far and which end is easier (−1 near, 1 far, 0 alike); gives the sum, or null. */
  const measure = (values: readonly number[]): number | null => {
    let sum = 0;
    for (let m = 0; m < marks.length; m++) {
      const mark = marks[m];
      if (mark === undefined) continue;
      const at = valueAt(mark.at, values);
      const rest = mark.span === null ? -1 : valueAt(mark.span, values) - at;
      const [nearHard, farHard] = [
        roughnessOf(at, mark.span === null ? 1e9 : reach),
        roughnessOf(rest, reach),
      ];
      const easier = Math.min(nearHard, farHard);
      if (easier >= HARD) return null;
      near[m] = at;
      far[m] = rest;
      lean[m] = Math.sign(nearHard - farHard);
      sum += easier;
    }
    return sum;
  };

  /** Per group: read all from the far end only if some mark leans that way and none leans the other. */
  const farGroups = (): boolean[] =>
    groups.map((_, g) => {
      let leansFar = false;
      for (let m = 0; m < marks.length; m++)
        if (group[m] === g) {
          if ((lean[m] ?? 0) < 0) return false;
          leansFar ||= (lean[m] ?? 0) > 0;
        }
      return leansFar;
    });
  const isFar = (m: number, farWhenAlike: readonly boolean[]): boolean =>
    (lean[m] ?? 0) > 0 ||
    ((lean[m] ?? 0) === 0 && (farWhenAlike[group[m] ?? 0] ?? false) && marks[m]?.span !== null);

  return {
    rate: (values) => {
      const roughness = measure(values);
      if (roughness === null) return null;
      const farWhenAlike = farGroups();
      const settings = new Set<number>();
      const edges = new Set<number>();
      for (let m = 0; m < marks.length; m++) {
        if (marks[m]?.span === null) continue;
        const fromFar = isFar(m, farWhenAlike);
        settings.add((fromFar ? far[m] : near[m]) ?? 0);
        edges.add((group[m] ?? 0) * 2 + Number(fromFar));
      }
      return { roughness, settings: settings.size, edges: edges.size };
    },
    read: (values) => {
      measure(values);
      const farWhenAlike = farGroups();
      return marks.map(({ piece, what, way }, m): ReadMark => {
        const fromFarEnd = isFar(m, farWhenAlike);
        const at = ticks((fromFarEnd ? far[m] : near[m]) ?? 0);
        return { piece, what, way, at, fromFarEnd, roughness: roughnessOf(at, 1e9) };
      });
    },
  };
}

const HARD = 100; // between marks or out of reach: more than any sum of halvings
const groupOf = ({ piece, way, span }: MarkForm): string =>
  `${piece} ${way} ${span === null ? 'side' : 'place'}`;

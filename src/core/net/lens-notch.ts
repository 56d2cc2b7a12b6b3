import { TICKS_PER_MM } from '../units/ticks';
import { arcHeight, arcRadius, CHORD_TOLERANCE_MM } from './arc';
import type { LaidCurve } from './laid-panel';
import type { Point } from './types';

/** The free edge of a lens flap in its hinge frame: `span` long, an arc that rises by `rise`; all in ticks. */
interface FreeEdge {
  readonly span: number;
  readonly rise: number;
}

/** A corner of the free edge, and which of its arcs leaves it on the way along the hinge. */
interface TopCorner {
  readonly along: number;
  readonly arc: 'before' | 'notch' | 'after';
}

/** Corners nearer than this along the hinge are one corner. source: our choice, the chord tolerance */
const SAME_ALONG = CHORD_TOLERANCE_MM * TICKS_PER_MM;

/** A half-round out of the middle of an arched free edge: where it begins and ends, and how high the edge stands anywhere. */
export class LensNotch {
  readonly begins: number;
  readonly ends: number;
  readonly #edge: FreeEdge;
  readonly #radius: number;

  /** `stations`: where the flap is parted into strips, with one in the middle; the notch begins at one it comes too near to. */
  constructor(edge: FreeEdge, radius: number, stations: readonly number[]) {
    this.#edge = edge;
    this.#radius = radius;
    const begins = crossing(edge, radius);
    const near = stations.find((station) => Math.abs(station - begins) < SAME_ALONG);
    this.begins = Math.round(near ?? begins);
    this.ends = edge.span - this.begins;
  }

  /** How far the flap reaches beyond the chord of its score, so far along it. */
  height(along: number): number {
    const { span, rise } = this.#edge;
    if (along <= this.begins || along >= this.ends) return arcHeight(span, rise, along);
    const off = along - span / 2;
    return rise - Math.sqrt(Math.max(0, this.#radius ** 2 - off ** 2));
  }

  /** Corners of the free edge over one strip, both its ends among them. */
  cornersOver(from: number, to: number): readonly TopCorner[] {
    const between = [this.begins, ...this.#chordEnds([from, to]), this.ends].filter(
      (along) => along > from && along < to,
    );
    return [from, ...between, to].map((along) => ({ along, arc: this.#arcAfter(along) }));
  }

  #arcAfter(along: number): TopCorner['arc'] {
    if (along < this.begins) return 'before';
    return along < this.ends ? 'notch' : 'after';
  }

  /** Equal turns round the notch, clear of the ends of a strip. */
  #chordEnds(stations: readonly number[]): readonly number[] {
    const half = Math.asin(Math.min(1, (this.ends - this.begins) / 2 / this.#radius));
    const chord = 2 * Math.acos(Math.max(0, 1 - SAME_ALONG / this.#radius));
    const pieces = 2 * Math.max(2, Math.ceil(half / chord));
    return Array.from({ length: pieces - 1 }, (_, at) => {
      const turn = half * ((2 * (at + 1)) / pieces - 1);
      return Math.round(this.#edge.span / 2 + this.#radius * Math.sin(turn));
    }).filter((along) => stations.every((station) => Math.abs(along - station) >= SAME_ALONG));
  }

  /** The true arcs of the free edge, in the order of `TopCorner.arc`. */
  arcs(place: (along: number) => Point): readonly LaidCurve[] {
    const { span, rise } = this.#edge;
    const corners = [0, this.begins, this.ends, span].map(place) as [Point, Point, Point, Point];
    const [from, begins, ends, to] = corners;
    const deep = this.height(this.begins) - (rise - this.#radius);
    const beside = (a: Point, b: Point): LaidCurve => ({
      a,
      b,
      rise: partRise(rise === 0 ? 0 : arcRadius(span, rise), Math.hypot(b.x - a.x, b.y - a.y)),
      bulge: 'right',
      kind: 'cut',
    });
    return [
      beside(from, begins),
      { a: begins, b: ends, rise: deep, bulge: 'left', kind: 'cut' },
      beside(ends, to),
    ];
  }
}

/** How far an arc of this radius rises over a part of it. */
const partRise = (radius: number, chord: number): number =>
  radius === 0 ? 0 : radius - Math.sqrt(Math.max(0, radius ** 2 - (chord / 2) ** 2));

/** Where a circle about the top of an arc meets its first half, as a distance along its chord. */
function crossing({ span, rise }: FreeEdge, radius: number): number {
  let [outside, inside] = [Math.max(0, span / 2 - radius), span / 2];
  for (let step = 0; step < 40; step++) {
    const along = (outside + inside) / 2;
    const isInside = Math.hypot(along - span / 2, arcHeight(span, rise, along) - rise) < radius;
    if (isInside) inside = along;
    else outside = along;
  }
  return inside;
}

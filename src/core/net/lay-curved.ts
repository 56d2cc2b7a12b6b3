import { bothEnds } from '../styles/language/define';
import type { EdgeName, PanelSpec } from '../styles/language/types';
import { toDegrees, toRadians } from '../units/angles';
import { arcHeight, chordStations } from './arc';
import { AROUND, frameOn, rootFrame } from './hinge-frame';
import type { Bench, Bend, LaidPanel, Side } from './laid-panel';
import { LensNotch } from './lens-notch';
import { lengthOf, type NamedValues } from './name-values';
import { pointAt, samePoint } from './point';
import type { Point } from './types';

type BentSpec = Extract<PanelSpec, { readonly size: unknown }>;
type LensSpec = Extract<PanelSpec, { readonly lens: string }>;

/** The bend of a bowed wall: over each chord the wall leans by φ with sin φ = its set-back over its length (pillow-box model, arXiv 2509.02049). */
function bendOf(span: number, rise: number): Bend {
  const stations = chordStations(span, rise);
  const setBacks = stations.map((along) => Math.round(arcHeight(span, rise, along)));
  return { stations, setBacks, leansDeg: leans(stations, setBacks) };
}

const leans = (stations: readonly number[], setBacks: readonly number[]): number[] =>
  stations.slice(1).map((end, strip) => {
    const run = end - (stations[strip] ?? 0);
    const rise = (setBacks[strip + 1] ?? 0) - (setBacks[strip] ?? 0);
    return run > 0 ? toDegrees(Math.asin(Math.max(-1, Math.min(1, rise / run)))) : 0;
  });

/** Lays a panel that bends, as strips joined along its rulings: a bowed wall, or the tab glued into one. `foldDeg` is between chord planes. */
export function layBent(
  bench: Bench,
  name: string,
  spec: BentSpec,
  on: Side | null,
  foldDeg: number,
  values: NamedValues,
): LaidPanel {
  const of = (text: string | undefined) => (text === undefined ? 0 : lengthOf(text, values));
  const [across, up] = [of(spec.size[0]), of(spec.size[1])];
  const frame = on === null ? rootFrame(across) : frameOn(on.a, on.b);
  const level = frame.outward === 'down' || frame.outward === 'up';
  const [length, out] = level ? [across, up] : [up, across];
  const at = of(spec.at);
  const wall = spec.follows === undefined ? null : (bench.panels.get(spec.follows)?.bend ?? null);
  const bend = wall === null ? bendOf(out, of(spec.bow)) : firstPart(wall, out);
  const [start = 0, end = 0] = bothEnds(spec.taper).map(of);
  const drawn = (text: number, station: number) => (out === 0 ? 0 : (text * station) / out);
  const a = bend.stations.map((s, k) =>
    frame.place(at + (wall ? drawn(start, s) : (bend.setBacks[k] ?? 0)), s),
  );
  const b = bend.stations.map((s, k) =>
    frame.place(at + length - (wall ? drawn(end, s) : (bend.setBacks[k] ?? 0)), s),
  );
  const curve = bench.curves.length;
  const curved = wall === null && of(spec.bow) > 0;
  if (curved) {
    const last = bend.stations.length - 1;
    const rise = of(spec.bow);
    bench.curves.push({ a: corner(a, 0), b: corner(a, last), rise, bulge: 'left', kind: 'cut' });
    bench.curves.push({ a: corner(b, 0), b: corner(b, last), rise, bulge: 'right', kind: 'cut' });
  }
  const first = bench.faces.length;
  const [firstLean = 0, lastLean = 0] = [bend.leansDeg[0], bend.leansDeg[bend.leansDeg.length - 1]];
  if (on !== null)
    bench.hinges.push({
      parent: on.face,
      child: first,
      a: corner(a, 0),
      b: corner(b, 0),
      restDeg: foldDeg - on.leanDeg - firstLean,
      kind: 'score',
      panel: name,
    });
  const { starts, ends } = layStrips(bench, name, spec, { a, b, bend, curve: curved ? curve : null });
  const last = bend.leansDeg.length;
  const side = AROUND[frame.outward];
  const sides = new Map<EdgeName, readonly Side[]>([
    [side.hinge, [{ face: first, a: corner(b, 0), b: corner(a, 0), leanDeg: firstLean }]],
    [side.start, starts],
    [frame.outward, [{ face: first + last - 1, a: corner(a, last), b: corner(b, last), leanDeg: -lastLean }]],
    [side.end, ends],
  ]);
  const laid: LaidPanel = {
    name,
    role: spec.role,
    faces: bend.leansDeg.map((_, strip) => first + strip),
    sides,
    bend,
  };
  bench.panels.set(name, laid);
  return laid;
}

/** The strips of a panel that bends, each joined to the one before it: `a` and `b` are their corners, `curve` the first of its two cut curves. */
function layStrips(
  bench: Bench,
  name: string,
  { role }: BentSpec,
  of: {
    readonly a: readonly Point[];
    readonly b: readonly Point[];
    readonly bend: Bend;
    readonly curve: number | null;
  },
): { readonly starts: readonly Side[]; readonly ends: readonly Side[] } {
  const { a, b, bend, curve } = of;
  const starts: Side[] = [];
  const ends: Side[] = [];
  bend.leansDeg.forEach((leanDeg, strip) => {
    const face = bench.faces.length;
    bench.faces.push({
      panel: name,
      role,
      ring: [corner(b, strip), corner(a, strip), corner(a, strip + 1), corner(b, strip + 1)],
      curves: [null, curve, null, curve === null ? null : curve + 1],
      holes: [],
    });
    starts.push({ face, a: corner(a, strip), b: corner(a, strip + 1), leanDeg });
    ends.unshift({ face, a: corner(b, strip + 1), b: corner(b, strip), leanDeg });
    const before = bend.leansDeg[strip - 1];
    if (before !== undefined)
      bench.hinges.push({
        parent: face - 1,
        child: face,
        a: corner(a, strip),
        b: corner(b, strip),
        restDeg: before - leanDeg,
        kind: 'join',
        panel: name,
      });
  });
  return { starts, ends };
}

/** The part of a wall's bend that a tab of height `out` lies against, from the wall's lower edge up. */
function firstPart(wall: Bend, out: number): Bend {
  const stations = [...wall.stations.filter((station) => station < out), out];
  const strips = stations.length - 1;
  return { stations, setBacks: stations.map(() => 0), leansDeg: wall.leansDeg.slice(0, strips) };
}

const ARCS: readonly string[] = ['before', 'notch', 'after'];

/** A corner of a free edge, and the curve that begins there. */
interface EdgeCorner {
  readonly point: Point;
  readonly curve: number | null;
}

/** The free edge of a lens flap, with its arcs; `topOver` gives its corners over one chord of the bowed edge. */
function layFreeEdge(bench: Bench, spec: LensSpec, on: readonly Side[], values: NamedValues) {
  const rise = lengthOf(spec.lens, values);
  const from = on[0]?.a ?? pointAt(0, 0);
  const to = on[on.length - 1]?.b ?? from;
  const frame = frameOn(from, to);
  const along = (p: Point) =>
    ((p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y)) / (frame.length || 1);
  const radius = spec.notches?.[0] === undefined ? 0 : lengthOf(spec.notches[0].radius, values);
  const notch =
    radius > 0 && 2 * radius < frame.length
      ? new LensNotch(
          { span: frame.length, rise },
          radius,
          on.map(({ a }) => along(a)),
        )
      : null;
  const placed = (at: number): Point =>
    frame.place(at, Math.round(notch?.height(at) ?? arcHeight(frame.length, rise, at)));
  const curve = bench.curves.length;
  if (notch) bench.curves.push(...notch.arcs(placed));
  else if (rise > 0) bench.curves.push({ a: from, b: to, rise, bulge: 'right', kind: 'cut' });
  const topOver = (chord: Side): readonly EdgeCorner[] =>
    (
      notch?.cornersOver(along(chord.a), along(chord.b)) ?? [
        { along: along(chord.a), arc: 'before' as const },
        { along: along(chord.b), arc: 'before' as const },
      ]
    ).map(({ along: at, arc }) => ({
      point: placed(at),
      curve: rise > 0 || arc === 'notch' ? curve + ARCS.indexOf(arc) : null,
    }));
  return { outward: frame.outward, topOver };
}

/** Lays a lens flap: one face on each chord of the bowed edge, mirrored outwards to its own free edge. */
export function layLens(
  bench: Bench,
  name: string,
  spec: LensSpec,
  on: readonly Side[],
  parent: LaidPanel,
  values: NamedValues,
): LaidPanel {
  const { outward, topOver } = layFreeEdge(bench, spec, on, values);
  const free: Side[] = [];
  const faces: number[] = [];
  for (const chord of on) {
    const face = bench.faces.length;
    const owner = bench.faces[chord.face];
    const scored = owner?.curves[owner.ring.findIndex((p) => samePoint(p, chord.a))] ?? null;
    const arc = scored === null ? undefined : bench.curves[scored];
    if (arc !== undefined) arc.kind = 'score';
    const top = topOver(chord);
    const corners = [chord.b, chord.a, ...top.map(({ point }) => point)];
    const kept = corners.map((p, k) => !samePoint(p, corners[(k + 1) % corners.length] ?? p));
    const edges = [scored, null, ...top.slice(0, -1).map((corner) => corner.curve), null];
    bench.faces.push({
      panel: name,
      role: spec.role,
      ring: corners.filter((_, k) => kept[k]),
      curves: edges.filter((_, k) => kept[k]),
      holes: [],
    });
    const sine = Math.sin(toRadians(chord.leanDeg));
    const restDeg = 180 - toDegrees(Math.acos(sine * sine));
    bench.hinges.push({
      parent: chord.face,
      child: face,
      a: chord.a,
      b: chord.b,
      restDeg,
      kind: 'score',
      panel: name,
    });
    const before = on[faces.length - 1];
    // closed, the flap stands upright on the crease, which turns in plan by the change of lean: inwards, a mountain
    if (before !== undefined)
      bench.bends.push({ one: face - 1, other: face, restDeg: -Math.abs(before.leanDeg - chord.leanDeg) });
    top.slice(1).forEach(({ point: b }, at) => {
      const a = top[at]?.point ?? b;
      if (!samePoint(a, b)) free.push({ face, a, b, leanDeg: 0 });
    });
    faces.push(face);
  }
  const laid: LaidPanel = {
    name,
    role: spec.role,
    faces,
    sides: new Map([[outward, free]]),
    bend: parent.bend,
  };
  bench.panels.set(name, laid);
  return laid;
}

const corner = (points: readonly Point[], at: number): Point => points[at] ?? pointAt(0, 0);

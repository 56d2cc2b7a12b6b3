import type { FoldFrame } from '../rows/fold-file';
import { OWN_NET } from '../styles/boxes/own-net';
import { millimetres, TICKS_PER_MM, type Ticks, ticks } from '../units/ticks';
import { facesAround } from './faces-around';
import { type FoldUnit, flatFrames } from './fold-frames';
import { caliperTicks } from './name-values';
import { type FoldRefusal, readFold } from './read-fold';
import type { BoxNet, PieceNet, Point } from './types';

/** What a line may be said to be: cut through, valley, mountain, or scored and left flat. */
export type LineChoice = 'C' | 'V' | 'M' | 'F';

/** A line of a file, in the file's own numbers; `name` is its place in its frame, `1.7` for line 7 of the first further frame. */
export interface OwnLine {
  readonly name: string;
  readonly frame: number;
  readonly a: readonly [number, number];
  readonly b: readonly [number, number];
  readonly kind: FoldFrame['edges_assignment'][number];
}

export interface OwnAnswers {
  readonly lines: Readonly<Record<string, LineChoice>>;
  /** For a file that names no unit. */
  readonly unit?: FoldUnit | undefined;
}

/** A file as a net; or the lines of which it does not say what they are; or why it cannot be one. */
export type OwnReading =
  | { readonly is: 'refused'; readonly refusals: readonly FoldRefusal[] }
  | { readonly is: 'asking'; readonly open: readonly OwnLine[]; readonly lines: readonly OwnLine[] }
  | {
      readonly is: 'net';
      readonly title: string;
      /** The file as a recipe keeps it: all questions answered. */
      readonly text: string;
      readonly pieces: readonly PieceNet[];
      readonly lines: readonly OwnLine[];
    };

/** Gates of size. source: our choice; smaller than any box, larger than any card on a bench, more panels than hands close */
const LEAST_MM = 5;
const MOST_MM = 2000;
const MOST_FACES = 300;
const MOST_LETTERS = 1_000_000; // source: `ownNet` of the file format
const MOST_OPEN = 100; // source: our choice, more questions than anybody answers

/** Reads a FOLD file as a one-off net, with what the maker says of the lines it leaves open. Never throws. */
export function readOwnNet(text: string, answers: OwnAnswers): OwnReading {
  const refused = (
    code: FoldRefusal['code'],
    path: string,
    found: string,
    expected: string,
  ): Extract<OwnReading, { readonly is: 'refused' }> => ({
    is: 'refused',
    refusals: [{ code, path, found, expected }],
  });
  if (text.length > MOST_LETTERS)
    return refused('too-long', '', `${text.length} letters`, `at most ${MOST_LETTERS}`);
  const reading = flatFrames(text, answers.unit);
  if (!reading.ok) return { is: 'refused', refusals: reading.refusals };
  for (const { frame } of reading.frames) {
    const panels = (frame.faces_vertices ?? facesAround(frame)).length;
    // Asked before anything looks at each: an opening counts as a panel here, so there is room for some.
    if (panels > 2 * MOST_FACES)
      return refused('too-many-faces', 'faces_vertices', `${panels}`, `at most ${MOST_FACES}`);
    const heights = frame.vertices_coords.map(([, , z = 0]) => z);
    if (Math.max(...heights) - Math.min(...heights) > 1e-6)
      return refused('not-flat', 'vertices_coords', 'corners at several heights', 'a flat crease pattern');
  }
  const answered = reading.frames.map(({ at, frame }) => ({ at, frame: withAnswers(frame, at, answers) }));
  const lines = answered.flatMap(({ at, frame }) => linesOfFrame(frame, at));
  for (const name of Object.keys(answers.lines))
    if (!lines.some((line) => line.name === name))
      return refused('no-such-line', 'edges_vertices', name, `a line of this file`);
  const open = lines.filter(({ kind }) => kind === 'U');
  if (open.length > MOST_OPEN)
    return refused(
      'unassigned-edge',
      'edges_assignment',
      `${open.length} open lines`,
      `at most ${MOST_OPEN}`,
    );
  if (open.length > 0) return { is: 'asking', open, lines };

  const [first, ...others] = answered.map(({ frame }) => frame);
  const whole = JSON.stringify({
    file_spec: 1.2,
    file_title: reading.title,
    ...first,
    ...(others.length > 0 ? { file_frames: others } : {}),
  });
  const net = readFold(whole);
  if (!net.ok) return { is: 'refused', refusals: net.refusals };
  for (const { blank, faces } of net.pieces) {
    const [short, long] = [Math.min(blank.across, blank.up), Math.max(blank.across, blank.up)];
    const size = `${blank.across / TICKS_PER_MM} × ${blank.up / TICKS_PER_MM} mm`;
    if (short < LEAST_MM * TICKS_PER_MM) return refused('too-small', 'frame_unit', size, `${LEAST_MM} mm`);
    if (long > MOST_MM * TICKS_PER_MM) return refused('too-big', 'frame_unit', size, `${MOST_MM} mm`);
    if (faces.length > MOST_FACES)
      return refused('too-many-faces', 'faces_vertices', `${faces.length}`, `at most ${MOST_FACES}`);
  }
  if (whole.length > MOST_LETTERS)
    return refused('too-long', '', `${whole.length} letters`, `at most ${MOST_LETTERS}`);
  return { is: 'net', title: reading.title, text: whole, pieces: net.pieces, lines };
}

const nameOf = (frame: number, line: number): string => (frame === 0 ? `${line}` : `${frame}.${line}`);

const linesOfFrame = (frame: FoldFrame, at: number): OwnLine[] =>
  frame.edges_vertices.map(([p, q], line) => {
    const corner = (vertex: number): [number, number] => {
      const [x = 0, y = 0] = frame.vertices_coords[vertex] ?? [];
      return [x, y];
    };
    return {
      name: nameOf(at, line),
      frame: at,
      a: corner(p),
      b: corner(q),
      kind: frame.edges_assignment[line] ?? 'U',
    };
  });

/** What the maker says of its open lines put in. An open line with card on one side only is outline, and nobody is asked. */
function withAnswers(frame: FoldFrame, at: number, answers: OwnAnswers): FoldFrame {
  const rings = frame.faces_vertices ?? facesAround(frame);
  const sides = new Map<string, number>();
  for (const ring of rings)
    ring.forEach((a, k) => {
      const b = ring[(k + 1) % ring.length] ?? a;
      const key = a < b ? `${a},${b}` : `${b},${a}`;
      sides.set(key, (sides.get(key) ?? 0) + 1);
    });
  const angles = [...(frame.edges_foldAngle ?? frame.edges_vertices.map(() => null))];
  const assigned = frame.edges_assignment.map((kind, line) => {
    if (kind !== 'U') return kind;
    const said = answers.lines[nameOf(at, line)];
    const [p = 0, q = 0] = frame.edges_vertices[line] ?? [];
    const outline = sides.get(p < q ? `${p},${q}` : `${q},${p}`) === 1;
    const kindNow = outline ? 'B' : (said ?? 'U');
    const angle = angles[line] ?? 0;
    // A line that was open has no sound angle of its own, unless it agrees with what is said now.
    const agrees = (kindNow === 'V' && angle > 0) || (kindNow === 'M' && angle < 0);
    if (!agrees) angles[line] = kindNow === 'V' || kindNow === 'M' ? null : 0;
    return kindNow;
  });
  return { ...frame, edges_assignment: assigned, edges_foldAngle: angles };
}

/** A recipe's own net as a box; null where its text is no net. */
export function ownBoxOf(text: string, caliperUm: number): BoxNet | null {
  const reading = readFold(text);
  if (!reading.ok) return null;
  return {
    styleId: OWN_NET.id,
    pieces: reading.pieces,
    values: { t: caliperTicks(caliperUm) },
    options: {},
    inside: toldRoom(text) ?? measuredRoom(reading.pieces),
    caliperUm,
  };
}

/** The room the file itself names, as our own files do. */
function toldRoom(text: string): BoxNet['inside'] | null {
  const { 'cc:inside': told } = JSON.parse(text) as { readonly 'cc:inside'?: unknown };
  if (
    !Array.isArray(told) ||
    told.length !== 3 ||
    told.some((side) => typeof side !== 'number' || !(side > 0 && side <= MOST_MM))
  )
    return null;
  const [width, depth, height] = told.map((side: number) => millimetres(side)) as [Ticks, Ticks, Ticks];
  return { width, depth, height };
}

/** What a file of an own net names, and so can be held to: the room inside, and the order in which every piece is closed. */
export const toldBy = (text: string): { readonly room: boolean; readonly closing: boolean } => {
  const { file_frames: others = [], ...first } = JSON.parse(text) as FoldFrame & {
    readonly file_frames?: readonly FoldFrame[];
  };
  return {
    room: toldRoom(text) !== null,
    closing: [first, ...others].every((frame) => 'cc:closing' in frame),
  };
};

/** A plain guess at the room: the first panel, and how far the widest panel beside it stands up from it. The finding says so. */
function measuredRoom(pieces: readonly PieceNet[]): BoxNet['inside'] {
  const [piece] = pieces;
  const ring = piece?.faces[0]?.ring ?? [];
  const span = (points: readonly Point[], of: (p: Point) => number) =>
    points.length === 0 ? 0 : Math.max(...points.map(of)) - Math.min(...points.map(of));
  const standing = (piece?.hinges ?? [])
    .filter(({ parent, kind, restDeg }) => parent === 0 && kind === 'score' && Math.abs(restDeg) >= 45)
    .map(({ child, a, b }) => {
      const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
      const [u, v] = [(b.x - a.x) / long, (b.y - a.y) / long];
      return span(piece?.faces[child]?.ring ?? [], ({ x, y }) => x * -v + y * u);
    });
  const length = (value: number) => ticks(Math.max(1, Math.round(value)));
  return {
    width: length(span(ring, ({ x }) => x)),
    depth: length(span(ring, ({ y }) => y)),
    height: length(Math.max(0, ...standing)),
  };
}

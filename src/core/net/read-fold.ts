import { FOLD_UNITS_MM, type FoldFile, type FoldFrame, foldFile } from '../rows/fold-file';
import { readBy } from '../rows/refusals';
import { tooWide } from '../rows/scan-json';
import { cleanLine } from '../rows/text';
import { TICKS_PER_MM } from '../units/ticks';
import { facesAround } from './faces-around';
import { openingsOf } from './openings-of';
import { pieceOfFrame, type WholeFrame } from './piece-of-frame';
import { netArea, pointAt } from './point';
import type { PieceNet, Point } from './types';

/** Why a FOLD file cannot be used as a net: where in it, what stands there, what was expected. */
export interface FoldRefusal {
  readonly code:
    | 'not-fold'
    | 'unknown-unit'
    | 'no-such-vertex'
    | 'unassigned-edge'
    | 'sign-differs'
    | 'no-faces'
    | 'not-connected'
    | 'lists-differ'
    | 'folded-form'
    | 'not-flat'
    | 'too-small'
    | 'too-big'
    | 'too-many-faces'
    | 'too-long'
    | 'no-such-line'
    | 'no-length'
    | 'no-area'
    | 'too-many';
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

export type FoldReading =
  | { readonly ok: true; readonly title: string; readonly pieces: readonly PieceNet[] }
  | { readonly ok: false; readonly refusals: readonly FoldRefusal[] };

/** Fold of a valley or mountain whose angle the file leaves out. source: our choice, a box corner */
const USUAL_FOLD = 90; // degrees

/** A FOLD 1.x crease pattern as flat nets, one a frame: lengths rounded to ticks, faces derived where they are missing. Never throws. */
export function readFold(text: string): FoldReading {
  const wide = tooWideForFold(text);
  if (wide) return { ok: false, refusals: [wide] };
  const data = parse(text);
  const reading = readFoldFile(data);
  if (!reading.ok) return reading;
  const frames: FoldFrame[] = [reading.file, ...(reading.file.file_frames ?? [])];
  const faults = frames.flatMap((frame, at) => faultsOf(frame, at === 0 ? '' : `file_frames.${at - 1}.`));
  if (faults.length > 0) return { ok: false, refusals: faults };
  const pieces: PieceNet[] = [];
  for (const [at, frame] of frames.entries()) {
    const piece = pieceOfFrame(whole(frame), at);
    if (piece === null)
      return {
        ok: false,
        refusals: [
          {
            code: 'not-connected',
            path: at === 0 ? '' : `file_frames.${at - 1}`,
            found: 'faces that no fold joins',
            expected: 'one piece of card a frame',
          },
        ],
      };
    pieces.push(piece);
  }
  const title = (data as { file_title?: unknown }).file_title;
  return { ok: true, title: typeof title === 'string' ? cleanLine(title) : '', pieces };
}

/** source: `rows/fold-file`: the longest list of a frame; no object of ours has so many fields */
const WIDEST = { entries: 10_000, fields: 1000 };

/** The list that is longer than any net needs, asked of the text before it is parsed; null if there is none. */
export function tooWideForFold(text: string): FoldRefusal | null {
  const wide = tooWide(WIDEST, text);
  return (
    wide && {
      code: 'too-many',
      path: wide.path,
      found: `more than ${wide.most}`,
      expected: `at most ${wide.most}`,
    }
  );
}

/** Parsed JSON as a FOLD file. */
export function readFoldFile(
  data: unknown,
):
  | { readonly ok: true; readonly file: FoldFile }
  | { readonly ok: false; readonly refusals: readonly FoldRefusal[] } {
  const reading = readBy(foldFile, data);
  if (reading.ok) return { ok: true, file: reading.value };
  const refusals = reading.refusals.slice(0, 20).map(
    ({ path, found, expected }): FoldRefusal => ({
      code: 'not-fold',
      path: path.replace(/\[(\d+)\]/g, '.$1'),
      found: `${found} where ${expected} is wanted`,
      expected: 'a FOLD 1.x crease pattern',
    }),
  );
  return { ok: false, refusals };
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** What the schema cannot say: known unit, lists of one length, edges between vertices there are, signs that agree. */
function faultsOf(frame: FoldFrame, path: string): FoldRefusal[] {
  const refuse = (
    code: FoldRefusal['code'],
    where: string,
    found: string,
    expected: string,
  ): FoldRefusal => ({ code, path: path + where, found, expected });
  const faults: FoldRefusal[] = [];
  const unit = frame.frame_unit ?? 'mm';
  if (!Object.hasOwn(FOLD_UNITS_MM, unit))
    faults.push(refuse('unknown-unit', 'frame_unit', unit, Object.keys(FOLD_UNITS_MM).join(', ')));
  const edges = frame.edges_vertices.length;
  for (const key of ['edges_assignment', 'edges_foldAngle', 'edges_cc:curve'] as const) {
    const list = frame[key];
    if (list !== undefined && list.length !== edges)
      faults.push(refuse('lists-differ', key, `${list.length}`, `${edges}, one an edge`));
  }
  const vertices = frame.vertices_coords.length;
  const missing = [...frame.edges_vertices, ...(frame.faces_vertices ?? [])]
    .flat()
    .find((vertex) => vertex >= vertices);
  if (missing !== undefined)
    return [...faults, refuse('no-such-vertex', 'edges_vertices', `${missing}`, `at most ${vertices - 1}`)];
  frame.edges_assignment.forEach((assigned, edge) => {
    const angle = frame.edges_foldAngle?.[edge] ?? 0;
    if (assigned === 'U')
      faults.push(refuse('unassigned-edge', `edges_assignment.${edge}`, 'U', 'M, V, F, C or B'));
    if ((assigned === 'V' && angle < 0) || (assigned === 'M' && angle > 0))
      faults.push(
        refuse(
          'sign-differs',
          `edges_foldAngle.${edge}`,
          `${assigned} with ${angle}`,
          'V with a positive, M with a negative angle',
        ),
      );
  });
  const at = cornersInTicks(frame);
  const same = (p: number, q: number) => at[p]?.x === at[q]?.x && at[p]?.y === at[q]?.y;
  frame.edges_vertices.forEach(([p, q], edge) => {
    if (!same(p, q)) return;
    const [x = 0, y = 0] = frame.vertices_coords[p] ?? [];
    faults.push(refuse('no-length', `edges_vertices.${edge}`, `${x}, ${y}`, 'two ends apart'));
  });
  const faces = frame.faces_vertices ?? facesAround(frame);
  faces.forEach((ring, face) => {
    const corners = ring.map((vertex) => at[vertex] ?? pointAt(0, 0));
    if (netArea(corners) === 0)
      faults.push(refuse('no-area', `faces_vertices.${face}`, `panel ${face + 1}`, 'a panel with an area'));
  });
  if (faces.length === 0) faults.push(refuse('no-faces', 'faces_vertices', 'no closed face', 'at least one'));
  return faults.slice(0, 20);
}

/** Where the corners lie once they are rounded; what falls together then is one place at the bench. */
function cornersInTicks(frame: FoldFrame): readonly Point[] {
  const scale = scaleOf(frame) * TICKS_PER_MM;
  return frame.vertices_coords.map(([x = 0, y = 0]) => pointAt(x * scale, y * scale));
}

/** Millimeters to one unit of a frame; an unknown unit, which is refused, counts as millimeters. */
const scaleOf = ({ frame_unit: unit = 'mm' }: FoldFrame): number =>
  Object.hasOwn(FOLD_UNITS_MM, unit) ? FOLD_UNITS_MM[unit as keyof typeof FOLD_UNITS_MM] : 1;

/** The frame with its unit turned into millimeters, and its faces and angles filled in. */
function whole(frame: FoldFrame): WholeFrame {
  const scale = scaleOf(frame);
  const usual = { V: USUAL_FOLD, M: -USUAL_FOLD } as const;
  const { faces, holes } = openingsOf(frame, frame.faces_vertices ?? facesAround(frame));
  return {
    ...frame,
    vertices_coords: frame.vertices_coords.map((corner) => corner.map((mm) => mm * scale)),
    faces_vertices: faces,
    'faces_cc:holes': holes,
    edges_foldAngle: frame.edges_assignment.map(
      (assigned, edge) =>
        frame.edges_foldAngle?.[edge] ?? (assigned === 'V' || assigned === 'M' ? usual[assigned] : 0),
    ),
  };
}

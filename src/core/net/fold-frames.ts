import type { FOLD_UNITS_MM, FoldFrame } from '../rows/fold-file';
import { cleanLine } from '../rows/text';
import { type FoldRefusal, readFoldFile, tooWideForFold } from './read-fold';

type Raw = Readonly<Record<string, unknown>>;
export type FoldUnit = keyof typeof FOLD_UNITS_MM;

/** The flat frames of a FOLD file, each with its place in the file: 0 is the key frame, 1 the first of `file_frames`. */
export type FoldFrames =
  | {
      readonly ok: true;
      readonly title: string;
      readonly frames: readonly { readonly at: number; readonly frame: FoldFrame }[];
    }
  | { readonly ok: false; readonly refusals: readonly FoldRefusal[] };

const isRaw = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Frames that inherit from a parent take over what they leave out. source: FOLD 1.2, `frame_inherit` */
function inherited(frames: readonly Raw[]): Raw[] {
  const whole: Raw[] = [];
  for (const frame of frames) {
    const parent = frame['frame_parent'];
    const above = frame['frame_inherit'] === true && typeof parent === 'number' ? whole[parent] : undefined;
    whole.push(above ? { ...above, ...frame } : frame);
  }
  return whole;
}

const isFolded = (frame: Raw): boolean => {
  const classes = frame['frame_classes'];
  return Array.isArray(classes) && (classes.includes('foldedForm') || classes.includes('graph'));
};

/**
 * Every flat frame of a file, in its own unit. Folded forms beside a crease pattern are left aside, and lines of which nothing is said count as
 * unassigned. A frame that names no unit is in `unit`.
 */
export function flatFrames(text: string, unit?: FoldUnit): FoldFrames {
  const no = (code: FoldRefusal['code'], path: string, found: string, expected: string): FoldFrames => ({
    ok: false,
    refusals: [{ code, path, found, expected }],
  });
  const wide = tooWideForFold(text);
  if (wide) return { ok: false, refusals: [wide] };
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return no('not-fold', '', 'no JSON', 'a FOLD 1.x crease pattern');
  }
  if (!isRaw(data)) return no('not-fold', '', 'no FOLD file', 'a FOLD 1.x crease pattern');
  const { file_frames: below, ...key } = data;
  const all = inherited([key, ...(Array.isArray(below) ? below.filter(isRaw) : [])]);
  const flat = all
    .map((frame, at) => ({ at, frame }))
    .filter(({ frame }) => 'vertices_coords' in frame && !isFolded(frame));
  if (flat.length === 0 && all.some(isFolded))
    return no('folded-form', 'frame_classes', 'foldedForm', 'a flat crease pattern');
  const [first, ...others] = flat.map(({ frame }) => withAssignments(frame, unit));
  const reading = readFoldFile({
    ...first,
    file_spec: data['file_spec'],
    ...(others.length > 0 ? { file_frames: others } : {}),
  });
  if (!reading.ok) return reading;
  const { file_frames: more = [], file_spec: _, ...head } = reading.file;
  const frames = [head, ...more].map((frame, place) => ({ at: flat[place]?.at ?? place, frame }));
  const title = data['file_title'];
  return { ok: true, title: typeof title === 'string' ? cleanLine(title) : '', frames };
}

function withAssignments(frame: Raw, unit: FoldUnit | undefined): Raw {
  const edges = frame['edges_vertices'];
  const named = frame['frame_unit'];
  return {
    ...frame,
    ...(frame['edges_assignment'] === undefined && Array.isArray(edges)
      ? { edges_assignment: edges.map(() => 'U') }
      : {}),
    ...(unit !== undefined && (named === undefined || named === 'unit') ? { frame_unit: unit } : {}),
  };
}

/** Does a file leave out its unit? Its numbers then mean whatever the maker says. */
export const isUnitless = (text: string): boolean => {
  const frames = flatFrames(text);
  return (
    frames.ok &&
    frames.frames.some(({ frame }) => frame.frame_unit === undefined || frame.frame_unit === 'unit')
  );
};

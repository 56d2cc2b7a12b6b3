import type { FoldFrame } from '../rows/fold-file';
import { toMm } from '../units/ticks';
import { paringsOf } from './parings';
import type { BoxNet, ClosingAct, Curve, NetEdge, PieceNet, Point } from './types';

/**
 * A box in FOLD 1.2, one frame a piece (the first at the top level): flat, inside face up, millimeters. Slits `C`, outline `B`, scores `V`,
 * `M` or `F` with their signed angle when closed, modelling lines `J`. Source: the FOLD specification, npm `fold` 0.12.0, `doc/spec.md`.
 */
export function foldFileOf(box: BoxNet, title: string): Readonly<Record<string, unknown>> {
  const [first, ...others] = box.pieces.map(frameOf);
  return {
    file_spec: 1.2,
    file_creator: 'Crease & Count',
    file_title: title,
    'cc:inside': [toMm(box.inside.width), toMm(box.inside.depth), toMm(box.inside.height)],
    file_classes: [others.length > 0 ? 'multiModel' : 'singleModel'],
    ...first,
    ...(others.length > 0 ? { file_frames: others } : {}),
  };
}

/** The FOLD file as text. */
export const foldTextOf = (box: BoxNet, title: string): string => JSON.stringify(foldFileOf(box, title));

function frameOf(piece: PieceNet): FoldFrame {
  const corners = new Map<string, number>();
  const points: Point[] = [];
  const at = (p: Point): number => {
    const key = `${p.x},${p.y}`;
    const known = corners.get(key) ?? points.push(p) - 1;
    corners.set(key, known);
    return known;
  };
  const edges = piece.edges.map(({ a, b }): [number, number] => [at(a), at(b)]);
  const faces = piece.faces.map((_, face) => ringWithCorners(piece, face).map(at));
  const pared = paringsOf(piece).map(({ face, a, b }) => ({ face, a: inMm(a), b: inMm(b) }));
  const folds = piece.edges.some(({ kind }) => kind === 'slit') ? ['cuts'] : ['noCuts'];
  const joins = piece.edges.some(({ kind }) => kind === 'join') ? ['joins'] : ['noJoins'];
  return {
    frame_title: piece.label,
    frame_classes: ['creasePattern'],
    frame_attributes: ['2D', 'manifold', 'orientable', ...folds, ...joins],
    frame_unit: 'mm',
    vertices_coords: points.map(inMm),
    edges_vertices: edges,
    edges_assignment: piece.edges.map(assignmentOf),
    edges_foldAngle: piece.edges.map(({ foldDeg }) => foldDeg),
    faces_vertices: faces,
    'faces_cc:name': piece.faces.map(({ name }) => name),
    'faces_cc:panel': piece.faces.map(({ panel }) => panel),
    'faces_cc:role': piece.faces.map(({ role }) => role),
    ...(piece.faces.some(({ holes }) => holes.length > 0)
      ? { 'faces_cc:holes': piece.faces.map(({ holes }) => holes.map((hole) => hole.map(at))) }
      : {}),
    'faces_cc:parent': piece.faces.map(
      (_, face) => piece.hinges.find(({ child }) => child === face)?.parent ?? null,
    ),
    'edges_cc:curve': piece.edges.map(({ curve }) => curve),
    'cc:piece': piece.id,
    ...(piece.lid ? { 'cc:lid': true as const } : {}),
    'cc:glue': piece.joints.map(({ tab, target }): [number, number] => [tab, target]),
    'cc:laps': piece.joints.map(({ lap, carries, glueOnly, gap }) => ({
      lap,
      carries,
      ...(glueOnly && { glueOnly }),
      gap: toMm(gap),
    })),
    'cc:seams': piece.seams.map(({ a, b }): [number, number] => [a, b]),
    'cc:seamSides': piece.seams.map(({ faces: [p, q], gap }) => ({
      faces: [p, q] as [number, number],
      gap: toMm(gap),
    })),
    'cc:overlaps': piece.overlaps.map((group) => [...group]),
    'cc:closing': piece.closing.map(actOf),
    ...(piece.threads && {
      'cc:threads': piece.threads.map(({ length, ...thread }) => ({ ...thread, long: toMm(length) })),
    }),
    ...(pared.length > 0 ? { 'cc:pare': pared } : {}),
    'cc:curves': piece.curves.map(curveInMm),
    'cc:shell': [...piece.shell],
    'cc:roomMm3': piece.roomMm3,
  };
}

function actOf(act: ClosingAct): NonNullable<FoldFrame['cc:closing']>[number] {
  if (act.do === 'glue') return { ...act };
  const { through, ...rest } = act;
  return {
    ...rest,
    hinges: [...act.hinges],
    toDeg: [...act.toDeg],
    panels: [...act.panels],
    ...(through === undefined ? {} : { through: through.map((stop) => [...stop]) }),
  };
}

const inMm = ({ x, y }: Point): [number, number] => [toMm(x), toMm(y)];

const curveInMm = ({ a, b, centre, radius, kind }: Curve) => ({
  a: inMm(a),
  b: inMm(b),
  centre: [toMm(centre[0]), toMm(centre[1])] as [number, number],
  radius: toMm(radius),
  kind,
});

function assignmentOf({ kind, foldDeg }: NetEdge): 'B' | 'C' | 'J' | 'V' | 'M' | 'F' {
  if (kind === 'slit') return 'C';
  if (kind === 'join') return 'J';
  if (kind !== 'score') return 'B';
  return foldDeg > 0 ? 'V' : foldDeg < 0 ? 'M' : 'F';
}

/** A face's ring with the corners its neighbors have along it: FOLD faces list every vertex they pass. */
export function ringWithCorners(piece: PieceNet, face: number): Point[] {
  const own = piece.edges.filter(({ left, right }) => left !== right && (left === face || right === face));
  const next = new Map(own.map(({ a, b, left }) => (left === face ? [keyOf(a), b] : [keyOf(b), a])));
  const start = piece.faces[face]?.ring[0];
  const ring: Point[] = [];
  for (let p = start; p !== undefined && ring.length <= own.length; p = next.get(keyOf(p))) {
    if (ring.length > 0 && start !== undefined && keyOf(p) === keyOf(start)) return ring;
    ring.push(p);
  }
  return ring;
}

const keyOf = ({ x, y }: Point): string => `${x},${y}`;

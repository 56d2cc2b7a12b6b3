import { linesOf, type NetLine } from '../core/net/lines';
import type { BoxNet, PieceNet, Point } from '../core/net/types';
import { type Ticks, toMm } from '../core/units';

const pointMm = ({ x, y }: Point) => [toMm(x), toMm(y)] as const;
const ringMm = (ring: readonly Point[]) => ring.map(pointMm);
/** Every length of a record in millimeters, under its own name. */
const allMm = (lengths: Readonly<Record<string, Ticks>>) =>
  Object.fromEntries(Object.entries(lengths).map(([name, length]) => [name, toMm(length)]));

const lineMm = ({ from, to, foldDeg, length, curve }: NetLine, piece: PieceNet) => ({
  from: pointMm(from),
  to: pointMm(to),
  lengthMm: toMm(length),
  foldDeg,
  ...(curve === null ? {} : { radiusMm: toMm(piece.curves[curve]?.radius ?? 0) }),
});

function pieceMm(piece: PieceNet) {
  const lines = linesOf(piece);
  const ofKind = (kind: NetLine['kind']) =>
    lines.filter((line) => line.kind === kind).map((line) => lineMm(line, piece));
  const faceName = (index: number) => piece.faces[index]?.name;
  return {
    id: piece.id,
    label: piece.label,
    blank: { acrossMm: toMm(piece.blank.across), upMm: toMm(piece.blank.up) },
    faces: piece.faces.map(({ name, panel, role, ring, holes }) => ({
      name,
      panel,
      role,
      ringMm: ringMm(ring),
      holesMm: holes.map(ringMm),
    })),
    scores: ofKind('score'),
    slits: ofKind('slit').map(({ foldDeg: _, ...slit }) => slit),
    cuts: ofKind('cut').map(({ foldDeg: _, ...cut }) => cut),
    wasteMm: piece.waste.map(ringMm),
    glue: piece.joints.map(({ tab, target, lap, carries }) => ({
      panel: faceName(tab),
      onto: faceName(target),
      lap,
      carries,
    })),
    roomMm3: piece.roomMm3,
  };
}

/** A net as the desk prints it: inside face up, origin at each blank's lower left, x right, y up, millimeters throughout. */
export const describeNet = (net: BoxNet) => ({
  style: net.styleId,
  caliperMm: net.caliperUm / 1000,
  valuesMm: allMm(net.values),
  insideMm: allMm(net.inside),
  pieces: net.pieces.map(pieceMm),
});

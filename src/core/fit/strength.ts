import { asItStands } from '../net/lay-net';
import type { BoxNet, PieceNet, Point } from '../net/types';
import { toMm } from '../units';

/**
 * How stiff the bottom is and how far it may sag: an estimate with its assumptions, never a load that is called safe.
 * Plate strip, simply supported over the shorter side: S = E t³ / 12 per unit width, sag = 5 q L⁴ / (384 S). Textbook; ISO 5628 names the method of measuring S.
 */
export interface Stiffness {
  /** Bending stiffness per unit width, mN·m. */
  readonly milliNewtonMetres: number;
  /** True where the maker's paper has no measured modulus and a typical one stands in. */
  readonly typical: boolean;
}

/** Young's modulus across the grain, GPa: the weaker way of a sheet. source: from memory, typical of uncoated card (2–2.5); along the grain about twice that. */
export const TYPICAL_MODULUS_GPA = 2.5;
const GRAVITY = 9.81; // m/s², source: standard gravity, rounded as the handbook tables round it

/** Stiffness of one layer of card. Caliper in micrometers; modulus in GPa, null for the typical one. */
export function stiffnessOf(caliperUm: number, modulusGpa: number | null): Stiffness {
  const metres = caliperUm / 1e6;
  const pascals = (modulusGpa ?? TYPICAL_MODULUS_GPA) * 1e9;
  return { milliNewtonMetres: ((pascals * metres ** 3) / 12) * 1000, typical: modulusGpa === null };
}

/** Sag at the middle of a strip under an even load, mm. Span in mm, load in pascals (N/m²), stiffness in mN·m per unit width. */
export const sagMm = (spanMm: number, loadPa: number, milliNewtonMetres: number): number =>
  ((5 * loadPa * (spanMm / 1000) ** 4) / (384 * (milliNewtonMetres / 1000))) * 1000;

export interface BottomEstimate {
  /** Weight of everything inside; null when something has not been weighed. */
  readonly grams: number | null;
  readonly stiffness: Stiffness;
  /** Sag, the shorter side it spans, both mm, and the even load on it, Pa; null when something has not been weighed or the bottom is no plate. */
  readonly sag: { readonly mm: number; readonly spanMm: number; readonly loadPa: number } | null;
  readonly advice: readonly BottomAdvice[];
}

export type BottomAdvice = 'weigh-contents' | 'double-the-bottom' | 'heavier-card' | 'trial-box-first';

/** A bottom that carries as one plate held along its sides, score to score, in millimeters; loose layers under the contents. */
export interface BottomPlate {
  readonly widthMm: number;
  readonly depthMm: number;
  readonly layers: number;
}

/**
 * The box's own bottom, if it is one plate: a rectangular base with walls on three sides or more, or four flaps glued on one another, which
 * lie two deep. Null for a floor laid on a rim, and for halves that lock or tuck: those turn on their scores before they bend.
 */
export function bottomPlate(net: BoxNet): BottomPlate | null {
  for (const piece of asItStands(net)) {
    const plate = gluedFlaps(piece) ?? heldBase(piece);
    if (plate) return plate;
  }
  return null;
}

function gluedFlaps({ faces, hinges, joints }: PieceNet): BottomPlate | null {
  const isFlap = (index: number) => faces[index]?.role === 'bottomFlap';
  const flaps = hinges.filter(({ child }) => isFlap(child));
  const glued = joints.filter(({ tab, target, carries }) => carries && isFlap(tab) && isFlap(target));
  if (flaps.length !== 4 || glued.length < 3) return null;
  return plateOf(
    flaps.map(({ a, b }) => lengthOf(a, b)),
    2,
  );
}

function heldBase({ faces, hinges }: PieceNet): BottomPlate | null {
  for (const [index, { role, ring }] of faces.entries()) {
    const isHeld = hinges.filter(({ parent }) => parent === index).length >= 3;
    if (role === 'base' && isHeld && isRectangle(ring))
      return plateOf(
        ring.map((corner, i) => lengthOf(corner, ring[(i + 1) % 4]!)),
        1,
      );
  }
  return null;
}

const plateOf = (sides: readonly number[], layers: number): BottomPlate => ({
  widthMm: toMm(Math.max(...sides)),
  depthMm: toMm(Math.min(...sides)),
  layers,
});

const lengthOf = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

const isRectangle = (ring: readonly Point[]): boolean =>
  ring.length === 4 &&
  ring.every(({ x, y }, i) => {
    const [before, after] = [ring[(i + 3) % 4]!, ring[(i + 1) % 4]!];
    return (x - before.x) * (after.x - x) + (y - before.y) * (after.y - y) === 0;
  });

const NOTICEABLE_SAG_MM = 1; // source: common practice, no source; about what an eye sees on a small box
const LARGE_SAG_MM = 3; // source: common practice, no source
const TRIAL_FROM_GRAMS = 250; // source: common practice, no source

/**
 * What to expect of a bottom (the stiffness of loose layers adds up, nothing is taken for the glue between them); no sag where it is no plate.
 * Contents weighed in grams, null if unknown; caliper in micrometers.
 */
export function estimateBottom(
  plate: BottomPlate | null,
  card: { readonly caliperUm: number; readonly modulusGpa: number | null },
  grams: number | null,
): BottomEstimate {
  const stiffness = stiffnessOf(card.caliperUm, card.modulusGpa);
  if (grams === null) return { grams, stiffness, sag: null, advice: ['weigh-contents', 'trial-box-first'] };
  if (plate === null) return { grams, stiffness, sag: null, advice: ['trial-box-first'] };
  const spanMm = Math.min(plate.widthMm, plate.depthMm);
  const loadPa = ((grams / 1000) * GRAVITY) / ((plate.widthMm * plate.depthMm) / 1e6);
  const sag = sagMm(spanMm, loadPa, stiffness.milliNewtonMetres * plate.layers);
  const advice: BottomAdvice[] = [];
  if (sag > NOTICEABLE_SAG_MM) advice.push('double-the-bottom');
  if (sag > LARGE_SAG_MM) advice.push('heavier-card');
  if (sag > NOTICEABLE_SAG_MM || grams >= TRIAL_FROM_GRAMS) advice.push('trial-box-first');
  return { grams, stiffness, sag: { mm: sag, spanMm, loadPa }, advice };
}

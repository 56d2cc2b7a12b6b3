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

/** Stiffness of one layer of card. Caliper in micrometres; modulus in GPa, null for the typical one. */
export function stiffnessOf(caliperUm: number, modulusGpa: number | null): Stiffness {
  const metres = caliperUm / 1e6;
  const pascals = (modulusGpa ?? TYPICAL_MODULUS_GPA) * 1e9;
  return { milliNewtonMetres: ((pascals * metres ** 3) / 12) * 1000, typical: modulusGpa === null };
}

/** Sag at the middle of a strip under an even load, mm. Span in mm, load in pascals (N/m²), stiffness in mN·m per unit width. */
export const sagMm = (spanMm: number, loadPa: number, milliNewtonMetres: number): number =>
  ((5 * loadPa * (spanMm / 1000) ** 4) / (384 * (milliNewtonMetres / 1000))) * 1000;

export interface BottomEstimate {
  /** The shorter side of the bottom, mm, and the even load on it, Pa; null when something has not been weighed. */
  readonly spanMm: number;
  readonly loadPa: number | null;
  /** Weight of everything inside; null when something has not been weighed. */
  readonly grams: number | null;
  readonly stiffness: Stiffness;
  readonly sagMm: number | null;
  readonly advice: readonly BottomAdvice[];
}

export type BottomAdvice = 'weigh-contents' | 'double-the-bottom' | 'heavier-card' | 'trial-box-first';

/** Loose layers under the contents: four bottom flaps lie two deep, any other bottom is one sheet. */
export const bottomLayers = (roles: readonly string[]): number =>
  roles.filter((role) => role === 'bottomFlap').length >= 4 ? 2 : 1;

const NOTICEABLE_SAG_MM = 1; // source: common practice, no source; about what an eye sees on a small box
const LARGE_SAG_MM = 3; // source: common practice, no source
const TRIAL_FROM_GRAMS = 250; // source: common practice, no source

/**
 * What to expect of a bottom of `layers` loose layers (stiffness adds up, nothing is taken for the glue between them).
 * Inside width and depth in mm; contents weighed in grams, null if unknown; caliper in micrometres.
 */
export function estimateBottom(
  inside: { readonly widthMm: number; readonly depthMm: number },
  card: { readonly caliperUm: number; readonly modulusGpa: number | null; readonly layers: number },
  grams: number | null,
): BottomEstimate {
  const stiffness = stiffnessOf(card.caliperUm, card.modulusGpa);
  const span = Math.min(inside.widthMm, inside.depthMm);
  if (grams === null)
    return {
      grams,
      stiffness,
      spanMm: span,
      loadPa: null,
      sagMm: null,
      advice: ['weigh-contents', 'trial-box-first'],
    };
  const area = (inside.widthMm * inside.depthMm) / 1e6;
  const load = ((grams / 1000) * GRAVITY) / area;
  const sag = sagMm(span, load, stiffness.milliNewtonMetres * card.layers);
  const advice: BottomAdvice[] = [];
  if (sag > NOTICEABLE_SAG_MM) advice.push('double-the-bottom');
  if (sag > LARGE_SAG_MM) advice.push('heavier-card');
  if (sag > NOTICEABLE_SAG_MM || grams >= TRIAL_FROM_GRAMS) advice.push('trial-box-first');
  return { grams, stiffness, spanMm: span, loadPa: load, sagMm: sag, advice };
}

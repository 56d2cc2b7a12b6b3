/** Radians to degrees. */
export const toDegrees = (radians: number): number => (radians * 180) / Math.PI;

/** Degrees to radians. */
export const toRadians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Cosine and sine of degrees, exact at whole quarter turns so that a square box stays square. */
export function turnOf(degrees: number): readonly [cos: number, sin: number] {
  const quarters = degrees / 90;
  if (Number.isInteger(quarters)) {
    const at = ((quarters % 4) + 4) % 4;
    return [[1, 0, -1, 0][at] ?? 1, [0, 1, 0, -1][at] ?? 0];
  }
  const radians = toRadians(degrees);
  return [Math.cos(radians), Math.sin(radians)];
}

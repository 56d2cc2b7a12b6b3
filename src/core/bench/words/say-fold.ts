/** A fold in words, inside face up: `square up`, `flat over`, `up to 117.5°`, `down to 135°`, `as it lies`. To 0.1 degree. */
export function sayFold(deg: number): string {
  const tenths = Math.round(Math.abs(deg) * 10) / 10;
  const [square, flat, other] =
    deg < 0 ? ['square down', 'flat under', 'down to'] : ['square up', 'flat over', 'up to'];
  if (tenths === 0) return 'as it lies';
  return tenths === 90 ? square : tenths === 180 ? flat : `${other} ${tenths}°`;
}

const NAMED: Readonly<Record<string, number>> = {
  'as it lies': 0,
  'square up': 90,
  'square down': -90,
  'flat over': 180,
  'flat under': -180,
};

/** Matches what `sayFold` says. */
export const FOLD_WORDS =
  'as it lies|square up|square down|flat over|flat under|up to [\\d.]+°|down to [\\d.]+°';

/** The degrees said; null for anything else. */
export function readFold(words: string): number | null {
  const named = NAMED[words];
  if (named !== undefined) return named;
  const [, way, deg] = /^(up|down) to ([\d.]+)°$/.exec(words) ?? [];
  return deg === undefined ? null : Number(deg) * (way === 'down' ? -1 : 1);
}

const GRAMS = {
  g: 1,
  gram: 1,
  oz: 28.349523125,
  ounce: 28.349523125,
  lb: 453.59237,
  pound: 453.59237,
} as const; // source: definition of the avoirdupois pound and its sixteenth

/** Whole grams of a weight as a scale shows it: `57`, `57 g`, `2 oz`, `1/2 oz`, `0.5 lb`. Nothing written is 0; null for what does not read. */
export function readGrams(text: string): number | null {
  if (text.trim() === '') return 0;
  const [, whole, over, under, unit = 'g'] =
    /^(?:(\d+(?:[.,]\d+)?|[.,]\d+)|(\d+)\/([1-9]\d?))\s*(?:(grams?|g|oz|ounces?|lbs?|pounds?)\.?)?$/.exec(
      text.trim().toLowerCase(),
    ) ?? [];
  const amount = whole === undefined ? Number(over) / Number(under) : Number(whole.replace(',', '.'));
  if (Number.isNaN(amount)) return null;
  return Math.round(amount * GRAMS[unit.replace(/s$/, '') as keyof typeof GRAMS]);
}

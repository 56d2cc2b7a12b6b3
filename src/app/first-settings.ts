import { FIRST_SETTINGS, type Settings } from '../../shared/settings';

/** Where lengths are told in inches. Source: CLDR measurement systems, from memory. */
const INCHES: ReadonlySet<string> = new Set(['US', 'LR', 'MM']);

/** Currency by region. Source: ISO 4217 and ISO 3166, from memory. */
const CURRENCY: Readonly<Record<string, string>> = {
  US: 'USD',
  GB: 'GBP',
  CA: 'CAD',
  AU: 'AUD',
  NZ: 'NZD',
  ZA: 'ZAR',
  IN: 'INR',
  CH: 'CHF',
  JP: 'JPY',
  SE: 'SEK',
  NO: 'NOK',
  DK: 'DKK',
  PL: 'PLN',
  CZ: 'CZK',
  HU: 'HUF',
  MX: 'MXN',
  BR: 'BRL',
};
// biome-ignore format: one row
const EURO: ReadonlySet<string> = new Set(['AT', 'BE', 'CY', 'DE', 'EE', 'ES', 'FI', 'FR', 'GR', 'HR', 'IE', 'IT', 'LT', 'LU', 'LV', 'MT', 'NL', 'PT', 'SI', 'SK']);

/** Unit and currency a new workbook starts with where this language is spoken: `en-GB` is millimeters and pounds. Never throws. */
export function settingsFor(locale: string): Settings {
  const region = regionOf(locale);
  if (region === undefined) return FIRST_SETTINGS;
  const currency = EURO.has(region) ? 'EUR' : (CURRENCY[region] ?? FIRST_SETTINGS.currency);
  return { ...FIRST_SETTINGS, unit: INCHES.has(region) ? 'in' : 'mm', currency };
}

function regionOf(locale: string): string | undefined {
  try {
    return new Intl.Locale(locale).maximize().region;
  } catch {
    return undefined;
  }
}

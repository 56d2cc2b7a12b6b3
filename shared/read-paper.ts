import { mmOfTicks } from '../src/core/rows/lengths';
import { type LengthUnit, readSizes } from '../src/core/units';
import { estimateCaliperUm, readCaliperUm, readGrammage, SHEETS } from './catalogue';
import type { Paper } from './workbook';

/** A paper as it is written on a wrapper; what was not written is told apart from what was. */
export interface HeardPaper {
  readonly paper: Pick<Paper, 'name' | 'colour' | 'acrossMm' | 'upMm' | 'gsm' | 'caliperUm' | 'packs'>;
  readonly heard: {
    readonly weight: boolean;
    readonly caliper: boolean;
    readonly price: boolean;
  };
}

/** Bulk of uncoated cardstock, cm³/g. source: common practice, no source */
const BULK = 1.25;
/** 80 lb cover. source: common practice, no source */
const USUAL_GSM = 216;
/** Sheets where a price stands without a count: a sheet alone. */
const ALONE = 1;

/** source: the color keywords of CSS, and paper names from memory */
const COLOURS: Readonly<Record<string, string>> = {
  white: '#ffffff',
  ivory: '#fffff0',
  cream: '#fffdd0',
  natural: '#f4efe4',
  kraft: '#c9a579',
  black: '#202020',
  gray: '#9a9a9a',
  grey: '#9a9a9a',
  red: '#c62828',
  pink: '#f4b6c2',
  orange: '#f08a24',
  yellow: '#ffe066',
  gold: '#d4af37',
  silver: '#c0c0c0',
  green: '#3f8f4f',
  sage: '#b2c2a4',
  blue: '#3f6fb5',
  navy: '#22335b',
  teal: '#2a8c8c',
  purple: '#7b4fa3',
  lavender: '#d6c8ec',
  brown: '#7a5236',
};
const PLAIN = '#f4efe4';

/**
 * A paper typed in one go, in any order, commas between: `12x12, 65 lb, white, $12.99 for 25`. Pounds without a grade are cover, since boxes
 * are made of it. Null where no sheet size is named.
 */
export function readPaper(text: string, unit: LengthUnit): HeardPaper | null {
  const parts = text
    .split(/[,;]\s+|[,;](?=\D)|\n/)
    .map((part) => part.trim())
    .filter(Boolean);
  let size: readonly [number, number] | null = null;
  let gsm: number | null = null;
  let caliperUm: number | null = null;
  let price: { readonly minor: number; readonly sheets: number | null } | null = null;
  let sheets: number | null = null;
  const words: string[] = [];
  for (const part of parts) {
    const sized: readonly [number, number] | null = size === null ? readSheet(part, unit) : null;
    if (sized) {
      size = sized;
      continue;
    }
    const paid = readPrice(part);
    if (paid) {
      price = paid;
      continue;
    }
    const pack = /^(?:pack of )?(\d{1,4}) ?(?:sheets|pk|ct|pack|pcs)?$/i.exec(part);
    if (pack && /pack|sheets|pk|ct|pcs/i.test(part)) {
      sheets = Number(pack[1]);
      continue;
    }
    const weight = readGrammage(/(lbs?\.?|#)$/i.test(part) ? `${part} cover` : part);
    if (weight !== null && /[a-z#]/i.test(part)) {
      gsm = weight;
      continue;
    }
    const thick = readCaliperUm(part, unit);
    if (thick !== null && thick >= 50 && thick <= 2000) {
      caliperUm = thick;
      continue;
    }
    words.push(part);
  }
  if (size === null) return null;
  const weighed = Math.min(1000, Math.max(30, gsm ?? USUAL_GSM));
  const colour = words
    .flatMap((word) => word.toLowerCase().split(/\s+/))
    .map((word) => COLOURS[word])
    .find(Boolean);
  const pieces = price?.sheets ?? sheets ?? ALONE;
  return {
    paper: {
      name: text.trim().slice(0, 200),
      colour: colour ?? PLAIN,
      acrossMm: size[0],
      upMm: size[1],
      gsm: weighed,
      caliperUm: caliperUm ?? estimateCaliperUm(weighed, BULK),
      packs: price ? [{ sheets: pieces, priceMinor: price.minor }] : [],
    },
    heard: { weight: gsm !== null, caliper: caliperUm !== null, price: price !== null },
  };
}

function readSheet(part: string, unit: LengthUnit): readonly [number, number] | null {
  const named = SHEETS.find(({ id }) => id === part.toLowerCase());
  if (named) return [mmOfTicks(named.across), mmOfTicks(named.up)];
  const sizes = readSizes(part, unit);
  const [across, up] = sizes ?? [];
  return sizes?.length === 2 && across !== undefined && up !== undefined
    ? [mmOfTicks(across), mmOfTicks(up)]
    : null;
}

/** `$12.99`, `12.99 for 25`, `$12.99/25`; whole cents. */
function readPrice(part: string): { readonly minor: number; readonly sheets: number | null } | null {
  const found =
    /^([$€£]?)\s?(\d{1,5}(?:[.,]\d{1,2})?)\s?([$€£]?)(?:\s?(?:for|\/|per)\s?(?:a )?(?:pack of )?(\d{1,4})?.*)?$/i.exec(
      part,
    );
  if (!found) return null;
  const [, before, amount = '', after, count] = found;
  if (!before && !after && count === undefined) return null;
  return { minor: Math.round(Number(amount.replace(',', '.')) * 100), sheets: count ? Number(count) : null };
}

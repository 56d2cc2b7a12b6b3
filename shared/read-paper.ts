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
  /** What has a figure in it and was not understood. */
  readonly unread: readonly string[];
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

/** A whole number, a decimal, or an inch with its fraction, and a unit. */
const ONE_SIDE = String.raw`(?:\d+(?:[ -]\d+/\d+|\.\d+|,\d+(?!\d*\s?(?:lb|#|g|pt|mil))|\s?[¼½¾⅛⅜⅝⅞])?|[.,]\d+|\d+/\d+)\s?(?:inch(?:es)?|in\b|["”″]|mm\b|cm\b)?`;
const SHEET = new RegExp(String.raw`${ONE_SIDE}\s*(?:[x×*✕]|by)\s*${ONE_SIDE}`, 'iu');
const SQUARE = /(\d+(?:[.,]\d+)?)\s?-?(inch(?:es)?|in\b|["”″]|mm\b|cm\b)\s?-?square/i;
const NAMED_SHEET =
  /(?<![\w-])(half-letter|letter|legal|tabloid|ledger|a[0-6]|b[0-6]|sra[0-4]|ra[0-4])(?![\w-])/i;
const POUNDS =
  /(?:(\d{2,3}(?:[.,]\d+)?)\s?-?(?:lbs?\b\.?|#|pounds?\b)|#\s?(\d{2,3}))[\s,]*((?:cover|card\s?stock|text|book|offset|index|bristol|tag|newsprint|bond|writing)\b)?/i;
const GRAMS = /(\d{2,4}(?:[.,]\d+)?)\s?(?:g\/m²|g\/m2|gsm|grams?|g)(?![\w²])/i;
const CALIPER = /(\d*[.,]?\d+)\s?-?(pts?\b\.?|points?\b|mils?\b|thou\b|[µμu]m\b|mm\b|in\b|inch\b|["”″])/i;
const BARE_INCH = /(?<![\d.,$€£])(0?[.,]0\d{1,3})(?!\d)/;
/** What it is paid in, before or after; how many it buys may stand before it: `25 for $12.99`. */
const MONEY =
  /(?:(\d{1,4})\s?(?:sheets? )?for\s?)?(?:[$€£]\s?(\d{1,3}(?:,\d{3})+(?:\.\d{2})?|\d{1,5}(?:[.,]\d{1,2})?|[.,]\d{1,2})(?!\d)|(\d{1,5}(?:[.,]\d{1,2})?|[.,]\d{2})\s?(?:[$€£]|dollars?\b|usd\b)|(\d{1,3})\s?(?:¢|cents?\b))/i;
/** An amount alone, told by what it buys: `12.99 for 25`, `12.99 a pack`. */
const BARE_MONEY =
  /()()(\d{1,5}[.,]\d{2}|\d{1,5}(?=\s?for))(?=\s?(?:for|per|a|\/)\s?(?:a |the )?(?:pack|pkg|pk|box|sheet|\d))/i;
const SO_MANY_FOR = /(\d{1,4})\s?(?:sheets? )?for\s?()(\d{1,5}[.,]\d{2})(?!\d)/i;
const FOR_SO_MANY =
  /^\s?(?:for|per|a|\/)\s?(?:an? )?(?:(?:pack|pkg|pk|box) (?:of )?)?(\d{1,4})(?!\d|[.,]\d|\s?(?:lb|#|gsm|pt|x|×))(?:\s?-?(?:sheets?|ct|pack|pk|pcs?)\b)?/i;
const PACK_OF =
  /(?:pack|pkg|pk|package|box|ream)s?\s?(?:of|\/|:)?\s?(\d{1,4})\b(?!\s?(?:lb|#|gsm|pt|in\b|["”]))/i;
const SO_MANY =
  /(\d{1,4})\s?-?(?:sheets?|shts?|ct|count|pk|packs?|pcs?|pieces?|pkg|(?:sheets? )?(?:per|in|to) (?:a |each )?(?:pack|pkg|package|box))\b\.?(?:\s?(?:per|\/|in a|a) ?(?:pack|pkg|pk|box))?(?:\s?for\b)?/i;
const EACH = /\b(?:each|ea|apiece)\b\.?|(?:\bper|\ba|\/)\s?(?:sheet|pack|pkg|pk|box)\b/i;

/**
 * A paper typed in one go, in any order, with or without commas: `12x12, 65 lb, white, $12.99 for 25`, `25 sheets 65# cover 12x12 $12.99`.
 * Pounds without a grade are cover, since boxes are made of it; a price without a count is that of one sheet. Null where no sheet size is named.
 */
export function readPaper(text: string, unit: LengthUnit): HeardPaper | null {
  /** What nothing has read yet, and what names the paper: all but its price. Both as long as the text, so that places agree. */
  let rest = text;
  let named = text;
  const blank = (from: string, at: number, length: number) =>
    from.slice(0, at) + ' '.repeat(length) + from.slice(at + length);
  function take<Read>(pattern: RegExp, read: (found: RegExpExecArray) => Read | null, sells = false) {
    const found = pattern.exec(rest);
    const heard = found && read(found);
    if (!found || heard === null) return null;
    rest = blank(rest, found.index, found[0].length);
    if (sells) named = blank(named, found.index, found[0].length);
    return heard;
  }

  const size =
    take(SHEET, ([pair]) => sheetOf(readSizes(pair, unit))) ??
    take(SQUARE, ([, side = '', small = '']) => sheetOf(readSizes(`${side} x ${side} ${small}`, unit))) ??
    take(NAMED_SHEET, ([name]) => {
      const sheet = SHEETS.find(({ id }) => id === name.toLowerCase());
      return sheet ? ([mmOfTicks(sheet.across), mmOfTicks(sheet.up)] as const) : null;
    });
  if (size === null) return null;

  let paidAt = 0;
  let bought = 0;
  const pay = (found: RegExpExecArray) => {
    paidAt = found.index + found[0].length;
    const [, many, before, after, cents] = found;
    bought = Number(many ?? 0);
    const amount = before || after;
    return amount === undefined
      ? Number(cents)
      : Math.round(Number(amount.replace(/,(?=\d{3})/g, '').replace(',', '.')) * 100);
  };
  const priceMinor = take(MONEY, pay, true) ?? take(SO_MANY_FOR, pay, true) ?? take(BARE_MONEY, pay, true);
  const many = priceMinor === null ? null : FOR_SO_MANY.exec(rest.slice(paidAt));
  if (many) {
    rest = blank(rest, paidAt, many[0].length);
    named = blank(named, paidAt, many[0].length);
  }
  const inPack =
    take(PACK_OF, ([, of]) => Number(of), true) ?? take(SO_MANY, ([, sold]) => Number(sold), true);
  const sheets = Number(many?.[1]) || inPack || bought;
  take(EACH, () => true, true);

  const pounds = take(POUNDS, ([, before, after, word = '']) => {
    const grade = /^card/i.test(word) ? 'cover' : word;
    const weight = `${before ?? after} lb`;
    return readGrammage(`${weight} ${grade}`) ?? readGrammage(`${weight} cover`);
  });
  const grams = take(GRAMS, ([, amount = '']) => readGrammage(amount));
  const gsm = pounds ?? grams;
  const thickness = (written: string) => {
    const um = readCaliperUm(written, unit);
    return um !== null && um >= 50 && um <= 2000 ? um : null;
  };
  const caliperUm =
    take(CALIPER, ([, amount = '', small = '']) => thickness(`${amount} ${small.replace('thou', 'mil')}`)) ??
    take(BARE_INCH, ([, amount = '']) => thickness(`${amount} in`));

  const weighed = Math.min(1000, Math.max(30, gsm ?? USUAL_GSM));
  const words = rest.toLowerCase().split(/[^a-z]+/);
  return {
    paper: {
      name: tidy(named),
      colour: words.map((word) => COLOURS[word]).find(Boolean) ?? PLAIN,
      acrossMm: size[0],
      upMm: size[1],
      gsm: weighed,
      caliperUm: caliperUm ?? estimateCaliperUm(weighed, BULK),
      packs: priceMinor === null ? [] : [{ sheets: sheets || ALONE, priceMinor }],
    },
    heard: { weight: gsm !== null, caliper: caliperUm !== null, price: priceMinor !== null },
    unread: rest.match(/\S*\d\S*/g)?.map((part) => part.replace(/^[,;]+|[,;]+$/g, '')) ?? [],
  };
}

const sheetOf = (sizes: ReturnType<typeof readSizes>): readonly [number, number] | null => {
  const [across, up] = sizes ?? [];
  return across !== undefined && up !== undefined ? [mmOfTicks(across), mmOfTicks(up)] : null;
};

/** The label without what was taken out of it. */
const tidy = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .replace(/(?: ?[,;])+(?= ?[,;]| ?$)/g, '')
    .replace(/ ([,;])/g, '$1')
    .replace(/^[\s,;/@-]+|[\s,;/@-]+$|\s(?:for|at|@)$/g, '')
    .slice(0, 200);

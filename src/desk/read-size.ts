import { readCaliperUm } from '../../shared/catalogue';
import { evaluateForm, formOf } from '../core/styles/language/linear-form';
import type { BoxStyle } from '../core/styles/language/types';
import { type LengthUnit, readLength, spellLength, type Ticks } from '../core/units';
import { suggestName } from './nearest-name';
import { refuse } from './refuse';
import type { DeskRefusal } from './verb';

export const USUAL_CALIPER_UM = 300; // source: common practice, no source; favor cardstock of 200 to 220 gsm measures about that
const LEAST_CALIPER_UM = 50; // source: `caliperUm` of the file format
const MOST_CALIPER_UM = 2000; // source: `caliperUm` of the file format

/** Whether the length of a `SYMBOL=LENGTH` is written in inches, by its own unit. */
export const writtenInInches = (setting: string): boolean => {
  const read = readLength(setting.slice(setting.indexOf('=') + 1), 'mm');
  return read.ok && read.heard.unit === 'in';
};

/** `width=3 1/2 in` into `sizes`. A bare number is in `unit`. */
export function readSetting(
  setting: string,
  unit: LengthUnit,
  sizes: Record<string, Ticks>,
  style: BoxStyle,
  refused: DeskRefusal[],
): void {
  const [, symbol, text] = /^([^=]*)=(.*)$/s.exec(setting) ?? [];
  if (symbol === undefined || text === undefined) {
    const says = `--set takes SYMBOL=LENGTH, such as width='3 1/2 in', not “${setting}”.`;
    refused.push(refuse('not-a-setting', '--set', setting, 'SYMBOL=LENGTH', says));
    return;
  }
  const read = readLength(text, unit);
  if (read.ok) keepSize(sizes, symbol, read.length, style, refused);
  else {
    const says = `${symbol}: “${text}” is not a length. ${read.reason} ${read.remedy}`;
    refused.push(refuse(read.code, symbol, text, read.remedy, says));
  }
}

/** A length for a symbol of the style, if it has that symbol and the length lies within the symbol's limits. */
export function keepSize(
  sizes: Record<string, Ticks>,
  symbol: string,
  length: Ticks,
  style: BoxStyle,
  refused: DeskRefusal[],
): void {
  const names = Object.keys(style.symbols);
  const spec = Object.hasOwn(style.symbols, symbol) ? style.symbols[symbol] : undefined;
  if (!spec) {
    const says = `${style.id} has no size “${symbol}”. ${suggestName(symbol, names)}`;
    refused.push(refuse('unknown-symbol', symbol, symbol, names.join(', '), says));
    return;
  }
  const [least, most] = [spec.min, spec.max].map((limit) => evaluateForm(formOf(limit), {})) as [
    Ticks,
    Ticks,
  ];
  sizes[symbol] = length;
  if (length >= least && length <= most) return;
  const found = spellLength(length, 'mm');
  const expected = `${spellLength(least, 'mm')} to ${spellLength(most, 'mm')}`;
  const says = `${symbol} is ${found}; this style takes ${expected}.`;
  refused.push(refuse(length < least ? 'too-small' : 'too-big', symbol, found, expected, says));
}

/** Card thickness in micrometers, from a length as a maker writes it. */
export function readCaliper(text: string, unit: LengthUnit, refused: DeskRefusal[]): number {
  const caliperUm = readCaliperUm(text, unit);
  if (caliperUm === null) {
    const read = readLength(text, unit);
    const [code, reason] = read.ok ? ['not-a-length', ''] : [read.code, `${read.reason} `];
    const says = `--caliper: “${text}” is not a thickness. ${reason}Type it like 0.3mm, 0.012in or 12pt.`;
    refused.push(refuse(code, '--caliper', text, 'such as 0.3mm', says));
    return USUAL_CALIPER_UM;
  }
  if (caliperUm < LEAST_CALIPER_UM || caliperUm > MOST_CALIPER_UM) {
    const says = `--caliper is ${caliperUm / 1000} mm; cardstock is 0.05 mm to 2 mm thick. Check the unit.`;
    refused.push(refuse('caliper-out-of-range', '--caliper', text, '0.05 mm to 2 mm', says));
  }
  return caliperUm;
}

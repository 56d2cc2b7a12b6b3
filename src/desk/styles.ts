import { defaultChoices, piecesOf } from '../core/styles/language/define';
import { evaluateForm, formOf } from '../core/styles/language/linear-form';
import type { BoxStyle } from '../core/styles/language/types';
import { STYLES } from '../core/styles/registry';
import { type Ticks, toMm } from '../core/units';
import type { Verb } from './verb';

/** One style as the desk prints it: lengths in millimeters, a default that follows other sizes worked out from their defaults. */
function describeStyle(style: BoxStyle) {
  const defaults: Record<string, Ticks> = {};
  const mm = (text: string) => toMm(evaluateForm(formOf(text), defaults));
  const symbols = Object.entries(style.symbols).map(([symbol, { label, role, ...spec }]) => {
    defaults[symbol] = evaluateForm(formOf(spec.default), defaults);
    return { symbol, label, role, default: toMm(defaults[symbol]), min: mm(spec.min), max: mm(spec.max) };
  });
  const options = Object.entries(style.options ?? {}).map(([option, { label, choices }]) => ({
    option,
    label,
    choices: choices.map(({ id }) => id),
  }));
  return {
    id: style.id,
    name: style.name,
    symbols,
    options,
    pieces: Object.keys(piecesOf(style, defaultChoices(style))),
  };
}

export const verb: Verb = {
  usage: '',
  answers:
    'Every box style: its sizes and allowances with their limits in millimeters, its options, its pieces.',
  words: { least: 0, most: 0 },
  options: {},
  run: (_given, desk) => {
    desk.print(JSON.stringify(STYLES.map(describeStyle), null, 2));
    return [];
  },
};

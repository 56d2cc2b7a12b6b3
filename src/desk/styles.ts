import { writeStyle } from '../core/style-file/write-style';
import { defaultChoices, piecesOf } from '../core/styles/language/define';
import { evaluateForm, formOf } from '../core/styles/language/linear-form';
import type { BoxStyle } from '../core/styles/language/types';
import { STYLES, styleById } from '../core/styles/registry';
import { type Ticks, toMm } from '../core/units';
import { deliver } from './deliver';
import { suggestName } from './nearest-name';
import { refuse } from './refuse';
import type { Desk, DeskRefusal, Given, Verb } from './verb';

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

/** One style as a file, where all of it can be said as one. */
function deliverFile(id: string, given: Given, desk: Desk): readonly DeskRefusal[] {
  const ids = STYLES.map((each) => each.id);
  const style = styleById(id);
  if (!style) {
    const says = `There is no style “${id}”. ${suggestName(id, ids)}`;
    return [refuse('unknown-style', id, id, ids.join(', '), says)];
  }
  const writing = writeStyle(style);
  if (writing.ok) return deliver(writing.text, given, desk);
  const listed = writing.onlyCode.join(', ');
  const says = `${style.name} can’t be written as a file yet: no formula says its ${listed}. Choose another style, such as tray.`;
  return [refuse('style-only-code', id, listed, 'a formula for each', says)];
}

export const verb: Verb = {
  usage: '[ID [--out FILE]]',
  answers:
    'Every box style: its sizes and allowances with their limits in millimeters, its options, its pieces. With an ID, that style as a file to change and use with --style-file.',
  words: { least: 0, most: 1 },
  options: { out: 'one' },
  run: (given, desk) => {
    const [id] = given.words;
    if (id !== undefined) return deliverFile(id, given, desk);
    desk.print(JSON.stringify(STYLES.map(describeStyle), null, 2));
    return [];
  },
};

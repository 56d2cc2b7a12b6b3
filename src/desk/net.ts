import { layNet } from '../core/net/lay-net';
import { describeNet } from './describe-net';
import { suggestName } from './nearest-name';
import { BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import { refuse } from './refuse';
import type { Verb } from './verb';

/** A flat net in a file format: text or bytes. */
const FORMATS = {
  json: (net: ReturnType<typeof layNet>) => JSON.stringify(describeNet(net, []), null, 2),
};

export const verb: Verb = {
  usage: `${BOX_USAGE} [--format ${Object.keys(FORMATS).join('|')}] [--out FILE]`,
  answers: 'The flat net of a box: blank, faces, scores, slits, glue, and what the checks find.',
  words: { least: 0, most: 1 },
  options: { ...BOX_OPTIONS, format: 'one', out: 'one' },
  run: (given, desk) => {
    const asked = readBox(given, desk);
    if (!('style' in asked)) return asked;
    const formats = Object.keys(FORMATS);
    const format = given.one['format'] ?? 'json';
    if (!Object.hasOwn(FORMATS, format)) {
      const says = `There is no format “${format}”. ${suggestName(format, formats)}`;
      return [refuse('unknown-format', '--format', format, formats.join(', '), says)];
    }
    const net = layNet(asked.style, {
      sizes: asked.sizes,
      options: asked.chosen,
      caliperUm: asked.caliperUm,
    });
    const document = FORMATS[format as keyof typeof FORMATS](net);
    const out = given.one['out'];
    if (out === undefined) desk.print(document);
    else {
      const refused = desk.write(out, document);
      if (refused) return [refused];
    }
    return [];
  },
};

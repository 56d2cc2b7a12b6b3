import { checkBox } from '../core/checks';
import { layNet } from '../core/net';
import { dxfOf } from '../core/net/dxf';
import { foldTextOf } from '../core/net/fold-format';
import { svgOf } from '../core/net/svg';
import { benchFor } from './bench';
import { DOCUMENT_OPTIONS, deliver, readFormat } from './deliver';
import { describeFinding } from './describe-finding';
import { describeNet } from './describe-net';
import { BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import type { Verb } from './verb';

const FORMATS = ['json', 'fold', 'svg', 'dxf'] as const;

export const verb: Verb = {
  usage: `${BOX_USAGE} [--format ${FORMATS.join('|')}] [--out FILE]`,
  answers: 'The flat net of a box: blank, faces, scores, slits, glue, and what the checks find.',
  words: { least: 0, most: 1 },
  options: { ...BOX_OPTIONS, ...DOCUMENT_OPTIONS },
  run: (given, desk) => {
    const asked = readBox(given, desk);
    if (!('style' in asked)) return asked;
    const format = readFormat(given, FORMATS);
    if (typeof format !== 'string') return [format];
    const { style, sizes, chosen, caliperUm, tool, unit, recipe } = asked;
    const net = layNet(style, { sizes, options: chosen, caliperUm });
    const title = recipe?.name ?? style.name;
    const documents = {
      json: () => {
        const bench = benchFor(tool, unit);
        const ruler = { unit, finest: bench.finestMark };
        const findings = checkBox(style, net, bench).map((finding) => describeFinding(finding, ruler));
        return JSON.stringify({ ...describeNet(net), findings }, null, 2);
      },
      fold: () => foldTextOf(net, title),
      svg: () => svgOf(net, title),
      dxf: () => dxfOf(net),
    };
    return deliver(documents[format](), given, desk);
  },
};

import { dxfOf } from '../core/net/dxf';
import { foldTextOf } from '../core/net/fold-format';
import { svgOf } from '../core/net/svg';
import { DOCUMENT_OPTIONS, deliver, documentUsage, readFormat } from './deliver';
import { describeFinding } from './describe-finding';
import { describeNet } from './describe-net';
import { findingsOf, makeBox } from './made-box';
import { printPdf, readPaper } from './paper';
import { mapOf, templateOf } from './print-box';
import { BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import { stampOf } from './stamp';
import type { Verb } from './verb';

/** `map`: a PDF as well, the outside up, for decorating while flat. */
const FORMATS = ['json', 'fold', 'svg', 'dxf', 'pdf', 'map'] as const;

export const verb: Verb = {
  usage: `${BOX_USAGE} ${documentUsage(FORMATS)}`,
  answers: 'The flat net of a box: blank, faces, scores, slits, glue, and what the checks find.',
  words: { least: 0, most: 1 },
  options: { ...BOX_OPTIONS, ...DOCUMENT_OPTIONS },
  run: async (given, desk) => {
    const asked = readBox(given, desk);
    if (!('style' in asked)) return asked;
    const format = readFormat(given, FORMATS);
    if (typeof format !== 'string') return [format];
    const paper = readPaper(given, asked.unit);
    if (typeof paper !== 'string') return [paper];
    const box = makeBox(asked);
    const { net, name, ruler } = box;
    const documents = {
      json: () => {
        const findings = findingsOf(asked, box).map((finding) => describeFinding(finding, ruler));
        return JSON.stringify({ ...describeNet(net), findings }, null, 2);
      },
      fold: () => foldTextOf(net, name),
      svg: () => svgOf(net, name),
      dxf: () => dxfOf(net),
      pdf: () => printPdf(templateOf(box, paper, stampOf(asked.recipe, desk)), desk),
      map: () => printPdf(mapOf(box, paper, stampOf(asked.recipe, desk)), desk),
    };
    return deliver(await documents[format](), given, desk);
  },
};

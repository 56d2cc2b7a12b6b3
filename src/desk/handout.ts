import { handSecondsOfBox } from '../core/plan';
import { type HandoutInput, handoutPage, printHandout } from '../print';
import { DOCUMENT_OPTIONS, deliver, documentUsage, readFormat } from './deliver';
import { describeFinding } from './describe-finding';
import { cardsOf, findingsOf, makeBox } from './made-box';
import { printPdf, readPaper } from './paper';
import { BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import { refuse } from './refuse';
import { stampOf } from './stamp';
import type { Verb } from './verb';

const FORMATS = ['pdf', 'html'] as const;

export const verb: Verb = {
  usage: `${BOX_USAGE} ${documentUsage(FORMATS)}`,
  answers:
    'The handout of a box: how to make it, in words and pictures. A saved box brings its own tips and photos.',
  words: { least: 0, most: 1 },
  options: { ...BOX_OPTIONS, ...DOCUMENT_OPTIONS },
  run: async (given, desk) => {
    const asked = readBox(given, desk);
    if (!('style' in asked)) return asked;
    const format = readFormat(given, FORMATS);
    if (typeof format !== 'string') return [format];
    const paper = readPaper(given, asked.unit);
    if (typeof paper !== 'string') return [paper];
    const { style, caliperUm } = asked;
    const box = makeBox(asked);
    // A style without a saved box has no tips, no photos and nothing on it.
    const recipe = asked.recipe ?? { name: box.name, faceUp: 'outside', caliperUm, dressings: [] };
    const stops = findingsOf(asked, box).filter(({ severity }) => severity === 'stop');
    const [stop] = stops.map((finding) => describeFinding(finding, box.ruler));
    if (stop)
      return [
        refuse('mend-first', stop.where, recipe.name, 'a box that closes', `${stop.says} ${stop.remedy}`),
      ];
    const input: HandoutInput = {
      recipe,
      style,
      net: box.net,
      cards: cardsOf(box),
      ruler: box.ruler,
      seconds: handSecondsOfBox(box.net, box.bench),
      // The desk stands at no address that a link could lead back to.
      photos: asked.photos,
      stamp: stampOf(asked.recipe, desk),
    };
    return deliver(
      format === 'html' ? handoutPage(input) : await printPdf(printHandout({ ...input, paper }), desk),
      given,
      desk,
    );
  },
};

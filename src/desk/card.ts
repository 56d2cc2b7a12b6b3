import { DOCUMENT_OPTIONS, deliver, documentUsage, readFormat } from './deliver';
import { cardText, describeCard } from './describe-card';
import { describeFinding } from './describe-finding';
import { cardsOf, findingsOf, makeBox } from './made-box';
import { printPdf, readPaper } from './paper';
import { benchCardOf } from './print-box';
import { BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import { refuse } from './refuse';
import { stampOf } from './stamp';
import type { Verb } from './verb';

const FORMATS = ['json', 'text', 'pdf'] as const;

export const verb: Verb = {
  usage: `${BOX_USAGE} ${documentUsage(FORMATS)}`,
  answers: 'The step card of a box: every step in order, as operations and as words.',
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
    const { bench, ruler, name } = box;
    const found = findingsOf(asked, box);
    const trouble = found.find(({ code }) => code === 'own-net-no-card');
    if (trouble)
      return [
        refuse(
          trouble.code,
          trouble.where,
          asked.style.name,
          'a net that a bench can make',
          `${trouble.says} ${trouble.remedy}`,
        ),
      ];
    const findings = found.map((finding) => describeFinding(finding, ruler));
    if (format === 'json') {
      const pieces = describeCard(cardsOf(box));
      const card = { style: asked.style.id, unit: ruler.unit, tool: bench.name, pieces, findings };
      return deliver(JSON.stringify(card, null, 2), given, desk);
    }
    for (const { says, remedy } of findings) desk.tell(`${says} ${remedy}`);
    return deliver(
      format === 'text'
        ? cardText(name, cardsOf(box), ruler)
        : await printPdf(benchCardOf(box, paper, stampOf(asked.recipe, desk)), desk),
      given,
      desk,
    );
  },
};

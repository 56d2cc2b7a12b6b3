import { cardSteps, deriveProgram } from '../core/bench';
import { checkBox } from '../core/checks';
import { layNet } from '../core/net';
import { benchFor } from './bench';
import { DOCUMENT_OPTIONS, deliver, readFormat } from './deliver';
import { cardText, describeCard } from './describe-card';
import { describeFinding } from './describe-finding';
import { BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import type { Verb } from './verb';

const FORMATS = ['json', 'text'] as const;

export const verb: Verb = {
  usage: `${BOX_USAGE} [--format ${FORMATS.join('|')}] [--out FILE]`,
  answers: 'The bench card of a box: what hands do, act by act, as operations and as words.',
  words: { least: 0, most: 1 },
  options: { ...BOX_OPTIONS, ...DOCUMENT_OPTIONS },
  run: (given, desk) => {
    const asked = readBox(given, desk);
    if (!('style' in asked)) return asked;
    const format = readFormat(given, FORMATS);
    if (typeof format !== 'string') return [format];
    const { style, sizes, chosen, caliperUm, tool, unit, recipe } = asked;
    const net = layNet(style, { sizes, options: chosen, caliperUm });
    const bench = benchFor(tool, unit);
    const ruler = { unit, finest: bench.finestMark };
    const pieces = net.pieces.map((piece) => {
      const program = deriveProgram(piece, bench, { faceUp: recipe?.faceUp ?? 'inside' });
      return { piece, program, steps: cardSteps(program, piece, net, bench) };
    });
    const findings = checkBox(style, net, bench).map((finding) => describeFinding(finding, ruler));
    if (format === 'text') {
      for (const { says, remedy } of findings) desk.tell(`${says} ${remedy}`);
      return deliver(cardText(recipe?.name ?? style.name, pieces, ruler), given, desk);
    }
    const card = { style: style.id, unit, tool: bench.name, pieces: describeCard(pieces), findings };
    return deliver(JSON.stringify(card, null, 2), given, desk);
  },
};

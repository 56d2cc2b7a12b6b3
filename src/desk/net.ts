import { pieceAlone } from '../core/net';
import { dxfOf } from '../core/net/dxf';
import { foldTextOf } from '../core/net/fold-format';
import { svgOf } from '../core/net/svg';
import { DOCUMENT_OPTIONS, deliver, documentUsage, readFormat } from './deliver';
import { describeFinding } from './describe-finding';
import { describeNet } from './describe-net';
import { findingsOf, type MadeBox, makeBox } from './made-box';
import { suggestName } from './nearest-name';
import { printPdf, readPaper } from './paper';
import { mapOf, templateOf } from './print-box';
import { BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import { refuse } from './refuse';
import { stampOf } from './stamp';
import type { DeskRefusal, Verb } from './verb';

/** `map`: a PDF as well, the outside up, for decorating while flat. */
const FORMATS = ['json', 'fold', 'svg', 'dxf', 'pdf', 'map'] as const;

export const verb: Verb = {
  usage: `${BOX_USAGE} [--piece ID] ${documentUsage(FORMATS)}`,
  answers:
    'The flat net of a box, or of one of its pieces: blank, faces, scores, slits, glue, and what the checks find.',
  words: { least: 0, most: 1 },
  options: { ...BOX_OPTIONS, ...DOCUMENT_OPTIONS, piece: 'one' },
  run: async (given, desk) => {
    const asked = readBox(given, desk);
    if (!('style' in asked)) return asked;
    const format = readFormat(given, FORMATS);
    if (typeof format !== 'string') return [format];
    const paper = readPaper(given, asked.unit);
    if (typeof paper !== 'string') return [paper];
    const made = makeBox(asked);
    const chosen = choosePiece(made, given.one['piece']);
    if (!('net' in chosen)) return [chosen];
    const box = { ...made, ...chosen };
    const { net, name, ruler } = box;
    const documents = {
      json: () => {
        const findings = findingsOf(asked, made).map((finding) => describeFinding(finding, ruler));
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

/** The whole box, or one of its pieces under a name of its own. */
function choosePiece(
  { net, name }: MadeBox,
  id: string | undefined,
): Pick<MadeBox, 'net' | 'name'> | DeskRefusal {
  if (id === undefined) return { net, name };
  const ids = net.pieces.map((piece) => piece.id);
  const says = `This box has no piece “${id}”. ${suggestName(id, ids)}`;
  return pieceAlone(net, name, id) ?? refuse('no-such-piece', '--piece', id, ids.join(', '), says);
}

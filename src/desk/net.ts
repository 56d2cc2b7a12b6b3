import { pieceAlone } from '../core/net';
import { dxfOf } from '../core/net/dxf';
import { foldTextOf } from '../core/net/fold-format';
import { linesOf, type NetLine } from '../core/net/lines';
import { svgOf } from '../core/net/svg';
import type { BoxNet, PieceNet, Point } from '../core/net/types';
import { type Ticks, toMm } from '../core/units';
import { DOCUMENT_OPTIONS, deliver, documentUsage, readFormat } from './deliver';
import { describeFinding } from './describe-finding';
import { findingsOf, type MadeBox, makeBox } from './made-box';
import { suggestName } from './nearest-name';
import { printPdf, readPaper } from './paper';
import { mapOf, templateOf } from './print-box';
import { BOX_OPTIONS, BOX_USAGE, readBox } from './read-box';
import { refuse } from './refuse';
import { stampOf } from './stamp';
import type { DeskRefusal, Verb } from './verb';

const pointMm = ({ x, y }: Point) => [toMm(x), toMm(y)] as const;

const ringMm = (ring: readonly Point[]) => ring.map(pointMm);

/** Every length of a record in millimeters, under its own name. */
const allMm = (lengths: Readonly<Record<string, Ticks>>) =>
  Object.fromEntries(Object.entries(lengths).map(([name, length]) => [name, toMm(length)]));

const lineMm = ({ from, to, foldDeg, length, curve }: NetLine, piece: PieceNet) => ({
  from: pointMm(from),
  to: pointMm(to),
  lengthMm: toMm(length),
  foldDeg,
  ...(curve === null ? {} : { radiusMm: toMm(piece.curves[curve]?.radius ?? 0) }),
});

function pieceMm(piece: PieceNet) {
  const lines = linesOf(piece);
  const ofKind = (kind: NetLine['kind']) =>
    lines.filter((line) => line.kind === kind).map((line) => lineMm(line, piece));
  const faceName = (index: number) => piece.faces[index]?.name;
  return {
    id: piece.id,
    label: piece.label,
    blank: { acrossMm: toMm(piece.blank.across), upMm: toMm(piece.blank.up) },
    faces: piece.faces.map(({ name, panel, role, ring, holes }) => ({
      name,
      panel,
      role,
      ringMm: ringMm(ring),
      holesMm: holes.map(ringMm),
    })),
    scores: ofKind('score'),
    slits: ofKind('slit').map(({ foldDeg: _, ...slit }) => slit),
    cuts: ofKind('cut').map(({ foldDeg: _, ...cut }) => cut),
    wasteMm: piece.waste.map(ringMm),
    glue: piece.joints.map(({ tab, target, lap, carries }) => ({
      panel: faceName(tab),
      onto: faceName(target),
      lap,
      carries,
    })),
    roomMm3: piece.roomMm3,
  };
}

/** A net as the desk prints it: inside face up, origin at each blank's lower left, x right, y up, millimeters throughout. */
const describeNet = (net: BoxNet) => ({
  style: net.styleId,
  caliperMm: net.caliperUm / 1000,
  valuesMm: allMm(net.values),
  insideMm: allMm(net.inside),
  pieces: net.pieces.map(pieceMm),
});

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

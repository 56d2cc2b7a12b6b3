import { type PrintWay, printWayOf, printWayOn } from '../../dress';
import type { DressingPiece, Paper, Recipe } from '../../rows';
import type { EventBox } from './event-boxes';
import type { EventPart } from './types';

/** How the grain runs in a part that stands as a recipe asks. */
export const GRAIN_OF_RECIPE = { upright: 'up', around: 'across', free: 'free' } as const satisfies Record<
  Recipe['grain'],
  EventPart['grain']
>;

const GRAIN_OF_PIECE = {
  'along-width': 'across',
  'along-height': 'up',
  free: 'free',
} as const satisfies Record<DressingPiece['grain'], EventPart['grain']>;

/** A part and the paper it is to be cut from. */
export interface PartOnPaper {
  readonly part: EventPart;
  readonly paperId: string | null;
}

/** Every rectangle the boxes of an event are cut from: each piece of the style, each piece of the dressing, spares counted. */
export function partsOfBoxes(
  boxes: readonly EventBox[],
  papers: readonly Pick<Paper, 'id' | 'oneWay'>[],
): readonly PartOnPaper[] {
  const oneWay = new Set(papers.flatMap(({ id, oneWay: only }) => (only ? [id] : [])));
  const lies: Lies = (paperId, grain, print) => (paperId !== null && oneWay.has(paperId) ? print() : grain);
  return boxes.flatMap((box) => [...piecesOfStyle(box, lies), ...piecesOfDressing(box, lies)]);
}

/** How a part lies on its paper: as its grain asks, or as print that stands one way does. */
type Lies = (paperId: string | null, grain: EventPart['grain'], print: () => PrintWay) => EventPart['grain'];

const piecesOfStyle = ({ line, recipe, net, paperId, making }: EventBox, lies: Lies): PartOnPaper[] =>
  net.pieces.map((piece) => ({
    paperId,
    part: {
      id: `${line.id}.${piece.id}`,
      name: `${recipe.name}: ${piece.label}`,
      lineId: line.id,
      kind: 'box',
      across: piece.blank.across,
      up: piece.blank.up,
      perBox: 1,
      count: making,
      grain: lies(paperId, GRAIN_OF_RECIPE[recipe.grain], () => printWayOf(piece)),
    },
  }));

const piecesOfDressing = (
  { line, recipe, net, pieces, paperId, making }: EventBox,
  lies: Lies,
): PartOnPaper[] =>
  pieces.map(({ piece, size }) => ({
    paperId: piece.paperId ?? paperId,
    part: {
      id: `${line.id}.${piece.id}`,
      name: `${recipe.name}: ${piece.name}`,
      lineId: line.id,
      kind: piece.kind,
      ...size,
      perBox: piece.perBox,
      count: making * piece.perBox,
      grain: lies(piece.paperId ?? paperId, GRAIN_OF_PIECE[piece.grain], () => printWayOn(net, piece)),
    },
  }));

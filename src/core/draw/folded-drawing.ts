import {
  aroundFigures,
  type Figure,
  type PlacedFigure,
  putOnPaper,
  seeBox,
  seeBoxShut,
  seeFigure,
  showsInside,
} from '../fold/seen/figure';
import { benchView, standingView } from '../fold/seen/view';
import { seeWorn, type Wears, type Worn, type WornArea, wearersOf } from '../fold/seen/worn';
import type { BoxNet, NetEdge, PieceNet } from '../net/types';
import type { At } from '../plane';
import type { FaceUp } from './net/net-lines';
import { hatchLines } from './strokes/hatch';
import { areaMark, frameMarks, lineMark } from './strokes/marks';
import type { Drawing, Ink, Mark } from './strokes/types';

export interface PictureSpace {
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface FoldedOptions {
  /** Acts of closing that are done; all of them if left out. */
  readonly acts?: number;
  /** How much of the next act is done, 0 to 1. */
  readonly part?: number;
  /** On its bottom as a guest sees it, or on the bench as it is being made. */
  readonly from: 'standing' | 'bench';
  readonly space: PictureSpace;
  /** Panels that carry adhesive, and on which of their faces. */
  readonly glue?: readonly GlueOn[];
}

interface GlueOn {
  readonly panel: string;
  readonly face: FaceUp;
}

/** A piece at one state of closing as a line drawing: hidden lines taken out; standing, the inside of the card is hatched. */
export function drawFolded(piece: PieceNet, options: FoldedOptions): Drawing {
  const { acts = piece.closing.length, part = 0, from, space, glue = [] } = options;
  const view = from === 'bench' ? benchView() : standingView(piece);
  const figure = seeFigure(piece, acts, part, view);
  const state = acts === piece.closing.length ? 'closed' : acts === 0 && part === 0 ? 'flat' : 'being closed';
  const title = `${piece.label}, ${state}`;
  const seenFrom = from === 'bench' ? 'the maker’s side' : 'the front and above';
  return drawFigures(
    [{ figure, dx: 0, dy: 0 }],
    space,
    { shade: from === 'standing', glue },
    title,
    `${title}, drawn from ${seenFrom}.`,
  );
}

/** A whole box closed, its lid (if it has one) lifted off above it: the picture for tiles and cards. With what it wears its lid is on. */
export function drawFoldedBox(box: BoxNet, space: PictureSpace, worn: readonly Worn[] = []): Drawing {
  const placed = worn.length > 0 ? seeBoxShut(box) : seeBox(box);
  const title = `${placed.map(({ figure }) => figure.piece.label).join(' and ')}, closed`;
  return drawFigures(
    placed,
    space,
    { shade: true, glue: [] },
    title,
    `${title}, drawn from the front and above.`,
    worn,
  );
}

const MARGIN_MM = 1;

function drawFigures(
  placed: readonly PlacedFigure[],
  space: PictureSpace,
  look: Pick<FigureLook, 'shade' | 'glue'>,
  title: string,
  description: string,
  worn: readonly Worn[] = [],
): Drawing {
  const wearers = wearersOf(placed);
  const all = aroundFigures(placed);
  const scale = Math.min(
    (space.widthMm - 2 * MARGIN_MM) / (all.right - all.left || 1),
    (space.heightMm - 2 * MARGIN_MM) / (all.top - all.bottom || 1),
  );
  const marks = placed.flatMap(({ figure, dx, dy }, at) =>
    drawFigure(figure, ([x, y]) => [(x + dx) * scale, (y + dy) * scale], {
      ...look,
      worn,
      wears: wearers[at]!,
    }),
  );
  return frameMarks(marks, title, description, MARGIN_MM);
}

interface FigureLook {
  readonly shade: boolean;
  readonly glue: readonly GlueOn[];
  readonly worn: readonly Worn[];
  readonly wears: Wears;
}

/** Card first, from the back to the front, then every line that is not behind a nearer face. */
function drawFigure(
  figure: Figure,
  onPaper: (point: At) => At,
  { shade, glue, worn, wears }: FigureLook,
): Mark[] {
  const { covers, showing, lines } = putOnPaper(figure, onPaper);
  const key = (face: number) => `panel ${figure.piece.faces[face]!.panel}`;
  const areas = worn.length > 0 ? seeWorn(figure, worn, onPaper, covers, wears) : [];
  const glueAt = (face: number): Mark[] =>
    glue
      .filter(({ panel }) => panel === figure.piece.faces[face]!.panel)
      .map((on) => {
        const isSeen = (on.face === 'inside') === showsInside(figure, face);
        return areaMark(isSeen ? 'glue' : 'glue-below', covers[face]!.ring, key(face));
      });
  const shaded = figure.order.filter((face) => shade && showsInside(figure, face));
  return [
    ...figure.order.flatMap((face) => [
      areaMark('paper', covers[face]!.ring, key(face), covers[face]!.holes),
      ...glueAt(face),
      ...areas.filter((area) => area.face === face).map(fillWorn),
    ]),
    ...shaded.flatMap((face) =>
      hatchLines(covers[face]!.ring, covers[face]!.holes, SHADE).flatMap(([from, to]) =>
        showing(from, to, [face]).map((ends) => lineMark('shade', ends, key(face))),
      ),
    ),
    ...lines().map(({ edge, on, ends }) => lineMark(inkOfFolded(edge, figure.angles), ends, key(on[0]!))),
    ...areas.flatMap((area) => [
      ...(area.face === null ? [fillWorn(area)] : []),
      ...area.edges.map((ends) => lineMark('edge', ends)),
    ]),
  ];
}

const fillWorn = ({ ring }: WornArea): Mark => areaMark('paper', ring);

const SHADE = { anglesDeg: [135], gapMm: 1.3 } as const;

const FLAT_DEG = 1; // a score turned less than this still lies flat

const inkOfFolded = ({ kind, hinge }: NetEdge, angles: readonly number[]): Ink =>
  kind === 'score' && hinge !== null && Math.abs(angles[hinge] ?? 0) < FLAT_DEG ? 'score-flat' : 'edge';

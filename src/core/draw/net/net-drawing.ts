import { drawnLie } from '../../bench';
import { paringsOf } from '../../net/parings';
import type { PieceNet, Point } from '../../net/types';
import type { At } from '../../plane';
import type { Ruler } from '../../units';
import { toMm } from '../../units/ticks';
import { drawGrain, type GrainWay } from '../strokes/grain-arrow';
import { sizeWords } from '../strokes/length-text';
import { drawLine } from '../strokes/line-marks';
import { areaMark, frameMarks, lineMark } from '../strokes/marks';
import { marksAbove, marksBeside, type RunningMark } from '../strokes/running-marks';
import { patchBehind } from '../strokes/text-stack';
import type { Drawing, Mark } from '../strokes/types';
import { drawGlue, GLUE_LETTER, glueInk } from './glue-areas';
import { layPiece, UPRIGHT } from './lying-piece';
import { type FaceUp, linesOfNet, type NetLine } from './net-lines';
import { drawGuides, numbersFromLeft, numbersFromTop } from './net-numbers';
import { labelPanel, letterPanels } from './panel-labels';

export interface NetDrawingOptions {
  readonly ruler: Ruler;
  /** Paper millimeters for one millimeter of card; 1 is true size. */
  readonly scale: number;
  /** Type size of the biggest numbers, mm on paper. */
  readonly textMm: number;
  readonly faceUp?: FaceUp;
  /** As its style declares it, with no half turn for the bench. */
  readonly upright?: true;
  /** Which way the grain runs in the card as it lies; null draws no arrow. */
  readonly grain?: GrainWay | null;
  /** Left out, everything is shown. `ends`: the numbers that no upright or level line, nor the card's edge, stands on. */
  readonly show?: Partial<
    Readonly<Record<'numbers' | 'ends' | 'otherUnit' | 'letters' | 'names' | 'areas', boolean>>
  >;
}

export interface NetDrawing extends Drawing {
  /** Where the card's lower left corner stands in the drawing, mm. */
  readonly origin: At;
  readonly scale: number;
}

/** A net at true proportions: lines by ink, lettered panels, glue, waste, and running numbers from the left and the top edge. */
export function drawNet(piece: PieceNet, options: NetDrawingOptions): NetDrawing {
  const { scale, textMm, ruler, grain = null, faceUp = 'inside' } = options;
  const show = {
    numbers: true,
    ends: true,
    otherUnit: true,
    letters: true,
    names: true,
    areas: true,
    ...options.show,
  };
  const place = ({ x, y }: Point): At => [toMm(x) * scale, toMm(y) * scale];
  const lie = options.upright ? UPRIGHT : drawnLie(piece, faceUp);
  const lines = linesOfNet(piece, lie);
  const lying = layPiece(piece, lie);
  const { blank } = piece;
  const [across, up] = place({ x: blank.across, y: blank.up });
  const style = { ruler, textMm, otherUnit: show.otherUnit };
  const numbered = show.ends ? lines : lines.filter(({ way }) => way === 'upright' || way === 'level');
  const shown = ({ leading }: RunningMark) => show.ends || leading;
  const marks: Mark[] = [
    ...lying.faces.map(({ ring, holes }) =>
      areaMark(
        'paper',
        ring.map(place),
        undefined,
        holes.map((hole) => hole.map(place)),
      ),
    ),
    ...(show.areas ? lying.waste.map((ring) => areaMark('waste', ring.map(place))) : []),
    ...(show.areas ? drawGlue(lying, faceUp, place) : []),
    ...(show.numbers ? drawGuides(numbered, blank, scale) : []),
    ...(show.letters ? wordsOnPanels(lying, faceUp, place, textMm, show.names, show.areas) : []),
    ...lines.flatMap((line) => drawLine(line, scale)),
    ...paringsOf(lying).map(({ a, b }) => lineMark('cut', [place(a), place(b)])),
    ...(show.numbers
      ? marksAbove(numbersFromLeft(blank, numbered).filter(shown), [0, up], across, scale, style)
      : []),
    ...(show.numbers
      ? marksBeside(numbersFromTop(blank, numbered).filter(shown), [0, up], up, scale, style)
      : []),
    ...(grain ? drawGrain(grain, [across, up], textMm) : []),
  ];
  return { ...frameMarks(marks, `Net of ${piece.label}`, netInWords(piece, lines, faceUp, ruler)), scale };
}

/** What a crowded net gives up, one after the other: the numbers of line ends; the size of the others; all of them. */
const SPARING: readonly { readonly show?: NetDrawingOptions['show']; readonly text?: number }[] = [
  {},
  { show: { ends: false } },
  { show: { ends: false }, text: 0.75 },
  { show: { numbers: false } },
];

/**
 * The same at the largest scale that fits a space on paper, numbers and all. Where they would leave the net a smaller share of the size it
 * could have than `least`, it gives up some of them, or all.
 */
export function drawNetToFit(
  piece: PieceNet,
  space: { readonly widthMm: number; readonly heightMm: number },
  { least = 0, ...options }: Omit<NetDrawingOptions, 'scale'> & { readonly least?: number },
): NetDrawing {
  const alone = Math.min(space.widthMm / toMm(piece.blank.across), space.heightMm / toMm(piece.blank.up));
  let drawn = { ...options, scale: 0 };
  for (const { show, text = 1 } of SPARING) {
    const sparing = { ...options, show: { ...options.show, ...show }, textMm: text * options.textMm };
    drawn = { ...sparing, scale: scaleToFit(piece, space, sparing) };
    if (drawn.scale >= least * alone) break;
  }
  return drawNet(piece, drawn);
}

function scaleToFit(
  piece: PieceNet,
  space: { readonly widthMm: number; readonly heightMm: number },
  options: Omit<NetDrawingOptions, 'scale'>,
): number {
  const [across, up] = [toMm(piece.blank.across), toMm(piece.blank.up)];
  // Words and hatches stay inside the card, so the room taken is that of lines and numbers alone.
  const bare = { ...options, show: { ...options.show, letters: false, areas: false } };
  let scale = Math.min(space.widthMm / across, space.heightMm / up);
  // The room that numbers take hardly changes with the scale, so a few rounds of taking it off settle it.
  for (let round = 0; round < 40; round++) {
    const { widthMm, heightMm } = drawNet(piece, { ...bare, scale });
    const wanted = Math.min(
      (space.widthMm - (widthMm - across * scale)) / across,
      (space.heightMm - (heightMm - up * scale)) / up,
    );
    const fits = widthMm <= space.widthMm && heightMm <= space.heightMm;
    if (fits && (wanted < scale * 1.005 || round >= 4)) break;
    // After four rounds the numbers are flipping between two layouts: creep down to the first scale that fits.
    scale = round < 4 ? Math.max(0.999 * wanted, scale / 4) : 0.97 * scale;
  }
  return scale;
}

function wordsOnPanels(
  piece: PieceNet,
  faceUp: FaceUp,
  place: (point: Point) => At,
  textMm: number,
  names: boolean,
  areas: boolean,
): Mark[] {
  const glued = new Map(piece.joints.map(({ tab, lap }) => [piece.faces[tab], glueInk(lap, faceUp)]));
  return letterPanels(piece).flatMap((panel) => {
    const rings = panel.faces.map((face) => face.ring.map(place));
    const ink = areas
      ? panel.faces.map((face) => glued.get(face)).find((found) => found !== undefined)
      : undefined;
    const labels = labelPanel(panel, rings, 1.1 * textMm, names, ink ? GLUE_LETTER[ink] : null);
    const patches = ink ? labels.map((label) => areaMark('paper', patchBehind(label))) : [];
    return [...patches, ...labels];
  });
}

function netInWords(
  { label, blank }: PieceNet,
  lines: readonly NetLine[],
  faceUp: FaceUp,
  ruler: Ruler,
): string {
  const count = (ink: string, one: string) => {
    const found = lines.filter((line) => line.ink.startsWith(ink)).length;
    return found === 0 ? [] : [`${found} ${one}${found === 1 ? '' : 's'}`];
  };
  const parts = [...count('score', 'score'), ...count('slit', 'slit'), ...count('cut', 'cut')];
  return (
    `${label}: a piece ${sizeWords(blank.across, blank.up, ruler)}, ${faceUp} face up, with ${parts.join(', ') || 'no lines'}. ` +
    'Numbers run from the left and from the top edge.'
  );
}

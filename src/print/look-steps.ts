import { drawFoldedBox } from '../core/draw/folded-drawing';
import { drawInsidePiece } from '../core/draw/net/inside-drawing';
import { lengthWords } from '../core/draw/strokes/length-text';
import { setFractions } from '../core/draw/strokes/set-fractions';
import type { Drawing } from '../core/draw/strokes/types';
import { dressSteps, wornOf } from '../core/dress';
import type { Dressing } from '../core/rows';
import { sayReason } from '../core/units/reason';
import {
  type Block,
  besideBlocks,
  drawingBlock,
  keepNext,
  ruleBlock,
  space,
  stackBlocks,
  textBlock,
} from './block';
import type { DressingsOfBox } from './dressing-block';
import type { HandoutInput } from './handout-content';
import { TYPE_MM } from './print-document';
import { BETWEEN_MM } from './step-rows';

/** One thing put on the box: what to do, and the closed box after it, or the flat piece for what lies inside. */
interface LookStep {
  readonly says: string;
  readonly picture: Drawing | null;
}

/** A look with its steps. */
interface PrintedLook {
  readonly head: string;
  readonly steps: readonly LookStep[];
}

type LookInput = Pick<HandoutInput, 'recipe' | 'net' | 'ruler' | 'say'>;

const NARROW_MM = { widthMm: 27, heightMm: 16 };
const PICTURE_MM = { widthMm: 46, heightMm: 40 };

/** The finished box in its first look. */
export const drawFinished = (
  { recipe: { dressings }, net, ruler }: LookInput,
  space: Parameters<typeof drawFoldedBox>[1],
): Drawing => drawFoldedBox(net, space, dressings[0] ? wornOf(net, dressings[0], ruler.finest) : []);

/** Every look that puts something on the box, step by step. */
export const looksOf = (input: LookInput): readonly PrintedLook[] =>
  input.recipe.dressings
    .map((dressing) => ({ head: `Decorate: ${dressing.name}`, steps: lookSteps(input, dressing) }))
    .filter(({ steps }) => steps.length > 0);

function lookSteps(
  { net, ruler, say = String }: Omit<LookInput, 'recipe'>,
  dressing: Dressing,
  pictureMm: typeof PICTURE_MM = PICTURE_MM,
): readonly LookStep[] {
  const steps = dressSteps(net, dressing, ruler.finest);
  return steps.map((step, at) => ({
    says: sayReason(step, { say, length: (length) => lengthWords(length, ruler), money: String }),
    picture: step.inside
      ? drawInsidePiece(
          net,
          step.inside,
          dressing.pieces.find(({ id }) => id === step.id)?.name ?? '',
          pictureMm,
        )
      : step.worn.length > (steps[at - 1]?.worn.length ?? 0)
        ? drawFoldedBox(net, pictureMm, step.worn)
        : null,
  }));
}

/** What goes inside a box, for its card: the steps that have their place on a panel, two beside each other. */
export const insideBlocks = (
  { net, dressings, mark }: DressingsOfBox,
  ruler: HandoutInput['ruler'],
  widthMm: number,
): Block[] =>
  dressings.flatMap((dressing) => {
    const inside = dressSteps(net, dressing, mark).map((step) => step.inside !== undefined);
    return lookBlocks(
      lookSteps({ net, ruler }, dressing).filter((_, at) => inside[at]),
      widthMm,
    );
  });

/** The steps of a look in a narrow column, each picture on the right. */
export const narrowSteps = (
  { net }: Pick<DressingsOfBox, 'net'>,
  dressing: Dressing,
  ruler: HandoutInput['ruler'],
  columnMm: number,
  sizeMm: number,
): Block[] =>
  lookSteps({ net, ruler }, dressing, NARROW_MM).map(({ says, picture }, at) =>
    stackBlocks([
      besideBlocks(
        [
          0,
          textBlock(setFractions(`${at + 1}. ${says}`), {
            widthMm: columnMm - (picture ? NARROW_MM.widthMm + 3 : 0),
            sizeMm,
          }),
        ],
        ...(picture
          ? [[columnMm - NARROW_MM.widthMm, drawingBlock(picture, NARROW_MM.widthMm)] as const]
          : []),
      ),
      space(1),
    ]),
  );

/** The steps of a look on paper, two beside each other. */
export function lookBlocks(steps: readonly LookStep[], widthMm: number): Block[] {
  const halfMm = (widthMm - BETWEEN_MM) / 2;
  const blocks = steps.map(({ says, picture }, at) =>
    stackBlocks([
      textBlock(setFractions(`${at + 1}. ${says}`), { widthMm: halfMm, sizeMm: TYPE_MM.body }),
      space(2),
      picture ? drawingBlock(picture, PICTURE_MM.widthMm) : space(0),
    ]),
  );
  return blocks.flatMap((block, at) => {
    if (at % 2 === 1) return [];
    const next = blocks[at + 1];
    const row = next ? besideBlocks([0, block], [halfMm + BETWEEN_MM, next]) : block;
    return [keepNext(ruleBlock(widthMm)), space(3), row, space(4)];
  });
}

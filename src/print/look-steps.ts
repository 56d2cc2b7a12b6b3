import { drawFoldedBox } from '../core/draw/folded-drawing';
import { setFractions } from '../core/draw/strokes/set-fractions';
import type { Drawing } from '../core/draw/strokes/types';
import { dressSteps } from '../core/dress';
import type { BoxNet } from '../core/net/types';
import type { Dressing } from '../core/rows';
import type { Ticks } from '../core/units';
import { sayReason, type Wording } from '../core/units/reason';
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
import { TYPE_MM } from './print-document';

/** One thing put on the box: what to do, and the closed box after it; no picture where nothing of it shows. */
interface LookStep {
  readonly says: string;
  readonly picture: Drawing | null;
}

const PICTURE_MM = { widthMm: 46, heightMm: 40 };
const BETWEEN_MM = 8;

/** A look step by step, in words and pictures. */
export function lookSteps(
  net: BoxNet,
  dressing: Dressing,
  mark: Ticks,
  wording: Wording,
): readonly LookStep[] {
  const steps = dressSteps(net, dressing, mark);
  return steps.map((step, at) => ({
    says: sayReason(step, wording),
    picture:
      step.worn.length > (steps[at - 1]?.worn.length ?? 0) ? drawFoldedBox(net, PICTURE_MM, step.worn) : null,
  }));
}

/** The same on paper, two beside each other. */
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

import type { BoxCard, CardStep, CautionCode } from '../core/bench';
import type { Ruler } from '../core/units';
import { type Block, besideBlocks, keepNext, ruleBlock, space } from './block';
import { columnOf } from './page-flow';
import type { PaperName } from './print-document';
import { cautionWords, isNarrow, narrowStep, type StepStyle, stepBlocks } from './step-block';
import { stepPicture } from './step-picture';

export interface StepRowsStyle {
  readonly ruler: Ruler;
  readonly paper: PaperName;
  /** What the maker adds to a step in their own words. */
  readonly tipsOf?: (step: CardStep) => readonly string[];
}

const noTips = (): readonly string[] => [];

/** Between two steps that stand beside each other. */
export const BETWEEN_MM = 8;

/** Steps between rules; closing steps two beside each other. */
export function rowsOfSteps(card: BoxCard, { ruler, paper, tipsOf = noTips }: StepRowsStyle): Block[] {
  const { widthMm } = columnOf(paper);
  const halfMm = (widthMm - BETWEEN_MM) / 2;
  const cautions = cautionWords(card.steps);
  const style = (step: CardStep, number: number, columnMm: number): StepStyle => ({
    widthMm: columnMm,
    ruler,
    sayCaution: (code: CautionCode) => cautions(code, number),
    picture: stepPicture(card, step),
  });
  const own = (step: CardStep): CardStep => ({ ...step, tips: [...step.tips, ...tipsOf(step)] });
  const row = (blocks: readonly Block[]): Block[] => [
    keepNext(ruleBlock(widthMm)),
    space(4),
    ...blocks,
    space(4.5),
  ];
  const rows: Block[] = [];
  for (let i = 0; i < card.steps.length; i++) {
    const step = own(card.steps[i]!);
    const after = card.steps[i + 1];
    const next = after && own(after);
    if (!isNarrow(step) || !next || !isNarrow(next)) {
      rows.push(...row(stepBlocks(step, i + 1, style(step, i + 1, widthMm))));
      continue;
    }
    const left = narrowStep(step, i + 1, style(step, i + 1, halfMm));
    const right = narrowStep(next, i + 2, style(next, i + 2, halfMm));
    rows.push(...row([besideBlocks([0, left], [halfMm + BETWEEN_MM, right])]));
    i++;
  }
  return rows;
}

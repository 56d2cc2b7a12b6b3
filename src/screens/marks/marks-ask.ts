import { useMemo } from 'react';
import { sheetById } from '../../../shared/catalogue';
import type { Recipe, Tool } from '../../../shared/workbook';
import { markToolOf } from '../../core/answers';
import { cuttingToolOf, sheetAsSold, sheetOfPaper } from '../../core/plan/buying/stock-rows';
import { ticksOfMm } from '../../core/rows/lengths';
import { type BoxStyle, defaultChoices } from '../../core/styles';
import { type LengthUnit, type Ruler, type Ticks, ticks } from '../../core/units';
import type { SheetPaper } from '../../core/yield';
import type { MarksAsk } from '../../state/results/fit-result';
import { type StylesAtHand, useStylesAtHand } from '../../state/results/styles-at-hand';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { useRuler } from '../../ui/fields/measure';

export interface NamedSheet {
  readonly id: string;
  readonly name: string;
  readonly paper: SheetPaper;
}

/** Sheets that are not on the shelf but sold in any shop, in the order of the catalogue. */
const COMMON: Readonly<Record<LengthUnit, readonly string[]>> = {
  in: ['letter', 'square-12', 'press-12x18', 'tabloid'],
  mm: ['a4', 'a3', 'square-12'],
};

function commonSheet(id: string): NamedSheet[] {
  const sheet = sheetById(id);
  return sheet ? [{ id, name: sheet.name, paper: sheetAsSold(sheet) }] : [];
}

/** Every sheet the search may cut from: the papers on the shelf first, the recipe's own foremost. */
export function useSheets({ paperId }: Recipe): readonly NamedSheet[] {
  const papers = useWorkbook((state) => state.rows.papers);
  const { unit } = useRuler();
  return useMemo(() => {
    const own = ownOf(papers, paperId).map((paper) => ({
      id: paper.id,
      name: paper.name,
      paper: sheetOfPaper(paper),
    }));
    const first = own.filter(({ id }) => id === paperId);
    return [...first, ...COMMON[unit].flatMap(commonSheet), ...own.filter(({ id }) => id !== paperId)];
  }, [papers, paperId, unit]);
}

interface Asked {
  readonly recipe: Recipe;
  readonly style: BoxStyle;
  readonly need: readonly [Ticks, Ticks, Ticks] | null;
  readonly slack: Ticks;
  readonly sheet: NamedSheet | undefined;
  readonly sheets: readonly NamedSheet[];
  /** Every other style as well. */
  readonly compare: boolean;
  readonly values: Readonly<Record<string, Ticks>>;
}

/** The question for the search, the same object as long as it asks the same; null while something is missing. */
export function useMarksAsk(asked: Asked): MarksAsk | null {
  const ruler = useRuler();
  const tool = useToolInHand();
  const atHand = useStylesAtHand();
  const { need, sheet } = asked;
  const text =
    need === null || sheet === undefined
      ? null
      : JSON.stringify(askOf({ ...asked, need, sheet }, tool, ruler, atHand));
  return useMemo(() => (text === null ? null : (JSON.parse(text) as MarksAsk)), [text]);
}

type Complete = Asked & { readonly need: NonNullable<Asked['need']>; readonly sheet: NamedSheet };

function askOf(
  { recipe, style, ...asked }: Complete,
  tool: Tool | undefined,
  ruler: Ruler,
  { styles, texts }: StylesAtHand,
): MarksAsk {
  const { need, slack, sheet, sheets, compare, values } = asked;
  const held: Record<string, Ticks> = {};
  const heldOptions: Record<string, string> = {};
  const chosen = { ...defaultChoices(style), ...recipe.options };
  for (const name of recipe.held ?? []) {
    const value = values[name];
    const choice = chosen[name];
    if (Object.hasOwn(style.symbols, name) && value !== undefined) held[name] = value;
    else if (choice !== undefined) heldOptions[name] = choice;
  }
  const others = compare ? styles.filter(({ id }) => id !== style.id).map(({ id }) => id) : [];
  const own = recipe.ownStyle === undefined ? [] : [recipe.ownStyle];
  const ownStyles = compare ? texts : own;
  return {
    ...markToolOf(tool, ruler),
    styleIds: [style.id, ...others],
    ...(ownStyles.length === 0 ? {} : { ownStyles }),
    caliperUm: recipe.caliperUm,
    need,
    slack,
    held,
    heldOptions,
    paper: sheet.paper,
    tool: cuttingToolOf(tool),
    otherPapers: sheets.filter(({ id }) => id !== sheet.id).map(({ paper }) => paper),
  };
}

/** Usual slack: half an inch, twelve millimeters. source: our own choice */
export const USUAL_SLACK: Readonly<Record<LengthUnit, Ticks>> = { in: ticks(4064), mm: ticksOfMm(12) };

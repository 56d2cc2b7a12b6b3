import { useMemo } from 'react';
import type { Recipe } from '../../../shared/workbook';
import type { FamilyMember } from '../../core/fit';
import { GRAIN_OF_RECIPE } from '../../core/plan';
import type { CuttingTool } from '../../core/yield';
import { useSheetCut } from '../../state/results/sheet-counts';
import { SheetView } from '../../ui/drawing/sheet-view';
import { classNames } from '../../ui/frame/class-names';
import { usePageWords } from '../../ui/words';
import type { NamedSheet } from './marks-ask';

interface FamilySheetsProps {
  readonly recipe: Recipe;
  readonly found: readonly FamilyMember[];
  /** Of each member, in the order of `found`. */
  readonly names: readonly string[];
  readonly sheet: NamedSheet;
  readonly cutting: CuttingTool;
}

/** One of each member cut together: how many sheets, and the first of them drawn. */
export function FamilySheets({ recipe, found, names, sheet, cutting }: FamilySheetsProps) {
  const words = usePageWords().marks;
  const parts = useMemo(
    () =>
      found.flatMap(({ row }, place) =>
        (row?.blanks ?? []).map(({ piece, across, up }) => ({
          id: `${place} ${piece}`,
          across,
          up,
          count: 1,
          grain: GRAIN_OF_RECIPE[recipe.grain],
        })),
      ),
    [found, recipe.grain],
  );
  const { plan, stale } = useSheetCut({ parts, paper: sheet.paper, tool: cutting });
  if (parts.length === 0 || plan === null) return null;
  const named = parts.map(({ id }, place) => ({
    id,
    mark: String.fromCharCode(65 + place),
    name: names[Number(id.split(' ')[0])] ?? recipe.name,
  }));
  return (
    <section
      className={classNames('family-sheets', stale && 'is-stale')}
      aria-label={words.oneOfEach}
      aria-busy={stale}
    >
      <p>
        <strong>{words.oneOfEachFrom(plan.sheets, sheet.name)}</strong>{' '}
        {named.map(({ mark, name }) => `${mark}: ${name}`).join('; ')}.
      </p>
      <div className="family-layouts">
        {plan.layouts.map((layout) => (
          <SheetView
            key={layout.parts.map(({ part }) => part).join(' ')}
            layout={layout}
            paper={sheet.paper}
            parts={named}
          />
        ))}
      </div>
    </section>
  );
}

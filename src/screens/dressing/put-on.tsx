import { Plus } from 'lucide-react';
import type { Dressing, Recipe } from '../../../shared/workbook';
import { arrangeContents, cellsOf } from '../../core/fit';
import type { BoxNet } from '../../core/net';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { useRuler } from '../../ui/fields/measure';
import { usePageWords } from '../../ui/words';
import type { NewDressing } from '../../ui/words/english/dressing';
import type { DressingEdits } from './dressing-edits';
import { putOn } from './new-dressing';

const NEWS: readonly NewDressing[] = [
  'liner',
  'layer',
  'band',
  'tag',
  'window',
  'dividers',
  'raised-floor',
  'cushion',
  'cross',
  'ring',
  'seal',
  'clip',
  'mount',
  'gift',
];

/** Cells where what goes inside does not stand in a grid. */
const TWO_BY_TWO = { columns: 2, rows: 2 };

interface PutOnProps {
  readonly recipe: Recipe;
  readonly net: BoxNet;
  readonly dressing: Dressing;
  readonly edits: DressingEdits;
}

/** Everything that may go on, one press each, at its usual size. */
export function PutOn({ recipe, net, dressing, edits }: PutOnProps) {
  const words = usePageWords().dressing;
  const { unit } = useRuler();
  const supplies = useWorkbook((state) => state.rows.supplies);
  const isFull = dressing.pieces.length >= 50 || (dressing.counted ?? []).length >= 50;
  // asked only when dividers are put in: it takes a moment
  const cells = () => {
    const [way] = recipe.contents ? arrangeContents(recipe.contents) : [];
    return (way && cellsOf(way)) ?? TWO_BY_TWO;
  };
  const isTied = (dressing.ties ?? []).length >= 10;
  return (
    <section aria-labelledby="put-on-head">
      <h3 id="put-on-head">{words.put}</h3>
      <div className="put-on">
        {NEWS.map((what) => (
          <Button
            key={what}
            icon={<Plus aria-hidden="true" />}
            disabled={what === 'cross' || what === 'ring' ? isTied : isFull}
            onClick={() =>
              edits.dressing(words.news[what], (old) =>
                putOn(old, what, {
                  net,
                  unit,
                  name: words.news[what],
                  supplies: ownOf(supplies),
                  dividers: { names: words.dividerNames, ...(what === 'dividers' ? cells() : TWO_BY_TWO) },
                }),
              )
            }
          >
            {words.news[what]}
          </Button>
        ))}
      </div>
    </section>
  );
}

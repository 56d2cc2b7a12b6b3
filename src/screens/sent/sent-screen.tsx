import { useEffect, useMemo, useState } from 'react';
import { useLocation, useNavigate } from 'react-router';
import { readLink } from '../../../shared/share-link';
import { bringStyles } from '../../state/own-styles';
import { useStyleWhileSeen } from '../../state/results/styles-at-hand';
import { useWorkbook } from '../../state/use-workbook';
import { RecipePicture } from '../../ui/folded/recipe-picture';
import { pageAddress, SHELF } from '../../ui/frame/addresses';
import { ImportLook } from '../../ui/frame/import-look';
import { useWords } from '../../ui/words';
import './sent.css';

/** Somebody sent a recipe in a link: looked at first, kept only when the maker says so. */
export function SentScreen() {
  const words = useWords().shelf;
  const { pathname } = useLocation();
  const navigate = useNavigate();
  const planImport = useWorkbook((state) => state.planImport);
  const importPlanned = useWorkbook((state) => state.importPlanned);
  const reading = useMemo(() => readLink(pathname.slice(1)), [pathname]);
  const plan = useMemo(() => (reading.ok ? planImport(reading.file) : null), [reading, planImport]);
  const recipe = reading.ok ? reading.file.recipes[0] : undefined;
  // A style of its own is drawn once it is known.
  const [drawn, setDrawn] = useState(0);
  useStyleWhileSeen(recipe?.ownStyle);
  useEffect(() => {
    if (recipe)
      bringStyles([recipe]).then(
        (any) => any && setDrawn((times) => times + 1),
        () => undefined,
      );
  }, [recipe]);
  const take = () => {
    if (!plan) return;
    importPlanned(plan, words.takeIn);
    const row = plan.rows.find(({ table }) => table === 'recipes')?.row;
    void navigate(row ? pageAddress({ kind: 'recipe', id: row.id }, 'box') : SHELF);
  };
  return (
    <main id="page" className="page page-sheet sent" tabIndex={-1}>
      <h1>{recipe ? words.sent(recipe.name) : words.sentBroken}</h1>
      {recipe && (
        <>
          <div className="sent-picture">
            <RecipePicture key={drawn} recipe={recipe} />
          </div>
          <p>{words.sentWhy}</p>
        </>
      )}
      <ImportLook
        looked={reading.ok && plan ? plan : { refusals: reading.ok ? [] : reading.refusals }}
        onTake={take}
        onLeave={() => void navigate(SHELF)}
      />
    </main>
  );
}

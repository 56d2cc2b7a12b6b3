import { useMemo, useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { codeOf } from '../../print';
import { linkOfRecipe } from '../../state/intents/recipe-link';
import { useWorkbook } from '../../state/use-workbook';
import { LinkToCopy } from '../../ui/fields/link-to-copy';
import { usePageWords } from '../../ui/words';

/** The recipe as a link and as a code for a camera. */
export function SharePanel({ recipe }: { recipe: Recipe }) {
  const words = usePageWords().handout;
  const rows = useWorkbook((state) => state.rows);
  const [notes, setNotes] = useState(false);
  const [prices, setPrices] = useState(false);
  const link = useMemo(
    () => linkOfRecipe(rows, recipe.id, { notes, prices }),
    [rows, recipe.id, notes, prices],
  );
  if (!link) return null;
  const ticks = (
    <div className="handout-ticks">
      <label>
        <input type="checkbox" checked={notes} onChange={() => setNotes(!notes)} /> {words.sendNotes}
      </label>
      <label>
        <input type="checkbox" checked={prices} onChange={() => setPrices(!prices)} /> {words.sendPrices}
      </label>
    </div>
  );
  if (!link.ok)
    return (
      <>
        <h3>{words.share}</h3>
        {ticks}
        <p>{words.tooLong(link.letters)}</p>
      </>
    );
  const address = `${location.href.replace(/#.*$/, '')}#${link.fragment}`;
  return (
    <>
      <h3>{words.share}</h3>
      <p className="soft">{words.shareWhy}</p>
      {ticks}
      <LinkToCopy label={words.share} address={address} code={codeOf(address)} words={words} />
    </>
  );
}

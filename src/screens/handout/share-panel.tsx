import { Link2 } from 'lucide-react';
import { useMemo, useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { codeOf } from '../../print';
import { linkOfRecipe } from '../../state/intents/recipe-link';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
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
  const [said, setSaid] = useState('');
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
  const copy = () =>
    navigator.clipboard.writeText(address).then(
      () => setSaid(words.copied),
      () => setSaid(words.notCopied),
    );
  const code = codeOf(address);
  return (
    <>
      <h3>{words.share}</h3>
      <p className="soft">{words.shareWhy}</p>
      {ticks}
      <input
        className="handout-link"
        readOnly
        value={address}
        aria-label={words.share}
        onFocus={(event) => event.target.select()}
      />
      <div>
        <Button icon={<Link2 aria-hidden="true" />} onClick={() => void copy()}>
          {words.copy}
        </Button>
        <p role="status">{said}</p>
      </div>
      {code && (
        <svg
          className="handout-code"
          viewBox={`0 0 ${code.size} ${code.size}`}
          role="img"
          aria-label={words.code}
        >
          <path d={code.path} />
        </svg>
      )}
    </>
  );
}

import { nameOfRaw, textOfAside } from '../../state/keeping/as-it-is';
import type { EarlierState } from '../../state/keeping/earlier-states';
import type { Keeping } from '../../state/keeping/keeping';
import { Button } from '../../ui/fields/button';
import { RecipePicture } from '../../ui/folded/recipe-picture';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { saveText } from './save-text';

interface EarlierLookProps {
  readonly state: EarlierState;
  readonly keeping: Keeping;
  readonly onSaid: (words: string) => void;
}

/** One earlier state: when, what it looked like, where it differs from today; and the way back. */
export function EarlierLook({ state, keeping, onSaid }: EarlierLookProps) {
  const words = useKeepingWords();
  const { snapshot, row, differs } = state;
  const when = words.when(snapshot.takenAt, keeping.now());
  const id = snapshot.of.slice(snapshot.table.length + 1);
  const name = words.besideName(nameOfRaw(snapshot.row, id), words.day(snapshot.takenAt));
  const bring = () => {
    if (keeping.bringBeside(snapshot, name.slice(0, 200)).length === 0) onSaid(words.broughtBack(name));
  };
  const keepFile = () =>
    saveText(name, textOfAside([{ table: snapshot.table, id, raw: snapshot.row, refusals: [] }]));
  return (
    <li>
      {row && snapshot.table === 'recipes' && 'styleId' in row && (
        <span className="keeping-picture">
          <RecipePicture recipe={row} />
        </span>
      )}
      {row && 'jpeg' in row && (
        <img className="keeping-picture" src={`data:image/jpeg;base64,${row.jpeg}`} alt={row.name} />
      )}
      <div className="keeping-row-face">
        <strong>{row?.name ?? nameOfRaw(snapshot.row, id)}</strong>
        <p>
          {when}
          {snapshot.before === 'upgrade' && <>, {words.beforeUpgrade}</>}
        </p>
        <p className="soft">
          {row === null
            ? words.unreadable
            : differs !== null && (differs.length === 0 ? words.likeNow : words.differsIn(differs))}
        </p>
      </div>
      <div className="keeping-acts">
        {row ? (
          <Button onClick={bring}>
            {words.bringBeside}
            <span className="said-only">, {name}</span>
          </Button>
        ) : (
          <Button onClick={keepFile}>
            {words.saveAsIs}
            <span className="said-only">, {name}</span>
          </Button>
        )}
      </div>
    </li>
  );
}

import type { Refusal } from '../../core/rows/refusals';
import type { ImportPlan, ImportRow } from '../../state/intents/import-plan';
import { Button } from '../../ui/fields/button';
import { Opening } from '../../ui/frame/opening';
import { useWords } from '../../ui/words';
import { useKeepingWords } from '../../ui/words/keeping-words';

interface RestoreLookProps {
  readonly title: string;
  readonly looked: { readonly plan: ImportPlan } | { readonly refusals: readonly Refusal[] };
  readonly onTake: () => void;
  readonly onLeave: () => void;
}

const FATES = ['new', 'differs', 'same'] as const;

/** What a backup would bring, thing by thing: new, different from here, or here already. */
export function RestoreLook({ title, looked, onTake, onLeave }: RestoreLookProps) {
  const words = useKeepingWords();
  const refusals = useWords().refusals;
  if ('refusals' in looked)
    return (
      <div className="keeping-look keeping-look-refused" role="alert">
        <h3>{title}</h3>
        <p>{words.refused}</p>
        <ul className="keeping-reasons">
          {looked.refusals.slice(0, 8).map((refusal) => (
            <li key={`${refusal.path} ${refusal.code}`}>
              {refusal.path !== '' && <code>{refusal.path}: </code>}
              {refusals[refusal.code](refusal.found, refusal.expected)}
            </li>
          ))}
        </ul>
        <Button onClick={onLeave}>{words.leaveIt}</Button>
      </div>
    );
  const { counts, rows } = looked.plan;
  const brings = counts.new + counts.differs > 0;
  return (
    <div className="keeping-look" role="status">
      <h3>{title}</h3>
      {!brings && <p>{words.nothingNew}</p>}
      {FATES.map(
        (fate) =>
          counts[fate] > 0 && (
            <Opening key={fate} head={words.fates[fate](counts[fate])} open={fate === 'differs'}>
              <Things rows={rows.filter((row) => row.fate === fate)} />
            </Opening>
          ),
      )}
      <div className="keeping-acts">
        {brings && (
          <Button tone="act" onClick={onTake}>
            {words.takeIn}
          </Button>
        )}
        <Button onClick={onLeave}>{words.leaveIt}</Button>
      </div>
    </div>
  );
}

function Things({ rows }: { rows: readonly ImportRow[] }) {
  const words = useKeepingWords();
  return (
    <ul className="keeping-things">
      {rows.map(({ table, name, row, differs }) => (
        <li key={`${table}/${row.id}`}>
          {words.thing(table, name)}
          {differs && <span className="soft">: {words.differsIn(differs)}</span>}
        </li>
      ))}
    </ul>
  );
}

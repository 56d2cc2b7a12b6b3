import type { Keeping } from '../../state/keeping/keeping';
import { useWorkbook } from '../../state/use-workbook';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { BackupButton } from './backup-button';
import { Restore } from './restore';

/** When everything was last put outside the browser, and the two ways: out, and in again. */
export function Copies({ keeping }: { keeping: Keeping }) {
  const words = useKeepingWords();
  const { at, where, savesSince } = useWorkbook((state) => state.backup);
  return (
    <section aria-labelledby="keeping-copies">
      <h2 id="keeping-copies">{words.copies}</h2>
      <p>
        {at === null ? (
          <strong>{words.noCopyYet}</strong>
        ) : (
          <>
            {words.lastCopy(words.when(at, keeping.now()), where?.how ?? null, where?.name ?? '')}{' '}
            {words.savesSince(savesSince)}
          </>
        )}
      </p>
      <p className="soft">{words.copiesWhy}</p>
      <div className="keeping-acts">
        <BackupButton keeping={keeping} tone="act" />
      </div>
      <Restore />
    </section>
  );
}

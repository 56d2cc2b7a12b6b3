import { Link } from 'react-router';
import { useWorkbook } from '../../state/use-workbook';
import { shelfAt } from '../../ui/frame/addresses';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { EarlierStates } from './earlier-states';
import { EraseAll } from './erase-all';
import { FolderCopies } from './folder-copies';
import { JoinShelf } from './join-shelf';
import { KeptBin } from './kept-bin';
import { OtherDevices } from './other-devices';
import { SetAside } from './set-aside';
import { useKeeping } from './use-keeping';
import { WhereKept } from './where-kept';
import './keeping.css';
import type { Keeping } from '../../state/keeping/keeping';
import { BackupButton } from './backup-button';
import { Restore } from './restore';

/** Where the work is kept, which copies there are, and the way back to what was there before. */
export function KeepingScreen() {
  const words = useKeepingWords();
  const keeping = useKeeping();
  const aside = useWorkbook((state) => state.quarantined.length > 0 || state.salvaged !== null);
  return (
    <main id="page" className="page page-sheet keeping" tabIndex={-1} aria-busy={keeping === null}>
      <header className="page-head">
        <h1>{words.title}</h1>
        <Link className="button button-plain" to={shelfAt('backup')}>
          {words.toShelf}
        </Link>
        <p>{words.why}</p>
      </header>
      {keeping && (
        <>
          <JoinShelf keeping={keeping} />
          {aside && <SetAside keeping={keeping} />}
          <div className="keeping-pair">
            <WhereKept keeping={keeping} />
            <Copies keeping={keeping} />
          </div>
          <OtherDevices keeping={keeping} />
          <FolderCopies keeping={keeping} />
          <EarlierStates keeping={keeping} />
          <KeptBin keeping={keeping} />
          <EraseAll keeping={keeping} />
        </>
      )}
    </main>
  );
}

/** When everything was last put outside the browser, and the two ways: out, and in again. */
function Copies({ keeping }: { keeping: Keeping }) {
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

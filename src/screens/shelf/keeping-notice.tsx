import { Link } from 'react-router';
import { nameOfRaw } from '../../state/keeping/as-it-is';
import { useWorkbook } from '../../state/use-workbook';
import { KEEPING } from '../../ui/frame/addresses';
import { useWords } from '../../ui/words';

/** What of safe keeping wants the maker's eye: things that were set aside, a folder that waits for them. Nothing, as a rule. */
export function KeepingNotice() {
  const words = useWords().shelf;
  const aside = useWorkbook((state) => state.quarantined);
  const folder = useWorkbook((state) => state.folder);
  const waits = folder?.trouble ? folder.name : null;
  if (aside.length === 0 && waits === null) return null;
  return (
    <aside className="keeping-notice" aria-label={words.safeKeeping}>
      {aside.length > 0 && (
        <p>{words.setAside(aside.map(({ table, id, raw }) => ({ table, name: nameOfRaw(raw, id) })))}</p>
      )}
      {waits !== null && <p>{words.folderWaits(waits)}</p>}
      <Link className="button button-plain" to={KEEPING}>
        {words.lookAtIt}
      </Link>
    </aside>
  );
}

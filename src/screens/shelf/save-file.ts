import { writeWorkbook } from '../../../shared/write-workbook';
import { backupParts, dayOf, partName } from '../../state/keeping/backup-parts';
import { useWorkbook } from '../../state/use-workbook';
import type { WorkbookIntents } from '../../state/workbook-state';
import { saveAs } from '../../ui/frame/save-as';

/** Writes a recipe, an event or everything to a file of the maker's own; everything to several where one could not be read in again. */
export function useSaveFile() {
  const exportFile = useWorkbook((state) => state.exportFile);
  const noteBackup = useWorkbook((state) => state.noteBackup);
  const rows = useWorkbook((state) => state.rows);
  const save = (name: string, text: string) =>
    saveAs(name, 'json', new Blob([text], { type: 'application/json' }));
  return (what: Parameters<WorkbookIntents['exportFile']>[0], name = '') => {
    if (what.kind === 'everything') {
      const day = dayOf(Date.now());
      const parts = backupParts(rows);
      for (const part of parts) save(partName(day, part), part.text);
      noteBackup({ how: 'download', name: `${partName(day, parts[0] ?? { number: 1, of: 1 })}.json` });
      return;
    }
    const file = exportFile(what);
    if (file) save(name, writeWorkbook(file));
  };
}

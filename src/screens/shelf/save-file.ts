import { writeWorkbook } from '../../../shared/write-workbook';
import { useWorkbook } from '../../state/use-workbook';
import type { WorkbookIntents } from '../../state/workbook-state';
import { saveAs } from '../../ui/save-as';

/** Writes a recipe, an event or everything to a file of the maker's own. */
export function useSaveFile() {
  const exportFile = useWorkbook((state) => state.exportFile);
  const noteBackup = useWorkbook((state) => state.noteBackup);
  return (what: Parameters<WorkbookIntents['exportFile']>[0], name: string) => {
    const file = exportFile(what);
    if (!file) return;
    saveAs(name, 'json', new Blob([writeWorkbook(file)], { type: 'application/json' }));
    if (what.kind === 'everything') noteBackup();
  };
}

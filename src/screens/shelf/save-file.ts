import type { ExportWhat } from '../../state/keeping/export-file';
import { useWorkbook } from '../../state/use-workbook';
import { saveAs } from '../../ui/frame/save-as';

/** Writes a recipe, an event or everything to a file of the maker's own; everything to several where one could not be read in again. */
export function useSaveFile() {
  const keeping = useWorkbook((state) => state.keeping);
  return (what: ExportWhat, name = '') => {
    void keeping().then(({ saveFile }) =>
      saveFile(what, name, (file, text) =>
        saveAs(file, 'json', new Blob([text], { type: 'application/json' })),
      ),
    );
  };
}

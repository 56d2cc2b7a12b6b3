import { useState } from 'react';
import type { Refusal } from '../../core/rows/refusals';
import type { ImportPlan } from '../../state/intents/import-plan';
import { readPickedFile } from '../../state/intents/read-picked-file';
import { useWorkbook } from '../../state/use-workbook';
import { FilePick } from '../../ui/fields/file-pick';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { RestoreLook } from './restore-look';

interface Looked {
  readonly files: readonly File[];
  /** Which of them is looked at. */
  readonly at: number;
  readonly reading: { readonly plan: ImportPlan } | { readonly refusals: readonly Refusal[] };
}

/** Files of a backup, looked through one after the other before anything of them is read in. */
export function Restore() {
  const words = useKeepingWords();
  const planImport = useWorkbook((state) => state.planImport);
  const importPlanned = useWorkbook((state) => state.importPlanned);
  const [looked, setLooked] = useState<Looked | null>(null);

  const look = async (files: readonly File[], at: number) => {
    const file = files[at];
    if (!file) {
      setLooked(null);
      return;
    }
    const reading = await readPickedFile(file);
    setLooked({
      files,
      at,
      reading: reading.ok ? { plan: planImport(reading.file) } : { refusals: reading.refusals },
    });
  };

  return (
    <>
      <p className="soft">
        {words.restoreWhy} {words.inParts}
      </p>
      <div className="keeping-acts">
        <FilePick
          label={words.restore}
          accept=".json,application/json"
          multiple
          onPick={(files) => void look(files, 0)}
        />
      </div>
      {looked && (
        <RestoreLook
          title={words.file(looked.at + 1, looked.files.length, looked.files[looked.at]?.name ?? '')}
          looked={looked.reading}
          onTake={() => {
            if ('plan' in looked.reading) importPlanned(looked.reading.plan, words.restore);
            void look(looked.files, looked.at + 1);
          }}
          onLeave={() => void look(looked.files, looked.at + 1)}
        />
      )}
    </>
  );
}

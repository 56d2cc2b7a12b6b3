import { Download } from 'lucide-react';
import { useState } from 'react';
import { dayOf, partName } from '../../state/keeping/backup-parts';
import type { Keeping } from '../../state/keeping/keeping';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { saveAs } from '../../ui/frame/save-as';
import { useKeepingWords } from '../../ui/words/keeping-words';

/** Everything to the maker's downloads, and a word that it is there. */
export function BackupButton({ keeping, tone }: { keeping: Keeping; tone?: 'act' | 'plain' }) {
  const words = useKeepingWords();
  const noteBackup = useWorkbook((state) => state.noteBackup);
  const leftOut = useWorkbook((state) => state.quarantined.length);
  const [files, setFiles] = useState(0);
  const make = () => {
    const parts = keeping.backup();
    const day = dayOf(keeping.now());
    for (const part of parts)
      saveAs(partName(day, part), 'json', new Blob([part.text], { type: 'application/json' }));
    noteBackup({ how: 'download', name: `${partName(day, parts[0] ?? { number: 1, of: 1 })}.json` });
    setFiles(parts.length);
  };
  return (
    <>
      <Button tone={tone ?? 'plain'} icon={<Download aria-hidden="true" />} onClick={make}>
        {words.makeCopy}
      </Button>
      <p role="status" className="keeping-word">
        {files > 0 && words.made(files)} {files > 0 && leftOut > 0 && words.notAside(leftOut)}
      </p>
    </>
  );
}

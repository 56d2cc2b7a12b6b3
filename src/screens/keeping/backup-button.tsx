import { Download } from 'lucide-react';
import { useState } from 'react';
import type { Keeping } from '../../state/keeping/keeping';
import type { Told } from '../../state/keeping/whole-backup';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { saveAs } from '../../ui/frame/save-as';
import { useWords } from '../../ui/words';
import { useKeepingWords } from '../../ui/words/keeping-words';

/** Everything to the maker's downloads, and a word that it is there once it was read back. */
export function BackupButton({ keeping, tone }: { keeping: Keeping; tone?: 'act' | 'plain' }) {
  const words = useKeepingWords();
  const { notices } = useWords();
  const leftOut = useWorkbook((state) => state.quarantined.length);
  const [told, setTold] = useState<Told | 'making' | null>(null);
  const make = async () => {
    setTold('making');
    setTold(
      await keeping.backup((name, text) =>
        saveAs(name, 'json', new Blob([text], { type: 'application/json' })),
      ),
    );
  };
  return (
    <>
      <Button
        tone={tone ?? 'plain'}
        icon={<Download aria-hidden="true" />}
        disabled={told === 'making'}
        onClick={() => void make()}
      >
        {words.makeCopy}
      </Button>
      <p role="status" className="keeping-word">
        {told === 'making' && words.making}
        {told !== null && told !== 'making' && notices[told.code](told.about)}{' '}
        {told !== null && told !== 'making' && leftOut > 0 && words.notAside(leftOut)}
      </p>
    </>
  );
}

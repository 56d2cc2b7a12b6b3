import { useState } from 'react';
import type { Keeping } from '../../state/keeping/keeping';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { TextField } from '../../ui/fields/text-field';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { BackupButton } from './backup-button';

type Step = 'closed' | 'asking' | 'done' | 'failed';

/** Everything out of this browser: a backup is offered first, and the words must be typed. */
export function EraseAll({ keeping }: { keeping: Keeping }) {
  const words = useKeepingWords();
  const eraseEverything = useWorkbook((state) => state.eraseEverything);
  const [step, setStep] = useState<Step>('closed');
  const [typed, setTyped] = useState('');
  const sure = typed.trim().toLowerCase() === words.eraseWord;
  const erase = async () => {
    if (!sure) return;
    const erased = await eraseEverything();
    setTyped('');
    setStep(erased.ok ? 'done' : 'failed');
  };
  return (
    <section aria-labelledby="keeping-erase">
      <h2 id="keeping-erase">{words.erase}</h2>
      <p>{words.eraseWhy}</p>
      {step === 'asking' ? (
        <form
          className="keeping-erase"
          onSubmit={(event) => {
            event.preventDefault();
            void erase();
          }}
        >
          <p>{words.eraseHelp}</p>
          <div className="keeping-acts">
            <BackupButton keeping={keeping} />
          </div>
          <TextField
            label={words.eraseConfirm(words.eraseWord)}
            value={typed}
            onChange={setTyped}
            most={40}
          />
          <div className="keeping-acts">
            <Button disabled={!sure} onClick={() => void erase()}>
              {words.eraseNow}
            </Button>
            <Button
              tone="quiet"
              onClick={() => {
                setTyped('');
                setStep('closed');
              }}
            >
              {words.eraseLeave}
            </Button>
          </div>
        </form>
      ) : (
        <div className="keeping-acts">
          <Button onClick={() => setStep('asking')}>{words.eraseStart}</Button>
        </div>
      )}
      <p role="status">{step === 'done' ? words.erased : step === 'failed' ? words.notErased : ''}</p>
    </section>
  );
}

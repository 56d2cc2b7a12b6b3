import { useState } from 'react';
import { Button } from '../fields/button';
import { ChoiceStrip } from '../fields/choice-strip';
import { useRuler } from '../fields/measure';
import { useWords } from '../words';
import { type MadeFile, type PrinterPaper, usualPaper } from './printer';
import { handOver } from './save-as';

/** A document in the making: none, being made, failed, or made with letters it cannot print and held until the maker wants it anyway. */
type Doing = 'making' | 'failed' | MadeFile | null;

/** Makes documents one at a time on the paper that is chosen; what comes of it is told by `MakingState`. */
export function useMaking() {
  const { unit } = useRuler();
  const [chosen, setPaper] = useState<PrinterPaper | null>(null);
  const [doing, setDoing] = useState<Doing>(null);
  const paper = chosen ?? usualPaper(unit);
  const make = async (print: (paper: PrinterPaper) => Promise<MadeFile>) => {
    setDoing('making');
    try {
      const made = await print(paper);
      if (!made.lost?.length) handOver(made);
      setDoing(made.lost?.length ? made : null);
    } catch {
      setDoing('failed');
    }
  };
  return { paper, setPaper, doing, setDoing, make, making: doing === 'making' };
}

type Making = ReturnType<typeof useMaking>;

/** Which paper lies in the printer. */
export function PaperChoice({ paper, setPaper }: Pick<Making, 'paper' | 'setPaper'>) {
  const words = useWords().printing;
  return (
    <ChoiceStrip
      label={words.paper}
      value={paper}
      choices={[
        { id: 'letter', label: words.letter },
        { id: 'a4', label: words.a4 },
      ]}
      onChange={setPaper}
    />
  );
}

/** What came of the document asked for last. */
export function MakingState({ doing, setDoing }: Pick<Making, 'doing' | 'setDoing'>) {
  const words = useWords().printing;
  const held = doing !== null && typeof doing !== 'string' ? doing : null;
  return (
    <>
      <p className={doing ? 'making-state' : 'said-only'} role="status">
        {held ? words.lost(held.lost?.join(' ') ?? '') : typeof doing === 'string' && words[doing]}
      </p>
      {held && (
        <Button
          onClick={() => {
            handOver(held);
            setDoing(null);
          }}
        >
          {words.anyway}
        </Button>
      )}
    </>
  );
}

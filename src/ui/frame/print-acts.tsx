import { Printer as PrinterIcon, Table } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import { Button } from '../fields/button';
import { ChoiceStrip } from '../fields/choice-strip';
import { useRuler } from '../fields/measure';
import { useWords } from '../words';
import { type MadeFile, type PrinterPaper, usualPaper } from './printer';
import { handOver } from './save-as';
import './print-acts.css';

export interface PrintAct {
  readonly label: string;
  /** `act`: what this page is for. */
  readonly tone?: 'act' | 'plain';
  readonly make: (paper: PrinterPaper) => Promise<MadeFile>;
  /** In place of the printer's picture. */
  readonly icon?: ReactNode;
}

type Doing = { readonly act: string; readonly state: 'making' | 'failed' } | MadeFile | null;

/** What can be printed from this page, on the paper in the printer; opens in a tab of its own, where it prints at true size. */
export function PrintActs({ acts }: { acts: readonly PrintAct[] }) {
  const words = useWords().printing;
  const { unit } = useRuler();
  const [chosen, setChosen] = useState<PrinterPaper | null>(null);
  const [doing, setDoing] = useState<Doing>(null);
  const paper = chosen ?? usualPaper(unit);

  const run = async ({ label, make }: PrintAct) => {
    setDoing({ act: label, state: 'making' });
    try {
      const made = await make(paper);
      if (made.lost?.length) {
        setDoing(made);
        return;
      }
      handOver(made);
      setDoing(null);
    } catch {
      setDoing({ act: label, state: 'failed' });
    }
  };

  const making = doing !== null && 'state' in doing && doing.state === 'making';
  const held = doing !== null && 'content' in doing ? doing : null;
  return (
    <div className="print-acts screen-only">
      {acts.map((act) => (
        <Button
          key={act.label}
          tone={act.tone ?? 'plain'}
          icon={
            act.icon ??
            (act.label === words.table ? <Table aria-hidden="true" /> : <PrinterIcon aria-hidden="true" />)
          }
          aria-disabled={making}
          onClick={() => making || void run(act)}
        >
          {act.label}
        </Button>
      ))}
      <ChoiceStrip
        label={words.paper}
        value={paper}
        choices={[
          { id: 'letter', label: words.letter },
          { id: 'a4', label: words.a4 },
        ]}
        onChange={setChosen}
      />
      <p className="print-acts-state" role="status">
        {doing === null
          ? ''
          : making
            ? words.making
            : held
              ? words.lost(held.lost?.join(' ') ?? '')
              : words.failed}
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
    </div>
  );
}

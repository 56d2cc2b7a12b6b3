import { Printer as PrinterIcon, Table } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button } from '../fields/button';
import { useWords } from '../words';
import { MakingState, PaperChoice, useMaking } from './making';
import type { MadeFile, PrinterPaper } from './printer';
import './print-acts.css';

export interface PrintAct {
  readonly label: string;
  /** `act`: what this page is for. */
  readonly tone?: 'act' | 'plain';
  readonly make: (paper: PrinterPaper) => Promise<MadeFile>;
  /** In place of the printer's picture. */
  readonly icon?: ReactNode;
}

/** What can be printed from this page, on the paper in the printer; opens in a tab of its own, where it prints at true size. */
export function PrintActs({ acts }: { acts: readonly PrintAct[] }) {
  const words = useWords().printing;
  const { paper, setPaper, doing, setDoing, make, making } = useMaking();
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
          onClick={() => making || void make(act.make)}
        >
          {act.label}
        </Button>
      ))}
      <PaperChoice paper={paper} setPaper={setPaper} />
      <MakingState doing={doing} setDoing={setDoing} />
    </div>
  );
}

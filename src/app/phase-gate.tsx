import type { ReactNode } from 'react';
import { useWorkbook } from '../state/use-workbook';
import { Button } from '../ui/fields/button';
import { BlankState } from '../ui/frame/blank-state';
import { useWords } from '../ui/words';

/** Lets the page through once the workbook is open; says what is the matter where it is not. */
export function PhaseGate({ children }: { children: ReactNode }) {
  const phase = useWorkbook((state) => state.phase);
  const acceptLoss = useWorkbook((state) => state.acceptLoss);
  const carryOn = useWorkbook((state) => state.carryOnInMemory);
  const words = useWords();
  if (phase.phase === 'opening') return <PageOpening />;
  if (phase.phase === 'blocked')
    return (
      <main id="page" className="page page-sheet">
        <BlankState title={words.frame.blocked}>
          <p>{words.frame.blockedRemedy}</p>
        </BlankState>
      </main>
    );
  if (phase.phase === 'lossFound')
    return (
      <>
        <div className="frame-alarm" role="alert">
          <p>{words.frame.lossFound(phase.loss.expected.rows - phase.loss.found.rows)}</p>
          <Button onClick={() => void acceptLoss()}>{words.frame.acceptLoss}</Button>
        </div>
        {children}
      </>
    );
  if (phase.phase !== 'stopped') return children;
  if (phase.fault.kind === 'unfetched')
    return (
      <main id="page" className="page page-sheet">
        <BlankState
          title={words.frame.unread}
          act={
            <Button tone="act" onClick={() => location.reload()}>
              {words.frame.again}
            </Button>
          }
        >
          <p role="alert">{words.faults.unfetched}</p>
          <Button onClick={carryOn}>{words.frame.carryOn}</Button>
        </BlankState>
      </main>
    );
  return (
    <>
      <div className="frame-alarm" role="alert">
        <p>{words.faults[phase.fault.kind]}</p>
        <Button onClick={() => location.reload()}>{words.frame.again}</Button>
        <Button onClick={carryOn}>{words.frame.carryOn}</Button>
      </div>
      {children}
    </>
  );
}

/** The place of a page that is being fetched. */
export function PageOpening() {
  const { frame } = useWords();
  return <main id="page" className="page page-opening" aria-busy="true" aria-label={frame.loading} />;
}

import { type ReactNode, useEffect, useState } from 'react';
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
  if (phase.phase === 'opening') return <WorkOpening read={phase.read} of={phase.of} />;
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

/** A wait is spoken of only when it lasts. source: our own */
const SLOW_MS = 1000;

/** The place of the page while saved work is read: empty for a moment, then how far it is. */
function WorkOpening({ read, of }: { read: number | undefined; of: number | undefined }) {
  const { frame } = useWords();
  const [slow, setSlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), SLOW_MS);
    return () => clearTimeout(timer);
  }, []);
  if (!slow) return <PageOpening />;
  const known = of !== undefined && of > 0;
  return (
    <main id="page" className="page page-sheet" aria-busy="true">
      <BlankState title={frame.openingWork}>
        {known ? (
          <>
            <progress
              className="opening-progress"
              aria-label={frame.openingWork}
              max={of}
              value={read ?? 0}
            />
            <p>{frame.readSoFar(read ?? 0, of)}</p>
          </>
        ) : (
          <p role="status">{frame.openingWaits}</p>
        )}
      </BlankState>
    </main>
  );
}

/** The place of a page that is being fetched. */
export function PageOpening() {
  const { frame } = useWords();
  return <main id="page" className="page page-opening" aria-busy="true" aria-label={frame.loading} />;
}

import { Button } from '../fields/button';
import { useWords } from '../words';
import { BlankState } from './blank-state';
import type { OpenWorkbook } from './open-workbook';

interface PlanWaitProps extends Pick<OpenWorkbook, 'failed' | 'again'> {
  /** What is said while the plan is on its way. */
  readonly working: string;
}

/** What stands in place of an event's plan: that it is being worked out, or that it could not be, with another try. */
export function PlanWait({ failed, again, working }: PlanWaitProps) {
  const { frame } = useWords();
  if (failed === null) return <p className="soft">{working}</p>;
  return (
    <div role="alert">
      <BlankState
        title={frame.unplanned}
        act={
          <Button tone="act" onClick={again}>
            {frame.again}
          </Button>
        }
      >
        <p>{frame.unplannedWhy}</p>
        <p className="caption">{failed}</p>
      </BlankState>
    </div>
  );
}

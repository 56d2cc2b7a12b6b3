import { RouterProvider } from 'react-router';
import { type Planner, PlannerContext } from '../state/event-plan';
import { WorkbookContext } from '../state/use-workbook';
import type { WorkbookStore } from '../state/workbook-store';
import { WordsProvider } from '../ui/words';
import { english } from './messages';
import { router } from './routes';
import { RulerOfSettings } from './ruler-of-settings';

/** The app round one workbook. */
export function App({ workbook, planner }: { workbook: WorkbookStore; planner: Planner }) {
  return (
    <WorkbookContext value={workbook}>
      <WordsProvider value={english}>
        <RulerOfSettings>
          <PlannerContext value={planner}>
            <RouterProvider router={router} />
          </PlannerContext>
        </RulerOfSettings>
      </WordsProvider>
    </WorkbookContext>
  );
}

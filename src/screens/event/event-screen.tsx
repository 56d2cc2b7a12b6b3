import { useOutletContext } from 'react-router';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { EventForm } from './event-form';
import { MakeThese } from './make-these';

/** How many, when, of what? For a recipe alone: the events that use it, and the way to a new one. */
export function EventScreen() {
  const open = useOutletContext<OpenWorkbook>();
  if (open.event)
    return (
      <EventForm
        event={open.event}
        plan={open.plan}
        stale={open.stale}
        mendOf={open.mendOf}
        choosePaper={open.choosePaper}
        chooseTape={open.chooseTape}
      />
    );
  return open.recipe && <MakeThese recipe={open.recipe} />;
}

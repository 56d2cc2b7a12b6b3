import { CopyPlus } from 'lucide-react';
import { useNavigate } from 'react-router';
import type { FavorEvent } from '../../../shared/workbook';
import { type EventPlan, listRunSheet, repeatEvent } from '../../core/plan';
import { rowsOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { pageAddress } from '../../ui/frame/addresses';
import { usePageWords } from '../../ui/words';

/** The event once more, with what was learned of it; leads to the new one. */
export function RepeatEvent({ event, plan }: { event: FavorEvent; plan: EventPlan }) {
  const { season: words } = usePageWords();
  const rows = useWorkbook((state) => state.rows);
  const create = useWorkbook((state) => state.create);
  const navigate = useNavigate();
  const repeat = () => {
    const sheet = listRunSheet(plan, rowsOf(rows), rows.tools.get(event.toolId ?? ''));
    const made = create('events', repeatEvent(event, words.again(event.name), plan, sheet), words.repeat);
    if (made.ok) void navigate(pageAddress({ kind: 'event', id: made.id }, 'event'));
  };
  return (
    <div>
      <Button icon={<CopyPlus aria-hidden="true" />} onClick={repeat}>
        {words.repeat}
      </Button>
      <p className="field-note">{words.repeatWhy}</p>
    </div>
  );
}

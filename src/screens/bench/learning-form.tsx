import type { FavorEvent, Pace } from '../../../shared/workbook';
import { USUAL_PACE } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import { NumberField } from '../../ui/fields/number-field';
import { usePageWords } from '../../ui/words';

/** How fast a hand learns, and how much rest comes on top. */
export function LearningForm({ event }: { event: FavorEvent }) {
  const words = usePageWords().hours;
  const edit = useWorkbook((state) => state.edit);
  const pace = event.pace ?? USUAL_PACE;
  const set = (label: string, change: Partial<Pace>) =>
    void edit('events', event.id, label, (old) => ({ ...old, pace: { ...pace, ...change } }));
  return (
    <div className="learning-form">
      <NumberField
        label={words.learning}
        help={words.learningHelp}
        unit="%"
        value={pace.learningPercent}
        least={50}
        most={100}
        onChange={(learningPercent) => set(words.learning, { learningPercent })}
      />
      <NumberField
        label={words.allowance}
        help={words.allowanceHelp}
        unit="%"
        value={pace.allowancePercent}
        least={0}
        most={100}
        onChange={(allowancePercent) => set(words.allowance, { allowancePercent })}
      />
    </div>
  );
}

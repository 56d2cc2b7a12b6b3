import type { FavorEvent, Pace } from '../../../shared/workbook';
import { USUAL_PACE } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import { NumberField } from '../../ui/number-field';
import { Opening } from '../../ui/opening';
import { usePageWords } from '../../ui/words';

/** What the hours and the timetable go by. */
export function PaceForm({ event }: { event: FavorEvent }) {
  const words = usePageWords().hours;
  const edit = useWorkbook((state) => state.edit);
  const pace = event.pace ?? USUAL_PACE;
  const set = (label: string, change: Partial<Pace>) =>
    void edit('events', event.id, label, (old) => ({ ...old, pace: { ...pace, ...change } }));
  return (
    <Opening head={words.pace}>
      <div className="pace-form">
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
        <NumberField
          label={words.makers}
          value={pace.makers}
          least={1}
          most={50}
          onChange={(makers) => set(words.makers, { makers })}
        />
        <NumberField
          label={words.dayMinutes}
          unit={words.minutes}
          value={pace.dayMinutes}
          least={15}
          most={1440}
          onChange={(dayMinutes) => set(words.dayMinutes, { dayMinutes })}
        />
        <NumberField
          label={words.daysFree}
          unit={words.days}
          value={pace.daysFree}
          least={0}
          most={60}
          onChange={(daysFree) => set(words.daysFree, { daysFree })}
        />
      </div>
    </Opening>
  );
}

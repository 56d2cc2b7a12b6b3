import { Check } from 'lucide-react';
import { classNames } from '../../ui/frame/class-names';
import { usePageWords } from '../../ui/words';
import type { RunScreen } from './run-view';

interface StageListProps {
  readonly screens: readonly RunScreen[];
  readonly place: number;
  readonly onPlace: (place: number) => void;
}

const actOf = (screen: RunScreen) => (screen.first ? 'first' : screen.progress.step.act);

/** Every stage of the batch with how far it has come; pressing one goes to what is open in it. */
export function StageList({ screens, place, onPlace }: StageListProps) {
  const words = usePageWords().run;
  const here = screens[place];
  const acts = [...new Set(screens.map(actOf))];
  return (
    <nav className="stage-list screen-only" aria-label={words.stages}>
      <ol>
        {acts.map((act) => {
          const mine = screens.flatMap((screen, at) => (actOf(screen) === act ? [{ screen, at }] : []));
          const open = mine.filter(({ screen }) => isOpen(screen));
          const name = act === 'first' ? words.firstBox : words.acts[act];
          const current = here !== undefined && actOf(here) === act;
          const done = mine.length - open.length;
          return (
            <li key={act}>
              <button
                type="button"
                className={classNames('stage', current && 'stage-current')}
                aria-current={current ? 'step' : undefined}
                onClick={() => onPlace((open[0] ?? mine[0])?.at ?? 0)}
              >
                <span>{name}</span>
                {open.length === 0 ? (
                  <Check aria-label={words.done} />
                ) : (
                  <span className="stage-count">
                    {done}/{mine.length}
                  </span>
                )}
              </button>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}

export const isOpen = (screen: RunScreen): boolean =>
  screen.first ? !screen.right : screen.progress.left > 0;

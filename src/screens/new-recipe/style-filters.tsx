import { Button } from '../../ui/fields/button';
import { usePickingWords } from '../../ui/words/picking-words';
import { MERITS, type Wishes } from './wishes';

interface StyleFiltersProps {
  readonly wishes: Wishes;
  readonly matching: number;
  readonly of: number;
  readonly looking: boolean;
}

/** What a maker cares about, each a wish to be ticked; how many styles do all of it is said as it changes. */
export function StyleFilters({ wishes, matching, of, looking }: StyleFiltersProps) {
  const words = usePickingWords();
  const { merits, toggle, clear } = wishes;
  const wished = merits.length > 0;
  return (
    <fieldset className="style-filters">
      <legend>{words.care}</legend>
      <div className="style-filters-wishes">
        {MERITS.map((merit) => (
          <label key={merit} className="wish">
            <input type="checkbox" checked={merits.includes(merit)} onChange={() => toggle(merit)} />
            {words.merits[merit]}
          </label>
        ))}
      </div>
      <div className="style-filters-count">
        <p role="status">
          {wished && looking
            ? words.looking
            : wished && matching === 0
              ? words.noneMatch
              : words.matching(matching, of)}
        </p>
        {wished && (
          <Button tone="quiet" onClick={clear}>
            {words.showAll}
          </Button>
        )}
      </div>
    </fieldset>
  );
}

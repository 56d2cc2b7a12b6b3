import { useWorkbook } from '../state/use-workbook';
import type { OpenWorkbook } from '../ui/open-workbook';
import { useWords } from '../ui/words';

/** The workbook's name, which is changed where it stands. */
export function WorkbookHead({ open: { workbook, recipe, event } }: { open: OpenWorkbook }) {
  const words = useWords().frame;
  const edit = useWorkbook((state) => state.edit);
  const row = event ?? recipe;
  if (!row) return null;
  const keep = (name: string) => {
    if (name.trim() === '' || name === row.name) return;
    edit(workbook.kind === 'recipe' ? 'recipes' : 'events', row.id, words.name, (old) => ({ ...old, name }));
  };
  return (
    <div className="workbook-head">
      <input
        className="workbook-name"
        aria-label={words.nameOf[workbook.kind]}
        defaultValue={row.name}
        key={row.name}
        maxLength={200}
        autoComplete="off"
        onBlur={(event) => {
          keep(event.target.value);
          if (event.target.value.trim() === '') event.target.value = row.name;
        }}
        onKeyDown={(event) => {
          if (event.key === 'Escape') event.currentTarget.value = row.name;
          if (event.key === 'Enter' || event.key === 'Escape') event.currentTarget.blur();
        }}
      />
      <span className="workbook-kind">{words.kindOf[workbook.kind]}</span>
    </div>
  );
}

import { useWorkbook } from '../state/use-workbook';
import type { Workbook } from '../ui/addresses';
import { useWords } from '../ui/words';

/** The name of the open recipe or event, changed where it stands. */
export function WorkbookName({ kind, id }: Workbook) {
  const words = useWords().frame;
  const edit = useWorkbook((state) => state.edit);
  const table = kind === 'recipe' ? 'recipes' : 'events';
  const name = useWorkbook((state) => state.rows[table].get(id)?.name);
  if (name === undefined) return <span className="frame-space" />;
  const keep = (typed: string) => {
    if (typed.trim() !== '' && typed !== name)
      edit(table, id, words.name, (old) => ({ ...old, name: typed }));
  };
  return (
    <input
      className="workbook-name"
      aria-label={words.nameOf[kind]}
      defaultValue={name}
      key={`${id} ${name}`}
      maxLength={200}
      autoComplete="off"
      spellCheck={false}
      onBlur={(event) => {
        keep(event.target.value);
        if (event.target.value.trim() === '') event.target.value = name;
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') event.currentTarget.value = name;
        if (event.key === 'Enter' || event.key === 'Escape') event.currentTarget.blur();
      }}
    />
  );
}

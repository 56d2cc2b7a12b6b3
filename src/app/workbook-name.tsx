import { useEffect, useRef } from 'react';
import { isSeen } from '../core/rows/text';
import { useWorkbook } from '../state/use-workbook';
import type { Workbook } from '../ui/frame/addresses';
import { keyIn } from '../ui/frame/keys';
import { useWords } from '../ui/words';

/** The name of the open recipe or event, changed where it stands. */
export function WorkbookName({ kind, id }: Workbook) {
  const words = useWords().frame;
  const edit = useWorkbook((state) => state.edit);
  const table = kind === 'recipe' ? 'recipes' : 'events';
  const name = useWorkbook((state) => state.rows[table].get(id)?.name);
  const input = useRef<HTMLInputElement>(null);
  // An undo changes the name under their hands; the field keeps the focus all the same.
  useEffect(() => {
    if (input.current && name !== undefined) input.current.value = name;
  }, [name]);
  if (name === undefined) return <span className="frame-space" />;
  const keep = (typed: string) => {
    if (isSeen(typed) && typed !== name) edit(table, id, words.name, (old) => ({ ...old, name: typed }));
  };
  return (
    <input
      ref={input}
      className="workbook-name"
      aria-label={words.nameOf[kind]}
      defaultValue={name}
      key={id}
      maxLength={200}
      autoComplete="off"
      spellCheck={false}
      onBlur={(event) => {
        keep(event.target.value);
        if (!isSeen(event.target.value)) event.target.value = name;
      }}
      onKeyDown={(event) => {
        const [act] = keyIn('text', event) ?? [];
        if (act === 'back') event.currentTarget.value = name;
        if (act) event.currentTarget.blur();
        if (keyIn('anywhere', event)?.[0] === 'keep') keep(event.currentTarget.value);
      }}
    />
  );
}

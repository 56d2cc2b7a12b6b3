import type { Refusal } from '../../core/rows/refusals';
import { Button } from '../fields/button';
import { useWords } from '../words';
import './import-look.css';

interface ImportLookProps {
  /** What reading it in would do, row by row; or why it is not read in. */
  readonly looked:
    | { readonly counts: Readonly<Record<'new' | 'same' | 'differs', number>> }
    | { readonly refusals: readonly Refusal[] };
  readonly onTake: () => void;
  readonly onLeave: () => void;
}

/** What a file or a link holds, before anything of it is kept. */
export function ImportLook({ looked, onTake, onLeave }: ImportLookProps) {
  const words = useWords();
  if ('refusals' in looked)
    return (
      <div className="import-look import-look-refused" role="alert">
        <p>{words.shelf.fileRefused}</p>
        <ul>
          {looked.refusals.slice(0, 8).map((refusal) => (
            <li key={`${refusal.path} ${refusal.code}`}>
              {refusal.path !== '' && <code>{refusal.path}: </code>}
              {words.refusals[refusal.code](refusal.found, refusal.expected)}
            </li>
          ))}
        </ul>
        <Button onClick={onLeave}>{words.shelf.leaveIt}</Button>
      </div>
    );
  const { counts } = looked;
  return (
    <div className="import-look" role="status">
      <p>{words.shelf.fileHolds(counts.new, counts.differs, counts.same)}</p>
      {counts.new + counts.differs > 0 && (
        <Button tone="act" onClick={onTake}>
          {words.shelf.takeIn}
        </Button>
      )}
      <Button onClick={onLeave}>{words.shelf.leaveIt}</Button>
    </div>
  );
}

import { useCallback } from 'react';
import type { Keeping } from '../../state/keeping/keeping';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { useAnswer } from './use-keeping';

/** Copies that are written by themselves into a folder of the maker's own; where the browser has none, only the words say so. */
export function FolderCopies({ keeping }: { keeping: Keeping }) {
  const words = useKeepingWords();
  const picked = useWorkbook((state) => state.folder);
  const isThere = useAnswer(useCallback(() => keeping.folder.isThere(), [keeping]));
  const { folder } = keeping;
  if (isThere === null) return null;
  return (
    <section aria-labelledby="keeping-folder">
      <h2 id="keeping-folder">{words.folder}</h2>
      {!isThere && <p>{words.noFolders}</p>}
      {isThere && !picked && (
        <>
          <p>{words.folderWhy}</p>
          <div className="keeping-acts">
            <Button onClick={() => void folder.pick()}>{words.pickFolder}</Button>
          </div>
        </>
      )}
      {picked && (
        <>
          <p>{words.goesInto(picked.name)}</p>
          <p role="status">
            {picked.lastAt === null
              ? words.folderNothingYet
              : words.lastWritten(words.when(picked.lastAt, keeping.now()), picked.lastFile ?? '')}
          </p>
          {picked.trouble && (
            <p role="alert" className="keeping-trouble">
              {words.troubles[picked.trouble](picked.name)}
            </p>
          )}
          <div className="keeping-acts">
            {picked.trouble === 'forbidden' ? (
              <Button tone="act" onClick={() => void folder.allow()}>
                {words.allowFolder}
              </Button>
            ) : (
              <Button onClick={() => void folder.writeNow(picked.trouble === 'fewer')}>
                {picked.trouble === 'fewer' ? words.writeAnyway : words.writeNow}
              </Button>
            )}
            <Button onClick={() => void folder.pick()}>{words.otherFolder}</Button>
            <Button tone="quiet" onClick={() => void folder.forget()}>
              {words.stopFolder}
            </Button>
          </div>
        </>
      )}
    </section>
  );
}

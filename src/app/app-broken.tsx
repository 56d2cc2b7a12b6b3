import { useSaveFile } from '../screens/shelf/save-file';
import { Button } from '../ui/fields/button';
import { BlankState } from '../ui/frame/blank-state';
import { useWords } from '../ui/words';

/** What stands in place of the whole app where what is round the pages could not be drawn. */
export function AppBroken({ detail }: { detail: string }) {
  const { frame } = useWords();
  const saveFile = useSaveFile();
  return (
    <main className="page page-sheet" id="page">
      <BlankState
        title={frame.appBroken}
        act={
          <Button tone="act" onClick={() => location.reload()}>
            {frame.again}
          </Button>
        }
      >
        <p role="alert">{frame.appBrokenRemedy}</p>
        <Button onClick={() => saveFile({ kind: 'everything' })}>{frame.saveFile}</Button>
        <p className="caption">{detail}</p>
      </BlankState>
    </main>
  );
}

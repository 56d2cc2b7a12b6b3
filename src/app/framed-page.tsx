import { BlankState } from '../ui/frame/blank-state';
import { useWords } from '../ui/words';

/** What stands in a frame of another site in place of the app: a way to open it by itself. Nothing saved is read there. */
export function FramedPage() {
  const { frame } = useWords();
  return (
    <div className="frame">
      <main className="page page-sheet">
        <BlankState
          title={frame.framed}
          act={
            <a className="button button-act" href={location.href} target="_top">
              {frame.openAlone}
            </a>
          }
        >
          <p>{frame.framedWhy}</p>
        </BlankState>
      </main>
    </div>
  );
}

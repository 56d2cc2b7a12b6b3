import { Link } from 'react-router';
import { Button } from '../ui/fields/button';
import { SHELF } from '../ui/frame/addresses';
import { BlankState } from '../ui/frame/blank-state';
import { useWords } from '../ui/words';

/** What stands in place of a page that could not be drawn. */
export function PageBroken({ detail }: { detail: string }) {
  const { frame } = useWords();
  return (
    <main className="page page-sheet" id="page" tabIndex={-1}>
      <BlankState
        title={frame.broken}
        act={
          <Button tone="act" onClick={() => location.reload()}>
            {frame.again}
          </Button>
        }
      >
        <p>{frame.brokenRemedy}</p>
        <p className="caption">{detail}</p>
      </BlankState>
    </main>
  );
}

/** An address that leads nowhere, or no longer. */
export function PageNotFound() {
  const { frame } = useWords();
  return (
    <main className="page page-sheet" id="page" tabIndex={-1}>
      <BlankState
        title={frame.notFound}
        act={
          <Link className="button button-act" to={SHELF}>
            {frame.toShelf}
          </Link>
        }
      >
        <p>{frame.notFoundWhy}</p>
      </BlankState>
    </main>
  );
}

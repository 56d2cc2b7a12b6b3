import { Link, useRouteError } from 'react-router';
import { SHELF } from '../ui/addresses';
import { BlankState } from '../ui/blank-state';
import { Button } from '../ui/button';
import { useWords } from '../ui/words';

/** A page that could not be drawn: the rest of the app, and what was typed, stay. */
export function PageBroken() {
  const { frame } = useWords();
  const error = useRouteError();
  return (
    <main className="page page-sheet" id="page">
      <BlankState
        title={frame.broken}
        act={
          <Button tone="act" onClick={() => location.reload()}>
            {frame.again}
          </Button>
        }
      >
        <p>{frame.brokenRemedy}</p>
        {error instanceof Error && <p className="caption">{error.message}</p>}
      </BlankState>
    </main>
  );
}

/** An address that leads nowhere, or no longer. */
export function PageNotFound() {
  const { frame } = useWords();
  return (
    <main className="page page-sheet" id="page">
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

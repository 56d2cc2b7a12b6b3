import { useState } from 'react';
import { Link } from 'react-router';
import { useWorkbook } from '../state/use-workbook';
import { Button } from '../ui/fields/button';
import { START } from '../ui/frame/addresses';
import { usePageWords } from '../ui/words';
import './example-band.css';

/** What is looked at: a box, an event, or all of a season. */
interface Shown {
  readonly name: string;
  readonly example?: true | undefined;
}

/** Above every page of the example: that nothing here can be spoilt, how to make it one's own, and three hints until they are put away. */
export function ExampleBand({ of: shown }: { readonly of: Shown | null | undefined }) {
  const words = usePageWords();
  const makeMine = useWorkbook((state) => state.makeMine);
  const hintsSeen = useWorkbook((state) => state.settings.hintsSeen);
  if (!shown?.example) return null;
  return (
    <aside className="example-band screen-only" aria-label={words.example.says(shown.name)}>
      <p>
        <strong>{words.example.app}</strong> {words.example.says(shown.name)}
      </p>
      <p className="example-acts">
        <Button tone="act" onClick={makeMine}>
          {words.frame.makeMine}
        </Button>
        <Link className="button button-plain" to={START}>
          {words.example.ownBox}
        </Link>
      </p>
      {!hintsSeen && <Hints />}
    </aside>
  );
}

function Hints() {
  const words = usePageWords().example;
  const changeSettings = useWorkbook((state) => state.changeSettings);
  const [at, setAt] = useState(0);
  const last = at === words.hint.length - 1;
  const putAway = () => changeSettings({ hintsSeen: true });
  return (
    <section className="example-hints" aria-label={words.hints}>
      <p role="status">
        <b>{words.nth(at + 1, words.hint.length)}</b> {words.hint[at]}
      </p>
      {!last && (
        <Button tone="quiet" onClick={() => setAt(at + 1)}>
          {words.next}
        </Button>
      )}
      <Button tone="quiet" onClick={putAway}>
        {words.noMore}
      </Button>
    </section>
  );
}

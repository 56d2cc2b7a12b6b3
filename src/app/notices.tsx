import { X } from 'lucide-react';
import { lazy, useEffect, useState } from 'react';
import { useMissingParts, useUnanswered } from '../state/results/unanswered';
import { whereUsed } from '../state/results/where-used';
import { useWorkbook } from '../state/use-workbook';
import type { Notice } from '../state/workbook-state';
import { Button, IconButton } from '../ui/fields/button';
import { useWords } from '../ui/words';
import { Part } from './boundary';

/** Keeping the app in the browser fetches all of it: not before the page they wait for. source: our own. */
const LOOK_AFTER_MS = 3000;

const NewerVersion = lazy(async () => {
  await new Promise((resolve) => setTimeout(resolve, LOOK_AFTER_MS));
  return { default: (await import('./newer-version')).NewerVersion };
});

/** How long a notice that can be undone stays. source: our own; the bin keeps the thing for 30 days. */
const STAY_MS = 10_000;

/** What happened by itself, or can be taken back: said once, at the edge of the page. */
export function Notices() {
  const notices = useWorkbook((state) => state.notices);
  return (
    <div className="notices screen-only" role="status">
      {notices.map((notice) => (
        <NoticeSlip key={notice.key} notice={notice} />
      ))}
      <Trouble count={useMissingParts()} says="partMissing" />
      <Trouble count={useUnanswered()} says="unanswered" />
      <Part>
        <NewerVersion />
      </Part>
    </div>
  );
}

/** Something of the app itself is not there or fell silent: pages that wait for it cannot know. */
function Trouble({ count, says }: { count: number; says: 'partMissing' | 'unanswered' }) {
  const words = useWords().frame;
  const [seen, setSeen] = useState(0);
  if (count === seen) return null;
  return (
    <div className="notice">
      <p>{words[says]}</p>
      <Button tone="act" onClick={() => location.reload()}>
        {words.again}
      </Button>
      <IconButton label={words.dismiss} icon={<X />} onClick={() => setSeen(count)} />
    </div>
  );
}

function NoticeSlip({ notice }: { notice: Notice }) {
  const words = useWords();
  const dismiss = useWorkbook((state) => state.dismiss);
  const takeBack = useWorkbook((state) => state.takeBack);
  const makeMine = useWorkbook((state) => state.makeMine);
  const deleted = notice.code === 'deleted' ? notice.step?.changes[0]?.id : undefined;
  const rows = useWorkbook((state) => state.rows);
  const usedIn = deleted === undefined ? [] : whereUsed(rows, deleted);
  const passing = notice.step !== undefined;
  useEffect(() => {
    if (!passing) return;
    const timer = setTimeout(() => dismiss(notice.key), STAY_MS);
    return () => clearTimeout(timer);
  }, [passing, dismiss, notice.key]);
  return (
    <div className="notice">
      <p>
        {words.notices[notice.code](notice.about)} {usedIn.length > 0 && words.frame.usedIn(usedIn)}
      </p>
      {passing && (
        <Button tone="quiet" onClick={() => takeBack(notice.key)}>
          {words.frame.undo}
        </Button>
      )}
      {notice.code === 'exampleStays' && (
        <Button tone="act" onClick={makeMine}>
          {words.frame.makeMine}
        </Button>
      )}
      <IconButton label={words.frame.dismiss} icon={<X />} onClick={() => dismiss(notice.key)} />
    </div>
  );
}

import type { StyleAnswers } from '../../core/answers';
import type { FamilyMember, NeededRoom } from '../../core/fit';
import type { Contents } from '../../core/rows/contents';
import type {
  AnswersAsk,
  FamilyAsk,
  FitAnswer,
  FitQuestion,
  MarksAsk,
  StyleRows,
} from '../../worker/fit-messages';
import { hearWorker } from '../../worker/hear-worker';
import { noteUnanswered } from './unanswered';

/** Works contents and easy marks out, elsewhere if it can. */
export interface FitFinder {
  readonly arrange: (contents: Contents) => Promise<readonly NeededRoom[]>;
  /** Calls back style by style; the search ends when the returned function is called. */
  readonly search: (ask: MarksAsk, onFound: (found: StyleRows) => void) => () => void;
  /** Calls back style by style; the search ends when the returned function is called. */
  readonly answers: (ask: AnswersAsk, onFound: (found: StyleAnswers) => void) => () => void;
  /** Answers will be asked for: whoever finds them may get ready. */
  readonly getReady: () => void;
  /** Calls back member by member, then with null; nothing is heard after the returned function is called. */
  readonly family: (ask: FamilyAsk, onFound: (member: FamilyMember | null) => void) => () => void;
}

let finder: FitFinder | null = null;

/** The one finder of this tab: in a worker of its own, or here and now where there is none. */
export function fitFinder(): FitFinder {
  finder ??= typeof Worker === 'undefined' ? findHere() : findInWorker();
  return finder;
}

/** Who looks for answers at once. source: our choice; a third would take memory and find little sooner */
const LOOKERS = 2;

function findInWorker(): FitFinder {
  const workers: (Worker | null)[] = [null, null];
  let number = 0;
  const arranged = new Map<number, (rooms: readonly NeededRoom[]) => void>();
  const searches = new Map<number, (found: StyleRows) => void>();
  const weighed = new Map<number, (found: StyleAnswers) => void>();
  const families = new Map<number, (member: FamilyMember | null) => void>();
  const workerAt = (at: number): Worker => {
    const worker = workers[at] ?? begin(at);
    workers[at] = worker;
    return worker;
  };
  const ask = (question: FitQuestion, at = 0) => workerAt(at).postMessage(question);
  const lookers = () =>
    Array.from({ length: Math.min(LOOKERS, navigator.hardwareConcurrency || 1) }, (_, at) => at);
  /** One that falls is ended; the next question begins another. */
  function begin(at: number): Worker {
    const begun = new Worker(new URL('../../worker/fit-worker.ts', import.meta.url), { type: 'module' });
    hearWorker(begun, hear, () => {
      if (workers[at] === begun) workers[at] = null;
      noteUnanswered();
    });
    return begun;
  }
  function hear(said: FitAnswer): void {
    if (said.kind === 'marks') searches.get(said.number)?.(said.found);
    else if (said.kind === 'answers') weighed.get(said.number)?.(said.found);
    else if (said.kind === 'family') families.get(said.number)?.(said.member);
    else if (said.kind === 'failed') noteUnanswered();
    else {
      arranged.get(said.number)?.(said.rooms);
      arranged.delete(said.number);
    }
  }
  return {
    arrange: (contents) =>
      new Promise((resolve) => {
        arranged.set(++number, resolve);
        ask({ kind: 'arrange', number, contents });
      }),
    search(wanted, onFound) {
      const mine = ++number;
      searches.clear();
      searches.set(mine, onFound);
      ask({ kind: 'marks', number: mine, ask: wanted });
      return () => {
        if (searches.delete(mine)) ask({ kind: 'stop', number: ++number });
      };
    },
    answers(wanted, onFound) {
      const mine = ++number;
      weighed.clear();
      weighed.set(mine, onFound);
      const all = lookers();
      for (const at of all)
        ask({ kind: 'answers', number: mine, ask: wanted, part: { at, of: all.length } }, at);
      return () => {
        if (!weighed.delete(mine)) return;
        number++;
        for (const at of all) ask({ kind: 'stop', number }, at);
      };
    },
    getReady: () => lookers().forEach(workerAt),
    family(wanted, onFound) {
      const mine = ++number;
      families.clear();
      families.set(mine, onFound);
      ask({ kind: 'family', number: mine, ask: wanted });
      return () => void families.delete(mine);
    },
  };
}

/** Without a worker, one style at a time between other work. */
function findHere(): FitFinder {
  return {
    arrange: async (contents) => (await import('../../core/fit')).neededRooms(contents),
    search(wanted, onFound) {
      let stopped = false;
      const isStopped = () => stopped;
      void (async () => {
        const { searchStyles } = await import('../../worker/search-styles');
        for (const found of searchStyles(wanted)) {
          if (isStopped()) return;
          onFound(found);
          await new Promise((resolve) => setTimeout(resolve, 0));
        }
      })();
      return () => {
        stopped = true;
      };
    },
    answers(wanted, onFound) {
      let stopped = false;
      const isStopped = () => stopped;
      void (async () => {
        const { searchAnswers } = await import('../../worker/search-answers');
        for (const found of searchAnswers(wanted)) {
          if (isStopped()) return;
          onFound(found);
          await new Promise((resolve) => setTimeout(resolve, 0));
        }
      })();
      return () => {
        stopped = true;
      };
    },
    getReady: () => undefined,
    family(wanted, onFound) {
      let stopped = false;
      void import('../../worker/search-family').then(({ searchFamily }) => {
        for (const member of [...searchFamily(wanted), null]) if (!stopped) onFound(member);
      });
      return () => {
        stopped = true;
      };
    },
  };
}

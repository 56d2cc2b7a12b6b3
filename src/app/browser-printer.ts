import type { WorkbookStore } from '../state/workbook-store';
import type { Printer } from '../ui/frame/printer';
import type { Words } from '../ui/words';

/** What a page on paper needs of a catalogue. */
export type Spoken = Pick<Words, 'locale' | 'spoken'>;

type Job = (...asked: readonly unknown[]) => Promise<unknown>;

/** The printer, itself fetched when something is first printed: whatever it is asked for is asked of the jobs once they are there. */
export function browserPrinter(workbook: WorkbookStore, words: Spoken): Printer {
  const jobs = async () => (await import('./print-jobs')).printJobs(workbook, words);
  return new Proxy({} as Printer, {
    get:
      (_, name): Job =>
      async (...asked) =>
        ((await jobs())[name as keyof Printer] as Job)(...asked),
  });
}

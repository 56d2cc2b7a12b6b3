import type { WorkbookStore } from '../state/workbook-store';
import type { Printer } from '../ui/printer';

type Job = (...asked: readonly unknown[]) => Promise<unknown>;

/** The printer, itself fetched when something is first printed: whatever it is asked for is asked of the jobs once they are there. */
export function browserPrinter(workbook: WorkbookStore, locale: string): Printer {
  const jobs = async () => (await import('./print-jobs')).printJobs(workbook, locale);
  return new Proxy({} as Printer, {
    get:
      (_, name): Job =>
      async (...asked) =>
        ((await jobs())[name as keyof Printer] as Job)(...asked),
  });
}

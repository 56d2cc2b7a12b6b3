import type { WorkbookStore } from '../state/workbook-store';
import type { Printer } from '../ui/printer';

/** The printer, itself fetched when something is first printed. */
export function browserPrinter(workbook: WorkbookStore): Printer {
  const jobs = async () => (await import('./print-jobs')).printJobs(workbook);
  return {
    benchCard: async (...asked) => (await jobs()).benchCard(...asked),
    template: async (...asked) => (await jobs()).template(...asked),
    shoppingList: async (...asked) => (await jobs()).shoppingList(...asked),
    shoppingTable: async (...asked) => (await jobs()).shoppingTable(...asked),
  };
}

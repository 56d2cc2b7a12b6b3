import type { WorkbookStore } from '../state/workbook-store';
import type { Printer } from '../ui/printer';

/** The printer, itself fetched when something is first printed. */
export function browserPrinter(workbook: WorkbookStore, locale: string): Printer {
  const jobs = async () => (await import('./print-jobs')).printJobs(workbook, locale);
  return {
    benchCard: async (...asked) => (await jobs()).benchCard(...asked),
    template: async (...asked) => (await jobs()).template(...asked),
    netFile: async (...asked) => (await jobs()).netFile(...asked),
    handout: async (...asked) => (await jobs()).handout(...asked),
    handoutPage: async (...asked) => (await jobs()).handoutPage(...asked),
    decorateMap: async (...asked) => (await jobs()).decorateMap(...asked),
    kitLabels: async (...asked) => (await jobs()).kitLabels(...asked),
    cuttingSheets: async (...asked) => (await jobs()).cuttingSheets(...asked),
    nestedSheet: async (...asked) => (await jobs()).nestedSheet(...asked),
    shoppingList: async (...asked) => (await jobs()).shoppingList(...asked),
    shoppingTable: async (...asked) => (await jobs()).shoppingTable(...asked),
    runSheet: async (...asked) => (await jobs()).runSheet(...asked),
    calendar: async (...asked) => (await jobs()).calendar(...asked),
  };
}

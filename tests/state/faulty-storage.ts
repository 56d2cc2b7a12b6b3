import type { FaultKind, WorkbookStorage } from '../../src/storage/port';

/** A storage whose next writes fail as told: with a fault, or (`late`) by keeping the rows and then not saying so. */
export function faultyStorage(storage: WorkbookStorage) {
  const plan: (FaultKind | 'late')[] = [];
  const writes: number[] = [];
  const faulty: WorkbookStorage = {
    ...storage,
    async write(...args) {
      writes.push(Date.now());
      const kind = plan.shift();
      if (kind === undefined) return storage.write(...args);
      if (kind === 'late') await storage.write(...args);
      return { ok: false, fault: { kind: kind === 'late' ? 'slow' : kind, detail: 'as planned' } };
    },
  };
  return { faulty, plan, writes };
}

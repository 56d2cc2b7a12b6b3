import { MemoryDisk, openMemory } from '../../src/storage/memory';
import type { StoreName } from '../../src/storage/transaction';
import { describeStorage } from './acceptance';

describeStorage('memory', () => {
  const disk = new MemoryDisk();
  return {
    open: () => Promise.resolve(openMemory(disk)),
    plant: (table, row) => {
      disk.contents[table as StoreName].set(row.id, row);
    },
    lose: (table, id) => {
      disk.contents[table as StoreName].delete(id);
    },
    countOutside: (census) => {
      disk.outside = census;
    },
  };
});

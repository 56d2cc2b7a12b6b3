import { MemoryDisk, openMemory } from '../../src/storage/memory';
import type { StoreName } from '../../src/storage/transaction';
import { describeStorage } from './acceptance';

describeStorage('memory', async () => {
  const disk = new MemoryDisk();
  return {
    open: async () => openMemory(disk),
    plant: async (table, row) => void disk.contents[table as StoreName].set(row.id, row),
    lose: async (table, id) => void disk.contents[table as StoreName].delete(id),
    countOutside: (census) => {
      disk.outside = census;
    },
  };
});

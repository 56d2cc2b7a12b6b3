import type { ExchangeDoor } from '../state/ports';
import type { SharingDesk } from '../state/sharing';
import { memoryOfSharing } from './memory-of-sharing';
import { SharedShelf, type SharingWorld } from './shared-shelf';

/** Takes up what the workbook in `database` shares. */
export async function openSharing(
  door: ExchangeDoor,
  database: string,
  world: Omit<SharingWorld, 'memory'>,
): Promise<SharingDesk> {
  const shelf = new SharedShelf(door, { ...world, memory: memoryOfSharing(database) });
  await shelf.start();
  return shelf;
}

import type { ExchangeDoor } from '../state/ports';
import type { SharingDesk } from '../state/sharing';
import { readLink } from './keys';
import { memoryOfSharing } from './memory-of-sharing';
import { SharedShelf, type SharingWorld } from './shared-shelf';

/** Takes up what the workbook in `database` shares. `link`: what this page was opened for, if it is a learner's or a helper's. */
export async function openSharing(
  door: ExchangeDoor,
  database: string,
  link: string | null,
  world: Omit<SharingWorld, 'memory'>,
): Promise<SharingDesk> {
  const shelf = new SharedShelf(door, { ...world, memory: memoryOfSharing(database) });
  await shelf.start(link === null ? null : readLink(link));
  return shelf;
}

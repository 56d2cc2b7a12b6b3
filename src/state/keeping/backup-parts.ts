import { FILE_LIMITS } from '../../../shared/read-workbook';
import { workbookOf, writeWorkbook } from '../../../shared/write-workbook';
import { rowsOf, type Shelf } from '../shelf';

/** One file of a backup: its place among them, and its text. */
export interface BackupPart {
  readonly number: number;
  readonly of: number;
  readonly text: string;
}

/**
 * Everything on the shelf, photos too, as one file; as several only where one would be larger than what is read in again
 * (`mostBytes`). The first holds everything but photos that found no room in it, the others hold those.
 */
export function backupParts(shelf: Shelf, mostBytes = FILE_LIMITS.backupBytes): readonly BackupPart[] {
  const { photos, ...others } = rowsOf(shelf);
  const bare = writeWorkbook(workbookOf('everything', others));
  const groups: (typeof photos)[] = [[]];
  // A photo's row is a few hundred letters and its picture, all of one byte; names may take four bytes a letter.
  let room = mostBytes - new TextEncoder().encode(bare).length;
  for (const photo of photos) {
    const size = photo.jpeg.length + 2000;
    if (size > room) {
      groups.push([]);
      room = mostBytes - 2000;
    }
    groups.at(-1)?.push(photo);
    room -= size;
  }
  return groups.map((group, at) => ({
    number: at + 1,
    of: groups.length,
    text:
      group.length === 0
        ? bare
        : writeWorkbook(
            workbookOf('everything', at === 0 ? { ...others, photos: group } : { photos: group }),
          ),
  }));
}

/** `crease-and-count-2026-11-26.json`; with its number where there are several. `day` is `YYYY-MM-DD`. */
export const partName = (day: string, { number, of }: Pick<BackupPart, 'number' | 'of'>): string =>
  `crease-and-count-${day}${of > 1 ? `-${number}-of-${of}` : ''}`;

/** The day of a moment where the maker is, as `YYYY-MM-DD`. */
export function dayOf(milliseconds: number): string {
  const date = new Date(milliseconds);
  const two = (number: number) => `${number}`.padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

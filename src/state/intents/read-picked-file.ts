import { FILE_LIMITS, readWorkbook } from '../../../shared/read-workbook';
import type { WorkbookFile } from '../../../shared/workbook';
import type { Refusal } from '../../core/rows/refusals';

export type PickedReading =
  | { readonly ok: true; readonly file: WorkbookFile }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** A file the maker picked or dropped: its size is asked before a byte of it is read. The file itself stays the maker’s. */
export async function readPickedFile(picked: Pick<Blob, 'size' | 'arrayBuffer'>): Promise<PickedReading> {
  const { backupBytes } = FILE_LIMITS;
  if (picked.size > backupBytes) {
    const found = `${picked.size} bytes`;
    return {
      ok: false,
      refusals: [{ code: 'too-large', path: '', found, expected: `at most ${backupBytes} bytes` }],
    };
  }
  return readWorkbook(new Uint8Array(await picked.arrayBuffer()));
}

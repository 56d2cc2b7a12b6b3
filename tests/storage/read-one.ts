import type { AnyRow, TableName } from '../../shared/tables';
import type { WorkbookStorage } from '../../src/storage/port';

/** One row as it stands in a storage now. */
export async function readOne(
  storage: WorkbookStorage,
  table: TableName,
  id: string,
): Promise<AnyRow | 'gone' | 'unreadable'> {
  const read = await storage.readRows([{ table, id }]);
  if (!read.ok) throw new Error(read.fault.detail);
  return read.value[0] ?? 'gone';
}

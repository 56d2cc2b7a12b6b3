import { workbookFile } from '../../shared/workbook';
import type { WorkbookState } from '../state/workbook-state';

/**
 * Puts the example on the shelf; the id of its event, or null if it could not be read. The file is one of ours: its fields are read like
 * anybody's, the gates for files from elsewhere are not asked.
 */
export function placeExample(
  text: string,
  { planImport, placeExample: place }: WorkbookState,
): string | null {
  const reading = workbookFile.safeParse(JSON.parse(text));
  if (!reading.success) return null;
  const plan = planImport(reading.data);
  place(plan);
  return plan.rows.find(({ table }) => table === 'events')?.row.id ?? null;
}

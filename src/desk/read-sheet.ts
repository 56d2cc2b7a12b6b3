import { SHEETS, sheetById } from '../../shared/catalogue';
import { sheetAsSold } from '../core/plan';
import type { LengthUnit } from '../core/units';
import type { SheetPaper } from '../core/yield';
import { suggestName } from './nearest-name';
import { refuse } from './refuse';
import type { DeskRefusal } from './verb';

const USUAL = { in: 'letter', mm: 'a4' } as const;

/** A sheet of the catalogue by its id, unsquared and without grain; the usual one of the unit where none is named. */
export function readSheet(
  id: string | undefined,
  unit: LengthUnit,
  refused: DeskRefusal[],
): SheetPaper | null {
  const sheet = sheetById(id ?? USUAL[unit]);
  if (!sheet) {
    const ids = SHEETS.map((each) => each.id);
    const says = `There is no sheet “${id}”. ${suggestName(id ?? '', ids)}`;
    refused.push(refuse('unknown-sheet', '--sheet', id ?? '', ids.join(', '), says));
    return null;
  }
  return sheetAsSold(sheet);
}

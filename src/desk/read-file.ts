import { readWorkbook } from '../../shared/read-workbook';
import type { WorkbookFile } from '../../shared/workbook';
import { bringStylesOf } from '../core/style-file/own-style';
import { suggestName } from './nearest-name';
import { refuse, refuseInFile } from './refuse';
import type { Desk, DeskRefusal } from './verb';

/** A saved workbook, or null with the reasons added to `refused`. */
export function readWorkbookFile(path: string, desk: Desk, refused: DeskRefusal[]): WorkbookFile | null {
  const text = desk.read(path);
  if (typeof text !== 'string') {
    refused.push(text);
    return null;
  }
  const reading = readWorkbook(text);
  if (reading.ok) {
    bringStylesOf(reading.file.recipes);
    return reading.file;
  }
  refused.push(...reading.refusals.map((refusal) => refuseInFile(path, refusal)));
  return null;
}

/** The row of this id; without an id, the only one. Null with the reason added to `refused`. `noun` names the rows and the option. */
export function chooseRow<Row extends { readonly id: string }>(
  rows: readonly Row[],
  id: string | undefined,
  noun: 'recipe' | 'event',
  path: string,
  refused: DeskRefusal[],
): Row | null {
  const [only] = rows;
  if (id === undefined && only && rows.length === 1) return only;
  const named = rows.find((row) => row.id === id);
  if (named) return named;
  const ids = rows.map((row) => row.id);
  const names = ids.join(', ');
  if (rows.length === 0)
    refused.push(refuse(`no-${noun}`, path, 'none', `one ${noun}`, `${path} holds no ${noun}.`));
  else if (id === undefined) {
    const says = `${path} holds ${rows.length} ${noun}s. Name one: --${noun} and one of ${names}.`;
    refused.push(refuse(`which-${noun}`, `--${noun}`, '', names, says));
  } else {
    const says = `${path} holds no ${noun} “${id}”. ${suggestName(id, ids)}`;
    refused.push(refuse(`unknown-${noun}`, `--${noun}`, id, names, says));
  }
  return null;
}

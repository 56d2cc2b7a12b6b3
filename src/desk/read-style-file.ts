import { notABox } from '../core/proof';
import { readStyle } from '../core/style-file/read-style';
import type { StyleRefusal } from '../core/style-file/style-refusal';
import type { BoxStyle } from '../core/styles';
import { type Ruler, rulerBeside } from '../core/units';
import { describeFinding } from './describe-finding';
import { refuse } from './refuse';
import type { Desk, DeskRefusal } from './verb';

/** The style of a file, or everything for which it is no box; `refused` gets the reasons. */
export function readStyleFile(path: string, desk: Desk, refused: DeskRefusal[]): BoxStyle | null {
  const text = desk.read(path);
  if (typeof text !== 'string') {
    refused.push(text);
    return null;
  }
  const reading = readStyle(text);
  const refusals = reading.ok ? notABox(reading.style) : reading.refusals;
  refused.push(...refusals.map((refusal) => refuseStyle(path, refusal)));
  return reading.ok && refusals.length === 0 ? reading.style : null;
}

/** Both units, since nobody has said yet which one the file is written for. */
const RULER: Ruler = rulerBeside('in');

function refuseStyle(file: string, refusal: StyleRefusal): DeskRefusal {
  const { says, remedy } = describeFinding({ ...refusal, severity: 'stop', where: refusal.path }, RULER);
  return refuse(refusal.code, `${file}: ${refusal.path}`, says, remedy, `${file}: ${says} ${remedy}`);
}

import type { Room } from '../core/fit';
import { type LengthUnit, readLength } from '../core/units';
import { refuse } from './refuse';
import type { DeskRefusal, Given } from './verb';

/** `3 1/2 × 1 1/2 × 3 in`; a unit at the end holds for all three. Null where the option is not given, or refused. */
export function readRoom(given: Given, name: string, unit: LengthUnit, refused: DeskRefusal[]): Room | null {
  const text = given.one[name];
  if (text === undefined) return null;
  const last = /(in|mm|cm)\s*$/.exec(text)?.[1];
  const sides = text.split(/\s*[×x]\s*/).flatMap((side) => {
    const read = readLength(last && !/[a-z"]/.test(side) ? `${side} ${last}` : side, unit);
    return read.ok && read.length > 0 ? [read.length] : [];
  });
  const [width, depth, height, ...more] = sides;
  if (width && depth && height && more.length === 0) return [width, depth, height];
  const says = `--${name} is “${text}”. Write width × depth × height, such as '3 1/2 × 1 1/2 × 3 in'.`;
  refused.push(refuse('not-a-room', `--${name}`, text, 'three lengths', says));
  return null;
}

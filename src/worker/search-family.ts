import { outsideAtMost } from '../core/draw/step/outside-at-most';
import { type FamilyMember, findFamily } from '../core/fit';
import { styleById } from '../core/styles';
import type { FamilyAsk } from './fit-messages';

/** A family member by member, so that whoever runs it can show what there is, or stop, between two of them. */
export function* searchFamily(ask: FamilyAsk): Generator<FamilyMember> {
  const style = styleById(ask.styleId);
  if (style) yield* findFamily({ ...ask, style }, (box) => outsideAtMost(box, ask.caliperUm));
}

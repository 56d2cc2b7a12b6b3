import type { PieceNet } from '../net/types';

/** Every hinge's angle after each act of closing, starting with the flat blank: one more state than there are acts. */
export function closingStates(piece: PieceNet): number[][] {
  const states = [piece.hinges.map(() => 0)];
  for (const act of piece.closing) {
    const angles = [...(states[states.length - 1] ?? [])];
    if (act.do !== 'glue')
      act.hinges.forEach((hinge, at) => {
        angles[hinge] = act.toDeg[at] ?? 0;
      });
    states.push(angles);
  }
  return states;
}

/** Angles part of the way through an act (0 at its start, 1 at its end): all its hinges turn together, so a glued tube stays closed. */
export function anglesDuring(states: readonly (readonly number[])[], act: number, part: number): number[] {
  const [from, to] = [states[act] ?? [], states[act + 1] ?? states[act] ?? []];
  return from.map((angle, hinge) => angle + ((to[hinge] ?? angle) - angle) * part);
}

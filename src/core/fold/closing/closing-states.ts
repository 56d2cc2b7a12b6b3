import type { ClosingAct, PieceNet } from '../../net/types';

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

/**
 * Angles part of the way through an act (0 at its start, 1 at its end): all its hinges turn together, so a glued tube stays closed. `acts`
 * are the piece's, where panels that are glued to one another turn unevenly; between the angles they name everything turns evenly.
 */
export function anglesDuring(
  states: readonly (readonly number[])[],
  act: number,
  part: number,
  acts: readonly ClosingAct[] = [],
): number[] {
  const [from, to] = [states[act] ?? [], states[act + 1] ?? states[act] ?? []];
  const stops = [from, ...stopsOf(from, acts[act]), to];
  const place = Math.min(part, 1) * (stops.length - 1);
  const at = Math.min(Math.floor(place), stops.length - 2);
  const [before, after] = [stops[at] ?? from, stops[at + 1] ?? to];
  return before.map((angle, hinge) => angle + ((after[hinge] ?? angle) - angle) * (place - at));
}

/** All angles at the stops an act names on its way. */
function stopsOf(from: readonly number[], act: ClosingAct | undefined): readonly (readonly number[])[] {
  if (act === undefined || act.do === 'glue') return [];
  return (act.through ?? []).map((degrees) => {
    const angles = [...from];
    act.hinges.forEach((hinge, at) => {
      angles[hinge] = degrees[at] ?? angles[hinge] ?? 0;
    });
    return angles;
  });
}

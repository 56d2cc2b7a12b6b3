import type { BoxStyle, Chosen, ConstraintSpec } from './types';

/** The limits of a style that hold for these choices of its options. */
export const limitsFor = (style: BoxStyle, chosen: Chosen): readonly ConstraintSpec[] =>
  style.constraints.filter(
    ({ given }) => given === undefined || given.some((choice) => isPartOf(choice, chosen)),
  );

const isPartOf = (choice: Chosen, chosen: Chosen): boolean =>
  Object.entries(choice).every(([option, id]) => chosen[option] === id);

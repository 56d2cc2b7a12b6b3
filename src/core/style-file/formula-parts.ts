import type { Chosen, Values } from '../styles/language/types';
import type { Fact } from '../units/reason';
import { textFacts } from './style-refusal';

/** What stands in a formula that is not taken: a template with its facts, and what to write. */
export interface FormulaSlip {
  readonly says: string;
  readonly facts: Readonly<Record<string, Fact>>;
  readonly remedy: string;
}

/** Names that a formula may use: lengths, workings, and options with the ids of their choices. */
export interface KnownNames {
  readonly lengths: ReadonlySet<string>;
  readonly options: ReadonlyMap<string, readonly string[]>;
  readonly workings?: ReadonlyMap<string, Working>;
  /** What an integral goes over; there is one at a time. */
  readonly over?: { readonly name: string; readonly kind: number };
}

/** A named step of other formulas, in any unit and never rounded; counted once each time a formula is. */
export interface Working {
  readonly kind: number | 'any';
  readonly run: (values: Values, chosen: Chosen, scope: Scope) => number;
}

/** Workings counted so far, and what an integral goes over just now. */
type Scope = Map<string, number>;

/** How high a length may be raised: a room is a length to the third. source: our own */
const MOST_POWER = 6;

/** Millimeters to a power (0: a bare number or degrees), `any` for a bare zero; a comparison; or an option's choice. */
export type Kind = number | 'any' | 'truth' | 'choice';

/** A part of a formula: its unit, and how it is counted. */
export interface Part {
  readonly kind: Kind;
  readonly run: Working['run'];
}

/** Thrown while a formula is read, and caught by who reads it. */
export class Slip extends Error {
  readonly slip: FormulaSlip;
  constructor(slip: FormulaSlip) {
    super(slip.says);
    this.slip = slip;
  }
}

/** Gives up a formula: what stands there, why not, and what to write. */
export const slip = (says: string, facts: Readonly<Record<string, string>>, remedy: string): never => {
  throw new Slip({ says, facts: textFacts(facts), remedy });
};

/** source: 25.4 mm by definition */
export const CONSTANTS: Readonly<Record<string, Part>> = {
  in: { kind: 1, run: () => 25.4 },
  mm: { kind: 1, run: () => 1 },
  pi: { kind: 0, run: () => Math.PI },
};

/** Is a name of the file something else already? */
export const isTaken = (name: string, { lengths, options, workings }: KnownNames): boolean =>
  Object.hasOwn(CONSTANTS, name) || lengths.has(name) || options.has(name) || workings?.has(name) === true;

/** A unit in words. */
export const nameOf = (kind: Kind): string =>
  kind === 0
    ? 'a number or degrees'
    : kind === 1
      ? 'a length'
      : kind === 2
        ? 'an area'
        : kind === 3
          ? 'a volume'
          : typeof kind === 'string'
            ? 'no number'
            : `a length to the power ${kind}`;

/** A part that is a number, whatever its unit. */
export const number = (part: Part, operator: string): Part & { readonly kind: number | 'any' } =>
  typeof part.kind === 'number' || part.kind === 'any'
    ? { kind: part.kind, run: part.run }
    : slip(
        '{operator} needs numbers on both sides.',
        { operator },
        'Put the comparison into brackets before a ?.',
      );

/** The unit that both share; a bare zero has any. */
export function shared(p: Part, q: Part, operator: string): Kind {
  const [one, other] = [number(p, operator).kind, number(q, operator).kind];
  if (one === 'any') return other;
  if (other === 'any' || other === one) return one;
  return slip(
    '{operator} joins {one} and {other}.',
    { operator, one: nameOf(one), other: nameOf(other) },
    'Write a length with its unit, such as 1/8 * in.',
  );
}

/** A power that can be counted with. */
export const bounded = (power: number): number =>
  Math.abs(power) <= MOST_POWER
    ? power
    : slip(
        'A length to the power {power} is more than can be counted with.',
        { power: `${power}` },
        'Divide before you multiply on.',
      );

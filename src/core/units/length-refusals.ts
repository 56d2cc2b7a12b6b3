interface Explanation {
  readonly reason: string;
  readonly remedy: string;
}

/** Every way a typed length can be turned away: why, and what to write instead. The maker's own text is kept beside it. */
const EXPLANATIONS = {
  empty: { reason: 'Nothing is written here.', remedy: 'Write a length such as 3 1/2 in or 89 mm.' },
  'no-number': {
    reason: 'There is a unit but no number.',
    remedy: 'Write the number before the unit, such as 3 1/2 in.',
  },
  unfinished: { reason: 'The number stops in the middle.', remedy: 'Finish it, such as 3 1/2 or 3.5.' },
  negative: { reason: 'A length cannot be less than nothing.', remedy: 'Write it without the minus sign.' },
  separators: {
    reason: 'The comma or point may mark thousands or a decimal.',
    remedy: 'Write thousands without a mark, and decimals with a point, such as 1.25.',
  },
  'zero-denominator': {
    reason: 'Nothing can be divided into 0 parts.',
    remedy: 'Write the fraction with 2, 4, 8, 16 or 32 below.',
  },
  'improper-after-whole': {
    reason: 'The fraction after the whole number is itself 1 or more.',
    remedy: 'Carry the whole part over, such as 4 1/4 for 3 5/4.',
  },
  'two-fractions': {
    reason: 'There is more than one fraction.',
    remedy: 'Write one whole number and one fraction, such as 3 1/2.',
  },
  'two-numbers': {
    reason: 'Two numbers stand side by side.',
    remedy: 'Write one number, or a whole number and a fraction such as 3 1/2.',
  },
  feet: { reason: 'Feet are not read here.', remedy: 'Write inches or millimetres; 1 foot is 12 in.' },
  'unknown-unit': {
    reason: 'The unit is not one that is read here.',
    remedy: 'Use in, mm or cm, or leave the unit out.',
  },
  'not-a-length': {
    reason: 'This does not read as a length.',
    remedy: 'Write a length such as 3 1/2, 3.5, 89 mm or 8.9 cm.',
  },
  'too-long': {
    reason: 'This is longer than 2000 mm (78 3/4 in).',
    remedy: 'Check the unit: inches or millimetres?',
  },
  'too-short': {
    reason: 'This is too small to cut: under 1/640 mm.',
    remedy: 'Check the unit and the decimal point.',
  },
} as const satisfies Record<string, Explanation>;

export type LengthRefusal = keyof typeof EXPLANATIONS;

export interface RefusedLength extends Explanation {
  readonly ok: false;
  readonly code: LengthRefusal;
  /** The maker's text, unchanged. */
  readonly found: string;
}

export const LENGTH_REFUSALS = Object.keys(EXPLANATIONS) as readonly LengthRefusal[];

export const refuseLength = (code: LengthRefusal, found: string): RefusedLength => ({
  ok: false,
  code,
  found,
  ...EXPLANATIONS[code],
});

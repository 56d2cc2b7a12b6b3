interface Explanation {
  readonly reason: string;
  readonly remedy: string;
}

/** Every way a typed length can be turned away: why, and what to write instead. The maker's own text is kept beside it. */
const EXPLANATIONS = {
  empty: { reason: 'This is empty.', remedy: 'Type a length such as 3 1/2 in or 89 mm.' },
  'no-number': {
    reason: 'The number is missing.',
    remedy: 'Type the number before the unit, such as 3 1/2 in.',
  },
  unfinished: { reason: 'The number isn’t finished.', remedy: 'Finish it, such as 3 1/2 or 3.5.' },
  negative: { reason: 'A length can’t be negative.', remedy: 'Leave out the minus sign.' },
  separators: {
    reason: 'The comma or point could mean thousands or a decimal.',
    remedy: 'Type decimals with a point, such as 1.25, and thousands without a mark.',
  },
  'zero-denominator': {
    reason: 'A fraction can’t have 0 below.',
    remedy: 'Use 2, 4, 8, 16 or 32 below.',
  },
  'improper-after-whole': {
    reason: 'The fraction is 1 or more.',
    remedy: 'Add its whole part to the number, such as 4 1/4 for 3 5/4.',
  },
  'two-fractions': {
    reason: 'There is more than one fraction.',
    remedy: 'Type one whole number and one fraction, such as 3 1/2.',
  },
  'two-numbers': {
    reason: 'There are two numbers.',
    remedy: 'Type one number, or a whole number and a fraction such as 3 1/2.',
  },
  feet: { reason: 'We can’t read feet.', remedy: 'Use inches or millimeters. 1 foot is 12 in.' },
  'unknown-unit': {
    reason: 'We don’t know this unit.',
    remedy: 'Use in, mm or cm, or leave the unit out.',
  },
  'not-a-length': {
    reason: 'This isn’t a length.',
    remedy: 'Type a length such as 3 1/2, 3.5, 89 mm or 8.9 cm.',
  },
  'too-long': {
    reason: 'This is longer than 2000 mm (78 3/4 in).',
    remedy: 'Check the unit: inches or millimeters?',
  },
  'too-short': {
    reason: 'This is too small to cut (under 1/640 mm).',
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

import type { LengthUnit } from '../../../core/units';

export const partMessages = {
  field: {
    fractions: 'Fractions of an inch',
    notYet: 'not a length yet',
    /** No more letters fit. */
    full: (most: string) => `This text is full at ${most} characters. Anything longer was cut off.`,
    use: (value: string) => `Use ${value}`,
    tooShort: (said: string, limit: string) => `${said} is too short. Use ${limit} or more.`,
    tooLong: (said: string, limit: string) => `${said} is too long. Use ${limit} or less.`,
    filled: (size: string, fields: string) => `We filled in ${fields}: ${size}. Undo takes all of them back.`,
    otherCount: (count: number, fields: string) =>
      `We read ${count} lengths here. Write one, or one each for ${fields}.`,
    between: (off: string, markIsLonger: boolean) =>
      `This is between your ruler’s marks. The nearest is ${off} ${markIsLonger ? 'more' : 'less'}.`,
    heard: {
      'improper-fraction': (typed: string, said: string) =>
        `We read ${typed} as ${said}. For a whole number and a fraction, put a space between.`,
      'other-unit': (typed: string, said: string) => `We read ${typed} in the other unit: ${said}.`,
      'fraction-of-millimetre': (typed: string, said: string) =>
        `We read ${typed} as a fraction of a millimeter: ${said}. Did you mean inches?`,
      'three-decimals': (typed: string, said: string) =>
        `We read ${typed} with a decimal point: ${said}. For thousands, leave the mark out.`,
    },
    numberBetween: (least: string, most: string) => `Type a number from ${least} to ${most}.`,
    oneMore: (what: string) => `${what}: one more`,
    oneFewer: (what: string) => `${what}: one fewer`,
  },
  drawing: {
    view: 'Zoom',
    closer: 'Zoom in',
    farther: 'Zoom out',
    whole: 'Fit',
    line: 'Line',
    fromLeft: 'from left',
    fromTop: 'from top',
    gap: 'from last',
    slanted: 'slanted',
    curved: 'curved',
    legend: 'What the lines mean',
    square: (unit: LengthUnit) =>
      unit === 'in' ? 'One square of the mat is 1 in' : 'One square of the mat is 1 cm',
    allIn: (unit: LengthUnit) => (unit === 'in' ? 'in inches' : 'in millimeters'),
  },
  working: { how: 'How we got this', pressLine: 'Tap one to see how it’s worked out.' },
  lines: {
    edge: 'edge',
    cut: 'cut',
    'score-valley': 'score',
    'score-mountain': 'score, away',
    'score-flat': 'score, flat',
    slit: 'slit',
  },
  findings: {
    title: 'Checks on this box',
    event: 'Problems to fix',
    severity: { stop: 'Won’t fold.', warn: 'Will fold, but not well.', note: 'Good to know.' },
    mends: {
      'part-fits-across-grain': 'Allow the grain either way',
      'guests-differ': 'Follow the guest list',
    },
    mend: (size: string, value: string) => `${size} to ${value}`,
  },
  saving: {
    saved: 'Saved',
    saving: 'Saving',
    'not-saved': 'Not saved',
    'memory-only': 'Only until you close this tab',
  },
  printing: {
    paper: 'Paper in the printer',
    letter: 'letter',
    a4: 'A4',
    making: 'Making the pages',
    failed: 'We couldn’t make the pages. Try again.',
    table: 'Save as a table (CSV)',
    lost: (letters: string) => `This print can’t show these letters: ${letters}. Each prints as “?”.`,
    anyway: 'Print anyway',
  },
  refusals: {
    'too-large': (found: string, expected: string) => `The file is too large (${found}; ${expected}).`,
    'not-utf8': () => 'The file isn’t plain text (UTF-8).',
    'too-deep': (found: string, expected: string) => `The file has too many levels (${found}; ${expected}).`,
    'not-json': (found: string) => `The file is cut off or isn’t JSON: ${found}.`,
    'repeated-key': (found: string) => `The field ${found} appears twice.`,
    'not-a-workbook': (found: string, expected: string) =>
      `This isn’t a file of boxes or events (found ${found}, expected ${expected}).`,
    'newer-schema': (found: string, expected: string) =>
      `A newer version made this file (${found}; this one reads ${expected}).`,
    'missing-field': (_found: string, expected: string) => `Something is missing: ${expected}.`,
    'unknown-field': (found: string) => `We don’t know the field ${found}.`,
    'wrong-type': (found: string, expected: string) => `Expected ${expected}, found ${found}.`,
    'not-whole': (found: string) => `${found} isn’t a whole number.`,
    'too-small': (found: string, expected: string) => `${found} is too small: ${expected}.`,
    'too-big': (found: string, expected: string) => `${found} is too big: ${expected}.`,
    'off-tick': (found: string) => `${found} mm is too fine. We store lengths to 1/320 mm.`,
    'not-a-choice': (found: string, expected: string) => `${found} isn’t one of ${expected}.`,
    'bad-spelling': (found: string) => `${found} isn’t spelled right.`,
    empty: () => 'A name is missing.',
    'too-long': (_found: string, expected: string) => `A text is too long: ${expected}.`,
    'too-many': (found: string, expected: string) => `There are too many entries: ${found}, ${expected}.`,
    'same-id': (found: string) => `Two entries have the id ${found}.`,
    damaged: () => 'This link was cut or changed on its way. Ask for it again, or for the file.',
  },
};

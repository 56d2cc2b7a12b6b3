import type { PartWords } from '../../ui/words/part-words';

export const partMessages: PartWords = {
  field: {
    fractions: 'Fractions of an inch',
    notYet: 'not a length yet',
    use: (value) => `Use ${value}`,
    tooShort: (said, limit) => `${said} is too short. Use ${limit} or more.`,
    tooLong: (said, limit) => `${said} is too long. Use ${limit} or less.`,
    between: (off, markIsLonger) =>
      `This is between your ruler’s marks. The nearest is ${off} ${markIsLonger ? 'more' : 'less'}.`,
    heard: {
      'improper-fraction': (typed, said) =>
        `We read ${typed} as ${said}. For a whole number and a fraction, put a space between.`,
      'other-unit': (typed, said) => `We read ${typed} in the other unit: ${said}.`,
      'fraction-of-millimetre': (typed, said) =>
        `We read ${typed} as a fraction of a millimeter: ${said}. Did you mean inches?`,
      'three-decimals': (typed, said) =>
        `We read ${typed} with a decimal point: ${said}. For thousands, leave the mark out.`,
    },
    numberBetween: (least, most) => `Type a number from ${least} to ${most}.`,
    oneMore: (what) => `${what}: one more`,
    oneFewer: (what) => `${what}: one fewer`,
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
    square: (unit) => (unit === 'in' ? 'One square of the mat is 1 in' : 'One square of the mat is 1 cm'),
    allIn: (unit) => (unit === 'in' ? 'in inches' : 'in millimeters'),
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
    mends: { 'part-fits-across-grain': 'Allow the grain either way' },
    mend: (size, value) => `${size} to ${value}`,
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
  },
  refusals: {
    'too-large': (found, expected) => `The file is too large (${found}; ${expected}).`,
    'not-utf8': () => 'The file isn’t plain text (UTF-8).',
    'too-deep': (found, expected) => `The file has too many levels (${found}; ${expected}).`,
    'not-json': (found) => `The file is cut off or isn’t JSON: ${found}.`,
    'repeated-key': (found) => `The field ${found} appears twice.`,
    'not-a-workbook': (found, expected) =>
      `This isn’t a file of boxes or events (found ${found}, expected ${expected}).`,
    'newer-schema': (found, expected) =>
      `A newer version made this file (${found}; this one reads ${expected}).`,
    'missing-field': (_found, expected) => `Something is missing: ${expected}.`,
    'unknown-field': (found) => `We don’t know the field ${found}.`,
    'wrong-type': (found, expected) => `Expected ${expected}, found ${found}.`,
    'not-whole': (found) => `${found} isn’t a whole number.`,
    'too-small': (found, expected) => `${found} is too small: ${expected}.`,
    'too-big': (found, expected) => `${found} is too big: ${expected}.`,
    'off-tick': (found) => `${found} mm is too fine. We store lengths to 1/320 mm.`,
    'not-a-choice': (found, expected) => `${found} isn’t one of ${expected}.`,
    'bad-spelling': (found) => `${found} isn’t spelled right.`,
    empty: () => 'A name is missing.',
    'too-long': (_found, expected) => `A text is too long: ${expected}.`,
    'too-many': (found, expected) => `There are too many entries: ${found}, ${expected}.`,
    'same-id': (found) => `Two entries have the id ${found}.`,
  },
};

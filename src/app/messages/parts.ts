import type { PartWords } from '../../ui/words/part-words';

export const partMessages: PartWords = {
  field: {
    fractions: 'Fractions of an inch',
    notYet: 'not a length yet',
    use: (value) => `Use ${value}`,
    tooShort: (said, limit) => `${said} is too short here. The least is ${limit}.`,
    tooLong: (said, limit) => `${said} is too long here. The most is ${limit}.`,
    between: (off, markIsLonger) =>
      `This lies between the marks of your ruler. The nearest is ${off} ${markIsLonger ? 'more' : 'less'}.`,
    heard: {
      'improper-fraction': (typed, said) =>
        `${typed} was read as ${said}. If you meant a whole number and a fraction, put a space between them.`,
      'other-unit': (typed, said) => `${typed} was read in the other unit: ${said}.`,
      'fraction-of-millimetre': (typed, said) =>
        `${typed} was read as a fraction of a millimetre: ${said}. Did you mean inches?`,
      'three-decimals': (typed, said) =>
        `${typed} was read with a decimal mark: ${said}. If you meant thousands, leave the mark out.`,
    },
    numberBetween: (least, most) => `Write a number from ${least} to ${most}.`,
    oneMore: (what) => `${what}: one more`,
    oneFewer: (what) => `${what}: one fewer`,
  },
  drawing: {
    view: 'How close to look',
    closer: 'Closer',
    farther: 'Farther',
    whole: 'The whole drawing',
    line: 'Line',
    fromLeft: 'from left',
    fromTop: 'from top',
    gap: 'gap',
    slanted: 'slanted',
    curved: 'curved',
    legend: 'What the lines mean',
    square: (unit) => (unit === 'in' ? 'One square of the mat is 1 in' : 'One square of the mat is 1 cm'),
    allIn: (unit) => (unit === 'in' ? 'in inches' : 'in millimetres'),
  },
  working: { how: 'How it comes about', pressLine: 'Press one to see how its place comes about.' },
  lines: {
    edge: 'card edge',
    cut: 'cut',
    'score-valley': 'score',
    'score-mountain': 'score, away',
    'score-flat': 'score, flat',
    slit: 'slit',
  },
  findings: {
    title: 'What to know about this box',
    event: 'What stands in the way',
    severity: { stop: 'It cannot be folded so.', warn: 'It will disappoint.', note: 'Good to know.' },
    mends: { 'part-fits-across-grain': 'Let the grain run either way' },
    mend: (size, value) => `${size} to ${value}`,
  },
  saving: {
    saved: 'Saved',
    saving: 'Saving',
    'not-saved': 'Not saved',
    'memory-only': 'Kept until you close this tab',
  },
  printing: {
    paper: 'Paper in the printer',
    letter: 'letter',
    a4: 'A4',
    making: 'Drawing the pages',
    failed: 'The pages could not be drawn. Try again.',
    table: 'Save as a table (CSV)',
  },
  refusals: {
    'too-large': (found, expected) => `The file is too large (${found}; ${expected}).`,
    'not-utf8': () => 'The file is not plain text in UTF-8.',
    'too-deep': (found, expected) => `The file is nested too deeply (${found}; ${expected}).`,
    'not-json': (found) => `The file breaks off or is not JSON: ${found}.`,
    'repeated-key': (found) => `The field ${found} stands there twice.`,
    'not-a-workbook': (found, expected) =>
      `This is not a file of recipes or events (${found}, expected ${expected}).`,
    'newer-schema': (found, expected) =>
      `The file was written by a newer version (${found}; this one reads ${expected}).`,
    'missing-field': (_found, expected) => `Something is missing: ${expected}.`,
    'unknown-field': (found) => `The field ${found} is not known here.`,
    'wrong-type': (found, expected) => `${found} stands where ${expected} should be.`,
    'not-whole': (found) => `${found} is not a whole number.`,
    'too-small': (found, expected) => `${found} is too small: ${expected}.`,
    'too-big': (found, expected) => `${found} is too big: ${expected}.`,
    'off-tick': (found) => `${found} mm is finer than lengths are kept (1/320 mm).`,
    'not-a-choice': (found, expected) => `${found} is none of ${expected}.`,
    'bad-spelling': (found) => `${found} is not spelled as it must be.`,
    empty: () => 'A name is empty.',
    'too-long': (_found, expected) => `A text is too long: ${expected}.`,
    'too-many': (found, expected) => `There are too many entries: ${found}, ${expected}.`,
    'same-id': (found) => `Two entries share the id ${found}.`,
  },
};

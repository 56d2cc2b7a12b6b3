import { plural } from './plural';

const number = new Intl.NumberFormat('en', { maximumFractionDigits: 2 });

export const pickingMessages = {
  families: {
    tall: (count: number) => `Tall and open (${count})`,
    'tall-lid': (count: number) => `Tall with a top (${count})`,
    tray: (count: number) => `Trays and bowls (${count})`,
    'low-lid': (count: number) => `With a lid or closed to a point (${count})`,
    flat: (count: number) => `Flat packets (${count})`,
    own: (count: number) => `Your styles (${count})`,
  },
  care: 'What matters to you',
  merits: {
    lid: 'Closes with a lid',
    tall: 'Tall',
    'flat-packet': 'Flat packet',
    'no-glue': 'No glue',
    'trimmer-only': 'Scores run edge to edge',
    'one-sheet': 'Fits on one sheet',
  },
  matching: (count: number, of: number) =>
    count === of ? `All ${of} styles.` : `${count} of ${of} styles match.`,
  looking: 'Still looking',
  showAll: 'Show all',
  noneMatch: 'No style has all of these. Clear one.',
  ownSize: 'Try your own size',
  ownSizeHelp: 'Each style uses the sizes that apply to it. We check its limits when you open it.',
  width: 'Width',
  depth: 'Depth',
  height: 'Height',
  widthHelp: 'Left to right, score to score.',
  depthHelp: 'Front to back, score to score.',
  heightHelp: 'From the floor up, score to score.',
  sheet: 'Sheet',
  sheetHelp: 'Counted one box at a time; a batch may need fewer.',
  letter: 'Letter sheet, 8½ × 11 in',
  sheetsPerFavor: (count: number) =>
    count <= 0.5
      ? `${Math.floor(1 / count + 1e-9)} per sheet`
      : `${number.format(count)} ${count <= 1 ? 'sheet' : 'sheets'} per box`,
  tooLarge: 'Too large for the sheet',
  drawOwn: 'Draw your own style',
  drawOwnWhy:
    'Begin with one panel and add the others edge by edge. The box folds up beside it, and we check it at many sizes.',
  drawFloor: 'Start with a floor',
  drawWall: 'Start with a wall',
  drawFrom: 'Start from a style',
  drawFromStyle: 'Style',
  drawFromThis: 'Draw from this one',
  drawnName: 'My style',
  drawnFrom: (style: string) => `My ${style.toLowerCase()}`,
  ownStyle: 'Import a style',
  ownStyleWhy:
    'Did someone send you a style file? Import it and it changes size like the others. We check that it folds.',
  bringStyle: 'Import a style file',
  styleRefused: 'We couldn’t use this style',
  checking: 'Checking the style',
  checked: (done: number, of: number) => `${done} of ${of} sizes checked`,
  sound: (name: string, boxes: number) => `${name} folds well at all ${plural(boxes, 'size')} we tried.`,
  soundBut: (name: string, boxes: number) =>
    `${name} folds well at all ${plural(boxes, 'size')} we tried. Still check this before you cut a batch:`,
  loose: 'Not finished',
  faulty: (name: string, faults: number) =>
    `${name} has ${plural(faults, 'problem')}. You can use it, but fold a test box first.`,
  at: (sizes: string) => `At ${sizes}`,
  stopChecking: 'Stop checking',
  makeStyle: 'Make a box in this style',
  ownNet: 'Import a net',
  ownNetWhy:
    'Have a flat crease pattern saved as FOLD? Import it and use it like any other box. Its sizes stay as drawn.',
  bringIn: 'Import a FOLD file',
  refused: 'We couldn’t make a box from this file',
  asks: 'The file doesn’t say what these lines are. Choose one for each number.',
  drawing: 'The net in the file, with numbered lines',
  kinds: { C: 'cut', V: 'valley', M: 'mountain', F: 'flat' },
  unit: 'Unit of the file',
  unitHelp: 'The file doesn’t say.',
  units: { mm: 'millimeters', cm: 'centimeters', in: 'inches', pt: 'points', m: 'meters', um: 'micrometers' },
  line: (name: string, length: string) => `Line ${name}, ${length}`,
  stillOpen: (count: number) => `${plural(count, 'line')} left to choose.`,
  ready: (pieces: readonly string[]) => `Ready: ${pieces.join('; ')}.`,
  make: 'Make this box',
  leave: 'Cancel',
  newName: 'My net',
};

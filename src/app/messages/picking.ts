import type { PickingWords } from '../../ui/words/picking-words';
import { plural } from './plural';

const number = new Intl.NumberFormat('en', { maximumFractionDigits: 2 });

export const pickingMessages: PickingWords = {
  care: 'What matters to you',
  merits: {
    lid: 'Closes with a lid',
    tall: 'Stands tall',
    'flat-packet': 'Flat packet',
    'no-glue': 'No glue',
    'trimmer-only': 'Every score across the whole card',
    'one-sheet': 'One sheet is enough for a favor',
  },
  matching: (count, of) => (count === of ? `All ${of} styles.` : `${count} of ${of} styles match.`),
  looking: 'Still looking through them.',
  showAll: 'Show all',
  noneMatch: 'No style does all of that. Take one wish back.',
  ownSize: 'Sheets at your size',
  ownSizeHelp:
    'A style takes the sizes it has, and keeps its own for the others. Its limits are checked when you open it.',
  width: 'Width',
  depth: 'Depth',
  height: 'Height',
  widthHelp: 'Left to right, score to score.',
  depthHelp: 'Front to back, score to score.',
  heightHelp: 'From the floor up, score to score.',
  sheet: 'Sheet',
  sheetHelp: 'Each piece laid on sheets of its own; a batch may do with fewer.',
  letter: 'Letter sheet, 8½ × 11 in',
  sheetsPerFavor: (count) =>
    count <= 0.5
      ? `${Math.floor(1 / count + 1e-9)} from a sheet`
      : `${number.format(count)} ${count <= 1 ? 'sheet' : 'sheets'} a favor`,
  tooLarge: 'Larger than the sheet',
  ownNet: 'Your own net',
  ownNetWhy:
    'A flat crease pattern saved as a FOLD file becomes a box like the others: drawn, checked, carded, laid out and counted. Its sizes stay as they are in the file.',
  bringIn: 'Bring in a FOLD file',
  refused: 'This file cannot become a box',
  asks: 'The file does not say what these lines are. Each is drawn with its number; say what it is.',
  drawing: 'The net in the file, its open lines numbered',
  kinds: { C: 'cut', V: 'valley', M: 'mountain', F: 'flat' },
  unit: 'Its numbers are in',
  unitHelp: 'The file does not say.',
  units: { mm: 'millimetres', cm: 'centimetres', in: 'inches', pt: 'points', m: 'metres', um: 'micrometres' },
  line: (name, length) => `Line ${name}, ${length}`,
  stillOpen: (count) => `${plural(count, 'line')} still open.`,
  ready: (pieces) => `Ready: ${pieces.join('; ')}.`,
  make: 'Make this box',
  leave: 'Leave it',
  newName: 'My own net',
};

import type { SheetsWords } from '../../ui/words/sheets-words';
import { plural } from './plural';

const fewerOrMore = (difference: number, one: string): string =>
  difference === 0
    ? 'no difference'
    : `${plural(Math.abs(difference), one)} ${difference < 0 ? 'fewer' : 'more'}`;

export const sheetsMessages: SheetsWords = {
  needsCount: 'How many are to be made?',
  needsCountWhy: 'Once the Count page has a box on its list, this page shows how its sheets are cut.',
  toEvent: 'Open the Count page',
  working: 'Working out the sheets',
  stillCounting: 'There may be more; still counting.',
  bettering: 'Looking for a plan with fewer sheets. This one can be cut as it is.',
  settle: 'Take this plan',
  proven: 'No plan uses fewer sheets of this paper.',
  provenShort: 'fewer will not do',
  letter: 'Mark',
  part: 'Part',
  size: 'Cut to',
  count: 'Pieces',
  cuts: 'Cuts, in order',
  offcut: 'an offcut',
  offcutsHead: 'Left over',
  offcutsWhy:
    'Once the sheets are cut, put what is worth keeping on the shelf. Liners, layers, bands and tags of this paper are then cut from it first.',
  offcutLeast: 'Shorter side at least',
  offcutLeastHelp: 'Smaller offcuts are not listed.',
  shelve: 'Put on the shelf',
  compare: 'The same from another paper',
  paper: 'Paper',
  sheetsHead: 'Sheets',
  perSheet: 'Boxes from one sheet',
  toBuy: 'To buy',
  change: 'Change over',
  doesNotFit: 'does not fit this sheet',
  noPrice: 'no price yet',
  inUse: 'in use',
  use: 'Use it',
  noPapers: 'There is no paper on the shelf yet',
  noPapersWhy: 'Add the sheets you have or mean to buy, and this page shows how many boxes each gives.',
  toShelf: 'Go to the shelf',
  oneSheet: 'From one sheet',
  planMany: 'Plan a batch',
  print: 'Print the cutting plan',
  back: 'Cut before',
  next: 'Next cut',
  stepper: 'Cut by cut',
  turnFirst: 'Turn it a quarter first.',
  squareStep: 'Square the sheet.',
  cutOn: 'a piece to cut on',
  recount: 'A second way of counting, which knows nothing of the first, found the same before this was said.',
  whatIf: 'What if',
  whatIfWhy: 'Only a question: nothing on the shelf or in the recipe changes.',
  ifWhat: 'What might be different',
  ifNothing: 'Nothing',
  ifSmaller: 'A size were smaller',
  ifUnsquared: 'No sheet were squared',
  ifSquared: 'Every sheet were squared',
  ifSheet: 'The sheets had another size',
  whichSize: 'Which size',
  smallerBy: 'Smaller by',
  smallerHelp: 'One step of your choice, as a box would be made a size smaller.',
  squareBy: 'Trimmed off each edge',
  squareHelp: 'As much as makes the sheet’s corners true.',
  whichSheet: 'Size of sheet',
  asNow: 'as it is now',
  moneyUnknown: 'What it would cost is not known.',
  interlock: 'Laid into one another',
  interlockWhy:
    'With scissors, a knife or a cutting machine the outlines themselves can lie close together, flap beside flap.',
  notOnTrimmer: 'Cannot be cut on a trimmer',
  nestPiece: 'Piece',
  nestGap: 'Card between them',
  nestGapHelp: 'None for scissors and knife: neighbours share a cut. A cutting machine may want a little.',
  nestStart: 'Lay them close',
  nestBusy: 'Trying to lay one more',
  nestCancel: 'Stop here',
  noGain:
    'No better way was found than the trimmer’s own. As rectangles they come off a trimmer just as many; along their outlines they are cut by hand or machine.',
  nestCaution:
    'Blades cut fingers: cut away from your hand, on a mat, and keep the guard on a machine’s blade closed.',
  sheetsOf: (sheets, paper) => `${plural(sheets, 'sheet')} of ${paper}`,
  bounded: (fewer) => `At most ${plural(fewer, 'sheet')} fewer could exist; none was found.`,
  boundedShort: (fewer) => `at most ${fewer} fewer`,
  partsFrom: (paper) => `Parts cut from ${paper}`,
  everySheet: (sheets) => (sheets === 1 ? 'The one sheet' : `Every sheet, ${sheets} times`),
  layout: (number, sheets) => `Layout ${number}: ${plural(sheets, 'sheet')}`,
  gives: (count, letter, name) => `${count} × ${letter} ${name}`,
  frees: (letters) => `frees ${letters.join(' and ')}`,
  fromOne: (count, piece, paper) => `${count} × ${piece} from ${paper}`,
  bothWays: (straight, turned, mixed) =>
    mixed > Math.max(straight, turned)
      ? `${straight} one way, ${turned} the other, ${mixed} mixed`
      : `${straight} one way, ${turned} the other`,
  withGrain: (count) => `${count} along the grain`,
  step: (name, of) => `Cut ${name} of ${of}`,
  fence: (at) => `Fence at ${at}`,
  becomes: (keep, other) => `Against the fence: ${keep}. Beyond the blade: ${other}.`,
  pace: (strokes, rounds, stack, fences, turns) =>
    `${plural(strokes, 'stroke')} in all${stack > 1 ? `, ${stack} sheets at once in ${plural(rounds, 'round')}` : ''}; ${plural(fences, 'fence setting')}, ${plural(turns, 'quarter turn')} a round.`,
  points: (mark, points) => `${mark}: ${plural(points, 'point')}`,
  pointsMost: (most) => `However one sheet is cut, it holds no more than ${plural(most, 'point')}.`,
  pointsAll: (total) => `All the parts together are worth ${total} points.`,
  pointsTooFew: (sheets, hold) =>
    `${plural(sheets, 'sheet')} ${sheets === 1 ? 'holds' : 'hold'} at most ${hold} points, which is too few.`,
  lot: (number, size, count) => `Offcut ${number}: ${size}, ${count === 1 ? 'one' : `${count} of them`}`,
  offcutName: (paper, size) => `Offcut ${size} of ${paper}`,
  onShelf: (count) => `${count} on the shelf`,
  sheetsDiffer: (now, then) => `${now} → ${plural(then, 'sheet')}: ${fewerOrMore(then - now, 'sheet')}.`,
  moneyDiffers: (now, then, difference, dearer) =>
    now === then
      ? `Paper to buy: ${now}, as now.`
      : `Paper to buy: ${now} → ${then}, ${difference} ${dearer ? 'more' : 'less'}.`,
  nested: (count, boxed) =>
    count > boxed
      ? `${count} on one sheet; a trimmer cuts ${boxed}: ${count - boxed} more.`
      : `${count} on one sheet, as on a trimmer.`,
  nestSheets: (count, nested, boxed) =>
    `For ${count}: ${plural(nested, 'sheet')} instead of ${boxed}, where this piece is cut alone.`,
  nestMost: (most) => `By its area no sheet could hold more than ${most}.`,
  nestTitle: (piece, paper) => `${piece}, nested on ${paper}`,
  saveAs: (kind) => `Save as ${kind}`,
};

import { plural } from './plural';

const fewerOrMore = (difference: number, one: string): string =>
  difference === 0
    ? 'no difference'
    : `${plural(Math.abs(difference), one)} ${difference < 0 ? 'fewer' : 'more'}`;

export const sheetsMessages = {
  needsCount: 'How many boxes?',
  needsCountWhy: 'Add a box on the Count page, and we show how to cut the sheets.',
  toEvent: 'Open the Count page',
  working: 'Working out the sheets',
  stillCounting: 'Still counting. There may be more.',
  bettering: 'Looking for a plan with fewer sheets. You can use this one now.',
  settle: 'Use this plan',
  proven: 'This is the fewest sheets possible.',
  provenShort: 'fewest possible',
  letter: 'Letter',
  part: 'Piece',
  size: 'Size',
  count: 'Quantity',
  cuts: 'Cuts in order',
  offcut: 'offcut',
  offcutsHead: 'Offcuts',
  offcutsWhy:
    'After cutting, add the offcuts you keep to your supplies. Liners, layers, bands and tags are then cut from them first.',
  offcutLeast: 'Smallest offcut to keep',
  offcutLeastHelp: 'Measured on its shorter side.',
  shelve: 'Add to supplies',
  compare: 'Compare papers',
  paper: 'Paper',
  sheetsHead: 'Sheets',
  perSheet: 'Boxes per sheet',
  toBuy: 'To buy',
  change: 'Change',
  doesNotFit: 'doesn’t fit this sheet',
  noPrice: 'no price yet',
  inUse: 'in use',
  use: 'Use it',
  noPapers: 'No paper in your supplies yet',
  noPapersWhy: 'Add paper you have or plan to buy, and see how many boxes each sheet gives.',
  toShelf: 'Go to the shelf',
  oneSheet: 'From one sheet',
  planMany: 'Plan a batch',
  print: 'Print the cutting plan',
  back: 'Previous cut',
  next: 'Next cut',
  stepper: 'Cut by cut',
  turnFirst: 'Turn it a quarter turn first.',
  squareStep: 'Square the sheet.',
  cutOn: 'a piece to cut again',
  recount: 'Double-checked by a second, independent count.',
  whatIf: 'What if',
  whatIfWhy: 'Just trying things out: nothing you’ve saved changes.',
  ifWhat: 'Try',
  ifNothing: 'No change',
  ifSmaller: 'A smaller box',
  ifUnsquared: 'No sheets squared',
  ifSquared: 'All sheets squared',
  ifSheet: 'A different sheet size',
  whichSize: 'Which size',
  smallerBy: 'Smaller by',
  smallerHelp: 'How much to take off this size.',
  squareBy: 'Trim off each edge',
  squareHelp: 'Enough to make the corners square.',
  whichSheet: 'Sheet size',
  moneyUnknown: 'We don’t know the cost.',
  interlock: 'Nest the shapes (scissors, knife or cutting machine)',
  interlockWhy: 'Place the outlines close together, flap beside flap. You can’t cut these on a trimmer.',
  notOnTrimmer: 'Not for a trimmer',
  nestPiece: 'Piece',
  nestGap: 'Gap between pieces',
  nestGapHelp: '0 for scissors or knife: neighbors share a cut. A cutting machine may need a little.',
  nestStart: 'Nest them',
  nestBusy: 'Trying to fit one more',
  nestCancel: 'Stop',
  noGain: 'Nesting gets no more from a sheet. A trimmer cuts just as many.',
  nestCaution:
    'Blades cut fingers. Cut away from your hand, on a mat. Keep the guard on a machine’s blade closed.',
  spoiledSheets: (sheets: number, spoiled: number) =>
    `${plural(sheets, 'sheet')} to cut, and ${spoiled} more for what went wrong.`,
  sheetsOf: (sheets: number, paper: string) => `${plural(sheets, 'sheet')} of ${paper}`,
  bounded: (fewer: number) => `This is within ${plural(fewer, 'sheet')} of the fewest possible.`,
  boundedShort: (fewer: number) => `within ${fewer} of the fewest`,
  partsFrom: (paper: string) => `Pieces cut from ${paper}`,
  everySheet: (sheets: number) => (sheets === 1 ? 'One sheet' : `Every sheet (${sheets})`),
  layout: (number: number, sheets: number) => `Layout ${number}: ${plural(sheets, 'sheet')}`,
  gives: (count: number, letter: string, name: string) => `${count} × ${letter} ${name}`,
  frees: (letters: readonly string[]) => `frees ${letters.join(' and ')}`,
  fromOne: (count: number, piece: string, paper: string) => `${count} × ${piece} from ${paper}`,
  /** Counts on one sheet: lying one way, the other, and mixed. */
  bothWays: (straight: number, turned: number, mixed: number) =>
    mixed > Math.max(straight, turned)
      ? `${mixed} (some turned)`
      : straight === turned
        ? `${straight} either way`
        : straight > turned
          ? `${straight}`
          : `${turned} (turned)`,
  withGrain: (count: number) => `${count} along the grain`,
  step: (name: string, of: string) => `Cut ${name} of ${of}`,
  fence: (at: string) => `Fence at ${at}`,
  becomes: (keep: string, other: string) => `Between fence and blade: ${keep}. Past the blade: ${other}.`,
  pace: (strokes: number, rounds: number, stack: number, fences: number, turns: number) =>
    `${plural(strokes, 'cut')} in total${stack > 1 ? ` (${plural(rounds, 'round')} of ${stack} sheets)` : ''}, ${plural(fences, 'fence setting')}, ${plural(turns, 'quarter turn')} per round.`,
  points: (mark: string, points: number) => `${mark}: ${plural(points, 'point')}`,
  pointsMost: (most: number) => `However one sheet is cut, it holds no more than ${plural(most, 'point')}.`,
  pointsAll: (total: string) => `All the pieces together are worth ${total} points.`,
  pointsTooFew: (sheets: number, hold: string) =>
    `${plural(sheets, 'sheet')} ${sheets === 1 ? 'holds' : 'hold'} at most ${hold} points, which is too few.`,
  lot: (number: number, size: string, count: number) =>
    `Offcut ${number}: ${size}, ${count === 1 ? 'one' : `${count} of them`}`,
  offcutName: (paper: string, size: string) => `Offcut ${size} of ${paper}`,
  onShelf: (count: number) => `${count} in your supplies`,
  sheetsDiffer: (now: number, then: number) =>
    `${now} → ${plural(then, 'sheet')}: ${fewerOrMore(then - now, 'sheet')}.`,
  moneyDiffers: (now: string, then: string, difference: string, dearer: boolean) =>
    now === then
      ? `Paper to buy: ${now}, as now.`
      : `Paper to buy: ${now} → ${then}, ${difference} ${dearer ? 'more' : 'less'}.`,
  nested: (count: number, boxed: number) =>
    count > boxed
      ? `${count} on one sheet; a trimmer cuts ${boxed}: ${count - boxed} more.`
      : `${count} on one sheet, as on a trimmer.`,
  nestSheets: (count: number, nested: number, boxed: number) =>
    `For ${count}: ${plural(nested, 'sheet')} instead of ${boxed}, where this piece is cut alone.`,
  nestMost: (most: number) => `By area, no sheet can hold more than ${most}.`,
  nestTitle: (piece: string, paper: string) => `${piece}, nested on ${paper}`,
  saveAs: (kind: string) => `Save as ${kind}`,
  handWays: (sheets: number) =>
    sheets === 1 ? 'Other ways to cut this sheet' : `Other ways to cut the same ${sheets} sheets`,
  handWhy: 'Each way cuts the same pieces from the same sheets. Choose the one that suits your hands.',
  handOnlyWay: 'We found no way with fewer fence settings or a larger piece left over.',
  handAims: { strokes: 'Fewer cuts', fences: 'Fewer fence settings', offcut: 'Larger piece left over' },
  handUse: { strokes: 'Use fewer cuts', fences: 'Use fewer settings', offcut: 'Keep a larger piece' },
  handFigures: (layouts: number, strokes: number, fences: number) =>
    `${plural(layouts, 'layout')}, ${plural(strokes, 'cut')}, ${plural(fences, 'fence setting')}`,
  handLargest: (size: string) => `Largest piece left: ${size}`,
  handNothingLeft: 'Nothing left over',
  mix: 'The cheapest mix of papers',
  mixWhy:
    'Check every paper that would do for a box. The app then shares the boxes out: paper and offcuts on hand first, then whatever packs cost least. All pieces of one box come from the same paper.',
  mixInUse: 'A mix is in use.',
  mixOff: 'Stop using the mix',
  mixStart: 'Find the cheapest mix',
  mixCancel: 'Stop looking',
  mixBusy: 'Looking for cheaper mixes. What is shown can be cut, and may still get cheaper.',
  mixStale: 'Something has changed since. Look again before you use one of these.',
  mixProven: 'no mix costs less',
  mixProvenKind: 'no other choice of so few papers costs less',
  mixOne: 'One paper',
  mixTwo: 'Two papers',
  mixAny: 'Any mix',
  mixBoxes: 'Boxes',
  mixLeft: 'Sheets left over',
  mixCannot: 'cannot be cut so from what is on hand and on sale',
  useMix: 'Use this mix',
  mayComeFrom: (line: string) => `${line} may come from`,
  mixBounded: (money: string) => `at most ${money} less could exist`,
  mixCheapest: (money: string, proof: string) => `Cheapest with these papers: ${money}, ${proof}.`,
  mixSheets: (sheets: number, paper: string, layouts: number) =>
    `${plural(sheets, 'sheet')} of ${paper}, ${plural(layouts, 'layout')}`,
  mixShare: (line: string, boxes: number, paper: string) => `${line}: ${boxes} from ${paper}`,
  mixLeftOf: (sheets: number, paper: string) => `${sheets} of ${paper}`,
};

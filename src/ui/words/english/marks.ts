import type { FamilyEnd, RowMerit } from '../../../core/fit';
import { plural } from './plural';

const MERITS = { easiest: 'Easiest', snuggest: 'Snuggest', 'least-paper': 'Least paper' } as const;

const cardMessages = {
  merits: (merits: readonly RowMerit[]) =>
    merits
      .map((merit, at) => (at === 0 ? MERITS[merit] : MERITS[merit].toLowerCase()))
      .join(merits.length > 2 ? ', ' : ' and '),
  toSpare: (length: string) => `${length} to spare`,
  noRoom: 'no room to spare: a snug fit',
  sameSize: 'Same size',
  goOn: 'Go on: see it fold',
  instead: (now: string, was: string) => `${now} instead of ${was}`,
  /** `was` 0: it does not fit the sheet. */
  perSheetInstead: (now: number, was: number) =>
    was === 0 ? `${now} per sheet` : `${now} per sheet instead of ${was}`,
  changes: (parts: readonly string[], paper: string | null) => {
    const text = [parts.join(', '), ...(paper === null ? [] : [paper])].join(': ');
    return text === 'Same size' ? 'Your box as it is' : `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
  },
};

const SIZES: Readonly<Record<number, readonly string[]>> = {
  1: ['another size'],
  2: ['small', 'large'],
  3: ['small', 'medium', 'large'],
  4: ['small', 'medium', 'large', 'largest'],
};

export const marksMessages = {
  cards: cardMessages,
  /** What lies behind the cards. */
  allRows: (count: number) => `All ${count} sizes`,
  more: 'Other sizes and other boxes',
  family: 'Other contents, or a nesting set',
  familyWhy: 'The same style in other easy sizes. Save each as a box if you like.',
  roomSides: ['Inside width', 'Inside depth', 'Inside height'] as const,
  familyCount: 'How many sizes',
  familyRule: 'Each larger box',
  nested: 'holds the smaller one',
  grown: 'grows by a percentage',
  familyAir: 'Ease around the box inside',
  familyAirHelp: 'Both sides together.',
  familyPercent: 'Grows by, in percent',
  familyBusy: (found: number, members: number) => `Looking for easy sizes: ${found} of ${members}`,
  member: 'Box',
  memberName: (recipe: string, place: number, members: number) =>
    `${recipe}, ${SIZES[members]?.[place] ?? `size ${place + 1}`}`,
  roomIs: 'Inside size',
  memberCalled: (name: string) => `That name is taken, so we’ll call it “${name}”.`,
  memberNameLabel: (place: number) => `Name of size ${place}`,
  memberNone: (need: string, sheet: string, because: FamilyEnd) =>
    ({
      sheet: `For ${need} inside, it is larger than ${sheet}. Choose a larger sheet, or fewer or closer sizes.`,
      limits: `This style can’t be ${need} inside. Choose fewer or closer sizes, or another style.`,
      marks: `For ${need} inside, no size falls on your tool’s marks. Let sizes grow more, or choose a tool with finer marks or a longer reach.`,
    })[because],
  insideOutside: (inside: string, outside: string) => `${inside}; outside up to ${outside}`,
  makeFamily: (count: number) => (count === 1 ? 'Save as a box' : `Save as ${count} boxes`),
  oneOfEach: 'Cut one of each together',
  oneOfEachFrom: (sheets: number, sheet: string) =>
    `One of each takes ${plural(sheets, 'sheet')} of ${sheet}.`,
  beside: 'Compare with another box or style',
  besideWhich: 'Compare with',
  recipeInStyle: (recipe: string, style: string) => `${recipe}: ${style}`,
  sameRoomIn: (style: string) => `${style}, same inside size`,
  holdsNothing: 'open, or not known',
  keepStyle: 'Save as a box in this style',
  holds: 'Volume',
  scores: 'Scores',
  scoresAt: (scores: number, settings: number) => `${scores}, with ${plural(settings, 'fence setting')}`,
  betweenMarks: 'Measurements between marks',
  fromOneSheet: (sheet: string) => `Per sheet of ${sheet}`,
  handWork: 'Time to fold one, after cutting',
  millilitres: (count: number) => `${count} ml`,
  minutes: (seconds: number) => `about ${plural(Math.max(1, Math.round(seconds / 60)), 'minute')}`,
  noRecipe: 'No box here yet',
  pickBox: 'Pick a style',
  styleGone: 'We don’t know this style',
  marksOf: (name: string) => `Easy sizes for ${name}`,
  asked: 'What you need',
  need: (size: string) => `At least ${size} inside`,
  fromContents: 'From what goes inside, with wiggle room.',
  fromBox: 'From this box, because nothing goes inside yet.',
  toContents: 'Say what goes inside',
  slack: 'Sizes may grow by',
  slackHelp: 'How much larger than needed, to reach an easier mark.',
  sheet: 'Cut from',
  tool: 'Tool',
  noTool: 'No tool in this unit yet, so we use the usual marks.',
  toShelf: 'Go to your tools',
  toolMarks: (name: string, finest: string, reach: string) =>
    `${name}: marks every ${finest}, scores up to ${reach} from its fence.`,
  grooves: (count: number) => `It scores only in its ${count} grooves.`,
  stylus: (length: string) => `It makes two scores ${length} apart at one setting.`,
  held: 'Lock these sizes',
  heldWhy: 'Ticked sizes stay put. Everything else may change, including wall order and tab side.',
  holdAt: (name: string, length: string) => `${name}, ${length}`,
  rows: 'Easy sizes',
  plot: 'Easy to measure, or easy on paper?',
  plotWhy: 'Left is easier to measure. Lower uses less paper. Each point is a row in the table.',
  roughness: 'Fiddliness',
  paperEach: 'Sheets per box',
  sizes: 'Sizes',
  costs: 'Paper',
  handling: 'Handling',
  blank: 'Cut size',
  use: 'Use it',
  inUse: 'In use',
  why: 'Why',
  hardest: {
    in: ['whole-inch marks', '½ in marks', '¼ in marks', '⅛ in marks', '1/16 in marks', '1/32 in marks'],
    mm: ['whole-centimeter marks', '5 mm marks', '1 mm marks', '½ mm marks'],
  },
  perSheet: (boxes: number, sheet: string) => `${boxes} per sheet of ${sheet}`,
  sheetsEach: (sheets: string, sheet: string) => `${sheets} sheets of ${sheet} per box`,
  fitsNot: (sheet: string) => `doesn’t fit ${sheet}`,
  loose: (length: string) => `${length} to spare`,
  snug: 'snug',
  settings: (settings: number, edges: number) =>
    `${plural(settings, 'fence setting')}, from ${plural(edges, 'edge')}`,
  byTemplate: (count: number) => `${plural(count, 'line')} by template`,
  point: (sizes: string, roughness: number, paper: string) => `${sizes}: fiddliness ${roughness}, ${paper}`,
  roughnessWhy: (parts: readonly string[], sum: number) =>
    `Fiddliness ${parts.join(' + ')} = ${sum}. A whole inch counts 0, a half 1, a quarter 2. 10 mm counts 0, 5 mm 1, 1 mm 2. Each line is measured from its easier end.`,
  markPart: (length: string, roughness: number) => `${roughness} (${length})`,
  excessWhy: (sides: readonly string[], percent: string) =>
    `Inside: ${sides.join(' × ')} − 1 = ${percent} more than you need.`,
  excessSide: (side: string, has: string, need: string) => `${side} ${has} / ${need}`,
  paperWhy: (parts: readonly string[]) => `Cut size: ${parts.join('; ')}.`,
  paperPart: (piece: string, across: string, up: string) => `${piece} ${across} × ${up}`,
  ownNet: 'An imported net keeps its own sizes',
  ownNetWhy: 'We can’t move them onto easier marks. Compare other styles with the same inside size below.',
  noneReads: 'No size in this range falls on your tool’s marks',
  noneReadsWhy: 'Some line is always between its marks, out of reach, or outside the limits of the style.',
  moreSlack: 'Double the range',
  noneFits: 'No size fits this sheet. These would help:',
  otherSheet: (sheet: string) => `The same box fits ${sheet}.`,
  takeSheet: 'Use that sheet',
  turned: (size: string) => `Turned to ${size}, it fits this sheet.`,
  turnIt: 'Turn it',
  turnedNow: 'The items are turned for this search.',
  turnBack: 'Turn them back',
  twoPiece: (piece: string, size: string) =>
    `${piece} fits as two halves of ${size} each, with one more tab. Draw both halves side by side with a template.`,
  compare: 'Compare every style',
  compareWhy: 'The same inside size in each other style, easiest first.',
  comparing: 'Comparing styles',
  doneOf: (done: number, of: number) => `${done} of ${of}`,
  stop: 'Stop',
  style: 'Style',
  cannot: 'Why not',
  takeStyle: 'Use this style',
  searching: 'Searching…',
  ways: (sheet: string) => `from ${sheet}`,
};

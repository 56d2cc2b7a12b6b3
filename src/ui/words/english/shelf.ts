import type { TableName } from '../../../../shared/tables';
import { plural } from './plural';
import { weightText } from './weight-text';

const KINDS = {
  recipes: 'box',
  events: 'event',
  papers: 'paper',
  supplies: 'supply',
  tools: 'tool',
  photos: 'photo',
} as const;

let day: Intl.DateTimeFormat | null = null;

/** The browser's tables of dates are opened once, at the first date. */
function longDay(date: string): string {
  day ??= new Intl.DateTimeFormat('en-US', { dateStyle: 'long', timeZone: 'UTC' });
  return day.format(new Date(`${date}T00:00:00Z`));
}

export const shelfMessages = {
  shelf: {
    title: 'Shelf',
    doors: { made: 'Boxes and events', supplies: 'Supplies', backup: 'Backup' },
    /** What lies behind each. */
    doorsHold: {
      made: 'what you make',
      supplies: 'paper, tape, ribbon, tools',
      backup: 'files, trash, recovery',
    },
    newRecipe: 'New box',
    newEvent: 'New event',
    newEventName: 'New event',
    events: 'Events',
    recipes: 'Boxes',
    example: 'example',
    noEvents: 'No events yet. An event holds your boxes, how many, and the date.',
    noDate: 'no date yet',
    find: 'Find on the shelf',
    findHelp: 'By name, style, contents or label.',
    findInAll:
      'By name, style, contents or label. Search here, since your browser’s own search sees only part of a long shelf.',
    found: (boxes: number, events: number) =>
      boxes + events === 0
        ? 'Nothing matches. Try fewer words.'
        : `${plural(boxes, 'box', 'boxes')} and ${plural(events, 'event')} found.`,
    holds: (boxes: number, events: number) =>
      `${plural(boxes, 'box', 'boxes')} and ${plural(events, 'event')}.`,
    allEvents: (count: number) => `Show all ${plural(count, 'event')}`,
    fewerEvents: 'Show fewer events',
    promise: 'Design a favor box, make forty alike',
    promiseWhy:
      'Say what goes in and how many you need. You get a flat net with every mark, a step card, a cutting plan and a shopping list.',
    openDemo: 'Open the example',
    openSeason: 'Open the example season',
    ownBox: 'Start a box of your own',
    demoFailed: 'The example didn’t load. Reload the page, or start a box of your own.',
    staysHere: 'Your work stays in this browser. Nothing is sent anywhere.',
    papers: 'Paper',
    supplies: 'Tape, ribbon and extras',
    sent: (name: string) => `Someone sent you “${name}”`,
    sentBroken: 'This link has no box in it',
    sentWhy: 'Look first. Nothing is saved until you say so, and nothing on your shelf is replaced.',
    tools: 'Tools',
    noPapers: 'No paper yet. Add the cardstock you have, so we can work out sheets.',
    noSupplies: 'No tape or ribbon yet.',
    noTools: 'No tools yet. Add your trimmer or scoring board, so every measurement falls on its marks.',
    newPaper: 'New paper',
    newSupply: 'New tape',
    newTool: 'New tool',
    files: 'Files',
    saveEverything: 'Save everything to a file',
    openFile: 'Import a file',
    bin: 'Trash',
    binEmpty: 'The trash is empty. Deleted items stay here for 30 days on which you use the app.',
    takeOut: 'Restore',
    fileRefused: 'We couldn’t open this file. Nothing was changed.',
    leaveIt: 'Cancel',
    takeIn: 'Import',
    season: 'Season',
    seasonWhy: 'All events together',
    safeKeeping: 'More about backups',
    lookAtIt: 'Open it',
    setAside: (things: readonly { readonly table: TableName; readonly name: string }[]) => {
      const named = things.slice(0, 3).map(({ table, name }) => `${KINDS[table]} “${name}”`);
      const more = things.length - named.length;
      return `${plural(things.length, 'item')} can’t be opened and ${
        things.length === 1 ? 'is' : 'are'
      } set aside unchanged: ${named.join(', ')}${more > 0 ? ` and ${more} more` : ''}. Nothing is lost.`;
    },
    folderWaits: (name: string) => `Automatic backup to “${name}” needs your OK.`,
    add: { papers: 'Add a paper', supplies: 'Add tape or ribbon', tools: 'Add a tool' },
    copyOf: (name: string) => `Copy ${name}`,
    copyName: (name: string) => `${name} copy`,
    saveFileOf: (name: string) => `Save ${name} to a file`,
    deleteOf: (name: string) => `Delete ${name}`,
    onDate: (date: string) => longDay(date),
    marksOf: (mark: string) => `marks every ${mark}`,
    sheetsOnHand: (count: number) => plural(count, 'sheet'),
    rollsOnHand: (count: number) => plural(count, 'roll'),
    piecesOnHand: (count: number) => plural(count, 'piece'),
    bottlesOnHand: (count: number) => plural(count, 'bottle'),
    fileHolds: (fresh: number, differing: number, same: number) => {
      const parts = [
        `This file has ${plural(fresh, 'new item')}.`,
        ...(differing > 0
          ? [
              `${differing} ${differing === 1 ? 'differs' : 'differ'} from yours and will be added as ${differing === 1 ? 'a copy' : 'copies'}.`,
            ]
          : []),
        ...(same > 0 ? [`${same} ${same === 1 ? 'is' : 'are'} already here.`] : []),
      ];
      return parts.join(' ');
    },
  },
  newRecipe: {
    title: 'Which style?',
    why: 'Pick a style. Sizes come next, and you can change the style later.',
    newLine: 'New box',
    nameOf: (style: string) => `My ${style.toLowerCase()}`,
  },
  stock: {
    gone: 'This is no longer in your supplies',
    toShelf: 'Go to the shelf',
    done: 'Done',
    remove: 'Delete',
    name: 'Name',
    colour: 'Color',
    across: 'Sheet width',
    up: 'Sheet height',
    trueSize: 'Measure it. A 12 in sheet may be a little more or less.',
    grain: 'Grain direction',
    grainAcross: 'across the sheet',
    grainUp: 'up the sheet',
    grainNone: 'doesn’t matter',
    print: 'Pattern',
    printAnyWay: 'plain, or works either way',
    printOneWay: 'has a right way up',
    gsm: 'Weight',
    gsmHelp: 'You can also type 80 lb cover, 110 lb index or 60 lb text.',
    weighs: weightText,
    gsmRefused: 'Type g/m², or pounds with the grade, such as 80 lb cover.',
    caliper: 'Thickness (caliper)',
    caliperHelp: (mm: string) =>
      `Uncoated cardstock of this weight is about ${mm} mm thick. Measure ten sheets together and divide by ten.`,
    caliperRefused: 'Type millimeters, or points such as 12 pt.',
    onHand: 'Sheets on hand',
    packs: 'Packs and prices',
    packOf: 'Sheets per pack',
    packPrice: 'Price per pack',
    addPack: 'Add a pack',
    squaring: 'Squaring the sheet',
    squaringWhy: 'How much you trim off an edge first, if the sheet isn’t clean or square.',
    kind: 'Kind',
    piecesOnHand: 'Pieces on hand',
    piecesInPack: 'Pieces per pack',
    offer: 'Special offer',
    offerFree: 'Get free',
    offerBuy: 'When you buy',
    offerHelp: '0 = no offer.',
    spreadHelp: 'How thick you spread it, wet. 60 is a thin coat. Rule of thumb.',
    kinds: {
      tape: 'tape',
      glue: 'liquid glue',
      ribbon: 'ribbon',
      twine: 'twine',
      closure: 'seal or clip',
      mount: 'foam square or dot',
      wrap: 'bag or wrap',
      contents: 'gift item',
    },
    glue: {
      bottleGrams: 'Glue per bottle',
      gramsPerSquareMetre: 'Coat',
      pressMinutes: 'Press for',
      dryMinutes: 'Drying time',
      priceMinor: 'Price per bottle',
      onHandBottles: 'Bottles on hand',
    },
    width: 'Width',
    rollLength: 'Length per roll',
    rollPrice: 'Price per roll',
    rollsOnHand: 'Rolls on hand',
    waste: 'Waste',
    wasteHelp: 'Trimmed ends and false starts, out of every roll. 5 is a rule of thumb.',
    toolKind: 'How it measures',
    fence: 'a fence you set',
    grooves: 'grooves or marks',
    toolUnit: 'Unit',
    inches: 'inches',
    millimetres: 'millimeters',
    finestMark: 'Finest marks',
    finestMarkHelp: 'Every measurement falls on these marks.',
    reach: 'Reach',
    reachHelp: 'The farthest it scores from the fence.',
    longestCut: 'Longest cut',
    groovesAt: 'Grooves, measured from the fence',
    groovesHelp: 'Separate with semicolons: 1; 1 1/2; 2. Leave empty if it scores at every mark.',
    stylus: 'Distance between scoring tips',
    stylusHelp: 'For double-tip tools only. 0 = one tip.',
    kerf: 'Width of a cut (kerf)',
    kerfHelp: 'The width a saw or laser takes away. Blade or wheel: 0.',
    turns: 'Most turns while cutting a piece',
    turnsHelp:
      'Quarter turns. Fewer are quicker and straighter, but may need more sheets. Trimming one piece doesn’t count.',
    turnsAny: 'no limit',
    turnsOne: 'one',
    turnsTwo: 'two',
    hand: 'You use',
    rightHand: 'your right hand',
    leftHand: 'your left hand',
    stack: 'Sheets cut at once',
    edges: { left: 'Left', right: 'Right', near: 'Bottom', far: 'Top' },
    removePack: (number: number) => `Remove pack ${number}`,
  },
};

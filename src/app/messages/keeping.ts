import type { TableName } from '../../../shared/tables';
import type { KeepingWords } from '../../ui/words/keeping-words';
import { plural } from './plural';

const time = new Intl.DateTimeFormat('en-US', { timeStyle: 'short' });
const day = new Intl.DateTimeFormat('en-US', { dateStyle: 'long' });
const list = new Intl.ListFormat('en-US', { type: 'conjunction' });
const DAY_MS = 86_400_000;

/** Bytes as a person says them. */
function size(bytes: number): string {
  const [divisor, unit] =
    bytes < 1e6
      ? ([1e3, 'kilobyte'] as const)
      : bytes < 1e9
        ? ([1e6, 'megabyte'] as const)
        : ([1e9, 'gigabyte'] as const);
  return new Intl.NumberFormat('en-US', {
    style: 'unit',
    unit,
    unitDisplay: 'short',
    maximumSignificantDigits: 2,
  }).format(bytes / divisor);
}

function when(at: string, now: number): string {
  const moment = new Date(at);
  if (!Number.isFinite(moment.getTime())) return 'at a time that was not noted';
  const midnight = new Date(now).setHours(0, 0, 0, 0);
  const clock = time.format(moment);
  if (moment.getTime() >= midnight && moment.getTime() < midnight + DAY_MS) return `today at ${clock}`;
  if (moment.getTime() >= midnight - DAY_MS && moment.getTime() < midnight) return `yesterday at ${clock}`;
  return `on ${day.format(moment)} at ${clock}`;
}

const KINDS: Readonly<Record<TableName, readonly [one: string, many: string]>> = {
  recipes: ['box', 'boxes'],
  events: ['event', 'events'],
  papers: ['paper', 'papers'],
  supplies: ['supply', 'supplies'],
  tools: ['tool', 'tools'],
  photos: ['photo', 'photos'],
};

/** What the fields of a row are called on the pages where they are typed. */
const FIELDS: Readonly<Record<string, string>> = {
  name: 'name',
  styleId: 'shape',
  sizesMm: 'sizes',
  options: 'ways of building',
  caliperUm: 'thickness',
  paperId: 'paper',
  faceUp: 'face up',
  grain: 'grain',
  dressings: 'dressing',
  notes: 'notes',
  contents: 'contents',
  handout: 'handout',
  ownNet: 'net',
  date: 'date',
  lines: 'how many of what',
  spares: 'spares',
  run: 'what is made already',
  bought: 'what is bought already',
  tapeId: 'tape',
  currency: 'currency',
  packs: 'packs',
  onHandSheets: 'sheets on hand',
  onHandRolls: 'rolls on hand',
  onHandPieces: 'pieces on hand',
  priceMinor: 'price',
  jpeg: 'picture',
  example: 'being an example',
};

export const keepingMessages: KeepingWords = {
  title: 'Safe keeping',
  why: 'Where your work is kept, what copies there are, and how to get back what was there before.',
  toShelf: 'Go to the shelf',

  here: 'In this browser',
  inMemory:
    'This browser keeps nothing in this mode. What you make is gone when the tab closes, so save it to a file.',
  promise: 'The browser’s promise',
  promised: 'It has promised not to clear your work by itself.',
  notPromised:
    'It has not promised to keep your work: when the disk is nearly full, or in some browsers after seven days without a visit, it may clear it. A copy outside the browser is your safeguard.',
  promiseUnknown:
    'It does not say whether it may clear your work by itself. A copy outside the browser is your safeguard.',
  askPromise: 'Ask it to keep my work',
  askedInVain:
    'It was asked and did not promise. Browsers decide this for themselves; it helps to install the app, or to keep it among your bookmarks.',
  room: 'Room used',
  roomUnknown: 'The browser does not say.',
  onShelf: 'On the shelf',
  earlierKept: 'Earlier states',
  roomUsed: (used, room) =>
    room === null ? `About ${size(used)}.` : `About ${size(used)} of the ${size(room)} the browser allows.`,
  counts: (counts) => {
    const said = (Object.keys(KINDS) as TableName[])
      .filter((table) => counts[table] > 0)
      .map((table) => plural(counts[table], ...KINDS[table]));
    return said.length === 0 ? 'Nothing yet.' : `${list.format(said)}.`;
  },
  statesOf: (states, rows) =>
    states === 0 ? 'None yet.' : `${plural(states, 'earlier state')} of ${plural(rows, 'thing')}.`,

  copies: 'Copies outside the browser',
  copiesWhy:
    'One file holds everything: boxes, events, paper, supplies, tools and photos, to the last letter. The bin and the earlier states stay in this browser. Keep the file where the computer’s own backup finds it, or send it to yourself.',
  noCopyYet: 'There is no copy outside this browser yet.',
  makeCopy: 'Make a backup of everything',
  lastCopy: (at, how, name) => {
    const where = { download: ` as the file “${name}”`, folder: ` in the folder “${name}”` };
    return `The last copy was made ${at}${how === null ? '' : where[how]}.`;
  },
  savesSince: (count) =>
    count === 0 ? 'Nothing was changed since.' : `Changes were kept ${plural(count, 'time')} since.`,
  made: (files) =>
    files === 1
      ? 'The backup is among your downloads.'
      : `The backup is among your downloads, in ${files} files, since one would be too large to be read in again. Keep them together.`,
  notAside: (count) =>
    `What is set aside is not in it (${plural(count, 'thing')}); save that as it is, further up on this page.`,
  inParts:
    'If you have several files of one backup, choose them all; they are looked at one after the other.',
  when,
  day: (at) => day.format(new Date(at)),

  restore: 'Restore from a backup',
  restoreWhy:
    'You see what is new, what differs and what is the same before anything is read in. Nothing that is here is replaced.',
  takeIn: 'Read it in',
  leaveIt: 'Leave it',
  refused: 'This file was not read in, and nothing here has changed.',
  file: (number, of, name) => (of === 1 ? `“${name}”` : `File ${number} of ${of}, “${name}”`),
  fates: {
    new: (count) => `${count} new`,
    differs: (count) =>
      `${count} ${count === 1 ? 'differs' : 'differ'}: yours stay, the file’s come in beside them`,
    same: (count) => `${count} the same as here`,
  },
  nothingNew: 'Everything in this file is here already.',
  thing: (table, name) => `${name} (${KINDS[table][0]})`,
  differsIn: (fields) =>
    `differs in ${list.format([...new Set(fields.map((field) => FIELDS[field] ?? 'other details'))])}`,

  folder: 'A copy by itself',
  folderWhy:
    'Pick a folder of yours, and a copy of everything is written there some seconds after each change: one file a day, so that an earlier day is never written over.',
  noFolders:
    'This browser does not let a page write into a folder of yours, so no copy is made by itself. Make a backup by hand now and then.',
  pickFolder: 'Pick a folder',
  otherFolder: 'Pick another folder',
  allowFolder: 'Let it write there again',
  writeNow: 'Write a copy now',
  stopFolder: 'Stop writing there',
  folderNothingYet: 'Nothing has been written there yet.',
  goesInto: (name) => `Copies go into the folder “${name}”.`,
  lastWritten: (at, file) => `The last one was written ${at}: ${file}.`,
  troubles: {
    forbidden: (name) =>
      `The browser asks you once more before a page may write into “${name}”. Until then no copy is made.`,
    gone: (name) => `The folder “${name}” is not where it was. Put it back, or pick another one.`,
    full: (name) =>
      `There is no room left on the disk of “${name}”. Make room there, or pick another folder.`,
    failed: (name) =>
      `The copy could not be written into “${name}”. It is tried again in a few minutes; if it stays so, pick another folder.`,
  },

  aside: 'Set aside',
  asideWhy:
    'These cannot be read by this version of the app, and are left as they lie. They are looked at again every time the app opens, so a newer version may read them.',
  asideCount: (count) =>
    count === 1 ? 'One thing could not be read.' : `${count} things could not be read.`,
  tryAgain: 'Try again',
  intoBin: 'Into the bin',
  saveAsIs: 'Save as it is',
  asideFile: 'set aside',
  salvageFile: 'everything found',
  salvaged:
    'The browser’s storage did not open as it should. What could be read of it is on the shelf; save all that was found to a file, down to what the app cannot read, before anything else.',
  tried: {
    read: (name) => `${name} can be read now and is on the shelf.`,
    'still-not': (name) => `${name} still cannot be read. It lies where it lay.`,
    gone: (name) => `${name} is no longer there.`,
    'not-now': (name) => `${name} could not be looked at just now. It lies where it lay.`,
    binned: (name) => `${name} is in the bin, as it is, for 30 days.`,
    'not-binned': (name) => `${name} could not be moved. It lies where it lay.`,
  },

  earlier: 'Earlier states',
  earlierWhy:
    'Of everything you change, up to 20 earlier states are kept, some minutes apart. Bringing one back puts it beside what you have now; nothing is replaced.',
  noEarlier: 'None yet. They come as you change things.',
  bringBeside: 'Bring back beside it',
  beforeUpgrade: 'kept before an update of the app',
  unreadable: 'This version of the app cannot read it.',
  notHere: 'no longer on the shelf',
  likeNow: 'the same as now',
  statesOfRow: (count, newest) => `${plural(count, 'earlier state')}, the newest kept ${newest}`,
  besideName: (name, at) => `${name}, as of ${at}`,
  broughtBack: (name) => `“${name}” is on the shelf.`,
  showAll: (count) => `Show all ${count}`,

  bin: 'Bin',
  binWhy: 'What you delete lies here for 30 days.',
  binEmpty: 'The bin is empty.',
  takeOut: 'Take out',
  leavesBin: (deleted, leaves) => `deleted ${deleted}; stays until ${leaves}`,

  erase: 'Erase everything',
  eraseWhy:
    'Takes every box, event, paper, supply, tool and photo out of this browser, with the bin, the earlier states and the settings. It cannot be undone. Files you saved stay where they are.',
  eraseStart: 'Erase everything in this browser',
  eraseWord: 'erase everything',
  eraseHelp: 'Make a backup first, if there is anything you may want again.',
  eraseConfirm: (word) => `Type “${word}” to go on`,
  eraseNow: 'Erase it all',
  eraseLeave: 'Leave everything as it is',
  erased: 'Everything in this browser is erased.',
  notErased: 'The browser could not erase it. Load the page again and try once more.',
  notListed: 'The browser could not list this just now.',
};

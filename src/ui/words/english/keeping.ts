import type { TableName } from '../../../../shared/tables';
import { plural } from './plural';
import { sharingMessages } from './sharing';

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
  if (!Number.isFinite(moment.getTime())) return 'at an unknown time';
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
  styleId: 'style',
  sizesMm: 'sizes',
  options: 'construction',
  caliperUm: 'thickness',
  paperId: 'paper',
  faceUp: 'side facing up',
  grain: 'grain',
  dressings: 'decorations',
  notes: 'notes',
  contents: 'contents',
  handout: 'handout',
  ownNet: 'net',
  ownStyle: 'style file',
  date: 'date',
  lines: 'boxes to make',
  spares: 'spares',
  run: 'progress',
  bought: 'items bought',
  tapeId: 'tape',
  currency: 'currency',
  packs: 'packs',
  onHandSheets: 'sheets on hand',
  onHandRolls: 'rolls on hand',
  onHandPieces: 'pieces on hand',
  priceMinor: 'price',
  jpeg: 'picture',
  example: 'example mark',
};

export const keepingMessages = {
  title: 'Backup',
  why: 'Where your work is saved, your backups, and how to get something back.',
  toShelf: 'Go to the shelf',

  here: 'In this browser',
  inMemory: 'This window doesn’t save anything (a private window?). Save to a file before you close the tab.',
  promise: 'Is it safe here?',
  promised: 'Yes. The browser has agreed not to clear your work.',
  notPromised:
    'Not guaranteed. The browser may clear it when the disk is nearly full, or (some browsers) after a week without a visit. Keep a backup.',
  promiseUnknown: 'Not known. The browser doesn’t say whether it may clear your work. Keep a backup.',
  askPromise: 'Ask the browser to keep my work',
  askedInVain: 'The browser said no. It may agree once the app is installed or bookmarked.',
  room: 'Storage used',
  roomUnknown: 'The browser doesn’t say.',
  onShelf: 'On the shelf',
  earlierKept: 'Earlier versions',
  roomUsed: (used: number, room: number | null) =>
    room === null ? `About ${size(used)}.` : `About ${size(used)} of the ${size(room)} the browser allows.`,
  counts: (counts: Readonly<Record<TableName, number>>) => {
    const said = (Object.keys(KINDS) as TableName[])
      .filter((table) => counts[table] > 0)
      .map((table) => plural(counts[table], ...KINDS[table]));
    return said.length === 0 ? 'Nothing yet.' : `${list.format(said)}.`;
  },
  statesOf: (states: number, rows: number) =>
    states === 0 ? 'None yet.' : `${plural(states, 'earlier version')} of ${plural(rows, 'item')}.`,

  sharing: sharingMessages,

  copies: 'Backups',
  copiesWhy:
    'One file holds everything: boxes, events, supplies, tools and photos. Trash and earlier versions stay in this browser. Keep the file in a safe place, or send it to yourself.',
  noCopyYet: 'No backup yet.',
  makeCopy: 'Back up everything',
  making: 'Making the backup and reading it back …',
  lastCopy: (at: string, how: 'download' | 'folder' | null, name: string) => {
    const where = { download: `, file “${name}”`, folder: `, folder “${name}”` };
    return `Last backup: ${at}${how === null ? '' : where[how]}.`;
  },
  savesSince: (count: number) =>
    count === 0 ? 'No changes since.' : `Saved ${plural(count, 'time')} since.`,
  notAside: (count: number) =>
    `It leaves out what is set aside (${plural(count, 'item')}). Save that separately, above.`,
  inParts: 'If a backup has several files, choose them all.',
  when,
  day: (at: string) => day.format(new Date(at)),

  restore: 'Restore from a backup',
  restoreWhy:
    'First you see what is new and what differs. Nothing here is replaced. To go back to an older version, use the copy and delete yours.',
  takeIn: 'Import',
  leaveIt: 'Cancel',
  refused: 'We couldn’t open this file. Nothing was changed.',
  file: (number: number, of: number, name: string) =>
    of === 1 ? `“${name}”` : `File ${number} of ${of}, “${name}”`,
  fates: {
    new: (count: number) => `${count} new`,
    differs: (count: number) =>
      `${count} ${count === 1 ? 'differs' : 'differ'}: yours stay, the file’s are added as copies with their date`,
    same: (count: number) => `${count} already here`,
  },
  nothingNew: 'Everything in this file is already here.',
  thing: (table: TableName, name: string) => `${name} (${KINDS[table][0]})`,
  differsIn: (fields: readonly string[]) =>
    `different ${list.format([...new Set(fields.map((field) => FIELDS[field] ?? 'other details'))])}`,

  folder: 'Automatic backup',
  folderWhy:
    'Pick a folder. We save a backup there a few seconds after each change and read it back. The last five stay, and the last one of each of ten days.',
  noFolders:
    'This browser can’t save into a folder, so there is no automatic backup. Back up by hand now and then.',
  pickFolder: 'Pick a folder',
  otherFolder: 'Pick another folder',
  allowFolder: 'Allow it again',
  writeNow: 'Back up now',
  writeAnyway: 'Save the smaller backup',
  stopFolder: 'Stop automatic backup',
  folderNothingYet: 'No backup there yet.',
  goesInto: (name: string) => `Backups go to the folder “${name}”.`,
  lastWritten: (at: string, file: string) => `Last backup: ${at}, ${file}.`,
  troubles: {
    forbidden: (name: string) =>
      `The browser needs your OK to save into “${name}”. Until then there is no automatic backup.`,
    gone: (name: string) => `The folder “${name}” was moved or deleted. Put it back, or pick another.`,
    full: (name: string) => `The disk with “${name}” is full. Free some space, or pick another folder.`,
    failed: (name: string) =>
      `We couldn’t save into “${name}”. We’ll try again in a few minutes. If it keeps failing, pick another folder.`,
    fewer: (name: string) =>
      `A backup made now would hold far fewer items than the last one in “${name}”, so we made none. Look at the shelf first. If it is right, save the backup.`,
  },

  aside: 'Set aside',
  asideWhy:
    'This version of the app can’t open these items. They are unchanged, and a newer version may open them.',
  asideCount: (count: number) =>
    count === 1 ? 'One item can’t be opened.' : `${count} items can’t be opened.`,
  tryAgain: 'Try again',
  intoBin: 'Move to trash',
  saveAsIs: 'Save a copy to a file',
  asideFile: 'set aside',
  salvageFile: 'everything found',
  salvaged:
    'The browser’s storage is damaged. What we could read is on the shelf. Save everything found to a file before you do anything else.',
  tried: {
    read: (name: string) => `${name} is back on the shelf.`,
    'still-not': (name: string) => `${name} still can’t be opened. It’s unchanged.`,
    gone: (name: string) => `${name} is no longer there.`,
    'not-now': (name: string) => `We couldn’t check ${name} just now. It’s unchanged.`,
    binned: (name: string) => `${name} is in the trash, unchanged, for 30 days.`,
    'not-binned': (name: string) => `We couldn’t move ${name}. It’s unchanged.`,
  },

  earlier: 'Earlier versions',
  earlierWhy:
    'We keep up to 20 earlier versions of everything you change. Restoring one adds it as a copy; nothing is replaced.',
  noEarlier: 'None yet. We save them as you work.',
  bringBeside: 'Restore as a copy',
  beforeUpgrade: 'saved before an app update',
  unreadable: 'This version of the app can’t open it.',
  notHere: 'no longer on the shelf',
  likeNow: 'same as now',
  statesOfRow: (count: number, newest: string) => `${plural(count, 'earlier version')}, newest ${newest}`,
  besideName: (name: string, at: string) => `${name}, ${at}`,
  broughtBack: (name: string) => `“${name}” is on the shelf.`,
  showAll: (count: number) => `Show all ${count}`,

  bin: 'Trash',
  binWhy: 'Deleted items stay here for 30 days on which you use the app.',
  binEmpty: 'The trash is empty.',
  takeOut: 'Restore',
  deletedAt: (deleted: string) => `deleted ${deleted}`,
  emptyBin: 'Empty the trash',
  emptyBinSure: (count: number) => `Delete ${plural(count, 'item')} for good`,
  forgetEarlier: 'Delete the trash and all earlier versions',
  forgetEarlierSure: 'Delete all of them for good',
  earlierForgotten: 'The trash and the earlier versions are deleted. Their space is free.',

  erase: 'Erase everything',
  eraseWhy:
    'This deletes every box, event, supply, tool, photo and setting in this browser, with trash and earlier versions. It can’t be undone. Files you saved are not touched.',
  eraseStart: 'Erase everything in this browser',
  eraseWord: 'erase everything',
  eraseHelp: 'Make a backup first if you may want anything again.',
  eraseConfirm: (word: string) => `Type “${word}” to continue`,
  eraseNow: 'Erase everything now',
  eraseLeave: 'Cancel',
  erased: 'Everything in this browser is erased.',
  notErased: 'The browser couldn’t erase it. Reload the page and try again.',
  notListed: 'The browser can’t list this right now.',
};

import { plural } from './plural';

export const frameMessages = {
  frame: {
    product: 'Crease & Count',
    toShelf: 'Go to the shelf',
    toPage: 'Go to the page',
    pages: 'Pages',
    places: 'Places',
    choosePaper: 'Choose a paper',
    choosePaperWhy: 'Then sheets and cost can be worked out.',
    yourPaper: 'Your paper',
    newPaper: 'New paper',
    newPaperHelp: 'Copy the label, such as 12x12, 65 lb, white, $12.99 for 25.',
    paperUnread: 'This has no sheet size. Start with one: 12x12 or 8 1/2 x 11 in.',
    print: 'Print',
    useIt: 'Use it',
    undo: 'Undo',
    redo: 'Redo',
    preferences: 'Settings',
    unit: 'Unit',
    inches: 'Inches',
    millimetres: 'Millimeters',
    theme: 'Theme',
    light: 'light',
    dark: 'dark',
    contrast: 'high contrast',
    find: 'Search',
    help: 'Help',
    system: 'same as this device',
    name: 'Name',
    loading: 'Opening',
    broken: 'This page didn’t load',
    brokenRemedy: 'What you typed is safe. Undo the last step, or open another page.',
    again: 'Try again',
    unplanned: 'We couldn’t work out this event',
    unplannedWhy: 'Your work is safe. Other events and pages still work.',
    unanswered: 'Something went wrong. A page that says it is still working has stopped. Your work is safe.',
    unread: 'Your work didn’t load',
    partMissing:
      'Part of the app didn’t load. What needs it won’t work until you try again. The rest still works.',
    appBroken: 'The app didn’t load',
    appBrokenRemedy: 'What was saved is still saved. Save everything to a file to be sure, then try again.',
    saveFile: 'Save everything to a file',
    notFound: 'Nothing is at this address',
    notFoundWhy: 'It may have been deleted. The trash keeps items for 30 days.',
    boxesOfEvent: 'Boxes in this event',
    dismiss: 'Dismiss',
    newerVersion: 'A newer version is ready. Your work is safe, and you come back to this page.',
    newerVersionUnsaved: 'A newer version is ready. You can update once your work is saved.',
    takeVersion: 'Update now',
    blocked: 'Another tab has an older version open',
    blockedRemedy: 'Close this app’s other tabs. Then this one continues.',
    acceptLoss: 'Continue with what’s here',
    carryOn: 'Continue without saving',
    makeMine: 'Make it yours',
    nameOf: { recipe: 'Name of this box', event: 'Name of this event' },
    kindOf: { recipe: 'box', event: 'event' },
    /** Where a thing that is deleted, or may be, is used. */
    usedIn: (names: readonly string[]) =>
      `Used in ${names.slice(0, 3).join(', ')}${names.length > 3 ? ` and ${names.length - 3} more` : ''}: choose another there if you delete it.`,
    lossFound: (count: number) =>
      count > 0
        ? `This browser has lost ${plural(count, 'item')} since last time. Restore your last backup, or continue with what’s here.`
        : 'This browser returned an older version of your work. Restore your last backup, or continue with what’s here.',
  },
  places: { box: 'Box', decorate: 'Decorate', count: 'Count', buy: 'Cut & buy', make: 'Make' },
  pages: {
    contents: 'Inside',
    box: 'Size',
    fold: 'Fold',
    marks: 'Easy sizes',
    dressing: 'Decorate',
    event: 'Count',
    sheets: 'Sheets',
    shopping: 'Shopping',
    bench: 'Make',
    handout: 'Share',
  },
  needs: {
    pickStyle: 'pick a style',
    whatInside: 'what goes inside?',
    things: (count: number) => plural(count, 'item'),
    easyMarks: 'find easy sizes',
    bare: 'plain',
    ways: (count: number) => plural(count, 'look'),
    seeItClose: '3D preview',
    toTeach: 'print or share',
    howMany: 'how many?',
    needsCount: 'set how many',
    needsPaper: 'choose a paper',
    nothingToBuy: 'nothing to buy',
    mendFirst: 'fix the box first',
    ready: 'steps are ready',
    oneSheet: 'from one sheet',
    counting: 'counting',
    unplanned: 'not worked out',
    sheets: (count: number) => plural(count, 'sheet'),
    buy: (count: number) => `${plural(count, 'item')} to buy`,
    mends: (count: number) => `${count} to fix`,
    favors: (asked: number, spares: number) =>
      spares === 0 ? `${asked}` : `${asked} + ${plural(spares, 'spare')}`,
  },
  faults: {
    full: 'This browser’s storage is full. Save everything to a file, then delete the trash and earlier versions on the Backup page.',
    slow: 'The browser is slow to save. Your work is safe here, and we’ll try again.',
    stale: 'Another tab has a newer version open. Reload this page to continue.',
    newer: 'A newer version saved your work. Reload the page to get that version.',
    blocked: 'Another tab has an older version open. Close it, and this one continues.',
    lost: 'The browser closed its storage. Reload this page; your unsaved work is safe.',
    unfetched:
      'The part of the app that saves your work didn’t load. Nothing is lost. Check your connection and try again.',
    broken:
      'The browser can’t open its storage. Reload the page, or continue without saving and save to a file. If this doesn’t help, clear this site’s data in the browser’s settings and restore your last backup.',
    absent: 'This window doesn’t save anything (a private window?). Save to a file before you close the tab.',
  },
  notices: {
    deleted: (name: string) => `${name} is in the trash.`,
    keptBoth: (name: string) => `Two tabs changed the same item. Both are saved; the second is “${name}”.`,
    cameBack: (name: string) => `Another tab deleted ${name}. You changed it here, so it is back.`,
    stayed: (name: string) => `Another tab changed ${name}, so it was not deleted.`,
    draftRestored: (name: string) =>
      `The tab closed before your last change was saved. It is back${name === '' ? '' : `, in ${name}`}.`,
    imported: (count: string) => `${plural(Number(count), 'item')} imported.`,
    exampleStays: (name: string) =>
      `${name} is an example and can’t be changed. Make it yours to change anything in it.`,
    heldApart: (name: string) =>
      `${name} was changed on another device, and the two changes don’t fit together. Yours is kept here.`,
    exchangeStopped: (count: string) =>
      `Another device tried to delete ${plural(Number(count), 'item')} at once. Nothing was deleted, and syncing is paused.`,
    changedSince: (name: string) => `Another tab changed ${name} after this step. That change stays.`,
    backupMade: (files: string) =>
      Number(files) === 1
        ? 'The backup is in your downloads. We read it back, and it holds everything.'
        : `The backup is in your downloads, in ${files} files. One file would be too large to restore. We read them all back. Keep them together.`,
    backupOfRest: (missing: string) =>
      `This browser’s storage lost ${plural(Number(missing), 'item')}, so the file in your downloads holds only the rest. Keep your last full backup.`,
    backupOfTab: (count: string) =>
      `This browser’s storage doesn’t answer, so the file in your downloads holds what this tab shows: ${plural(Number(count), 'item')}. Keep your last full backup. Reload the page and make a new one.`,
    fileNotWritten: (why: string) =>
      `No file was made, because it could not be read again: ${why}. Split what is too large, or remove photos or drawings.`,
    backupDue: () => 'Time for a backup: choose “Save everything to a file” under Backup on the shelf.',
  },
};

import type { FrameWords } from '../../ui/words/frame-words';
import { plural } from './plural';

export const frameMessages: FrameWords = {
  frame: {
    product: 'Crease & Count',
    toShelf: 'To the shelf',
    toPage: 'Go to the page',
    pages: 'Pages of this workbook',
    undo: 'Undo',
    redo: 'Redo',
    preferences: 'Unit and light',
    unit: 'Unit',
    inches: 'Inches',
    millimetres: 'Millimetres',
    theme: 'Light or dark',
    light: 'light',
    dark: 'dark',
    system: 'as the system',
    name: 'Name',
    loading: 'Opening',
    broken: 'This page could not be drawn',
    brokenRemedy: 'What you have typed is kept. Go back one step with Undo, or open another page.',
    again: 'Try again',
    notFound: 'There is nothing at this address',
    notFoundWhy: 'It may have been deleted. The bin at the foot of the shelf keeps things for 30 days.',
    boxesOfEvent: 'Boxes of this event',
    dismiss: 'Put this note away',
    newerVersion:
      'A newer version of the app is ready. Your work is kept; the page opens again where you are.',
    newerVersionUnsaved: 'A newer version of the app is ready. It can be taken once your work is kept.',
    takeVersion: 'Take it now',
    blocked: 'Another tab holds an older version open',
    blockedRemedy: 'Close the other tabs of this app; this one goes on by itself.',
    acceptLoss: 'Go on with what is here',
    carryOn: 'Work on without keeping',
    makeMine: 'Make it yours',
    nameOf: { recipe: 'Name of this recipe', event: 'Name of this event' },
    kindOf: { recipe: 'recipe', event: 'event' },
    lossFound: (count) =>
      count > 0
        ? `This browser has lost ${plural(count, 'thing')} since the last time. Read in your last file with everything, or go on with what is here.`
        : 'This browser gave back an older state than was last kept. Read in your last file with everything, or go on with what is here.',
  },
  pages: {
    contents: 'Contents',
    box: 'Box',
    fold: 'Fold',
    marks: 'Marks',
    dressing: 'Dressing',
    event: 'Event',
    sheets: 'Sheets',
    shopping: 'Shopping',
    bench: 'Bench',
    handout: 'Handout',
  },
  needs: {
    pickStyle: 'pick a style',
    whatInside: 'what goes inside?',
    things: (count) => plural(count, 'thing'),
    easyMarks: 'find easy marks',
    bare: 'nothing on it yet',
    ways: (count) => (count === 1 ? 'one way' : `${count} ways`),
    seeItClose: 'see it close',
    toTeach: 'to teach it',
    howMany: 'how many?',
    needsCount: 'needs a count',
    needsPaper: 'choose a paper',
    nothingToBuy: 'nothing to buy',
    mendFirst: 'mend the box first',
    ready: 'card is ready',
    oneSheet: 'from one sheet',
    counting: 'counting',
    sheets: (count) => plural(count, 'sheet'),
    buy: (count) => `${plural(count, 'thing')} to buy`,
    mends: (count) => `${count} to mend`,
    favors: (asked, spares) => (spares === 0 ? `${asked}` : `${asked} and ${plural(spares, 'spare')}`),
  },
  faults: {
    full: 'There is no room left in this browser’s storage. Save everything to a file, then delete what you no longer need.',
    slow: 'The browser did not answer in time. Your work is held here and will be tried again.',
    stale: 'A newer version of this app was opened in another tab. Load this page again to go on.',
    newer: 'Your work was last kept by a newer version of this app. Load the page again to get that version.',
    blocked: 'Another tab holds an older version open. Close it, and this one goes on.',
    lost: 'The browser let go of its storage. Load this page again; unsaved work is held for you.',
    broken:
      'The browser cannot open its storage. Load the page again, or work on without keeping and save to a file. If it stays so, clearing this site’s data in the browser’s settings begins afresh; read your last file with everything in after that.',
    absent:
      'This browser keeps nothing in this mode. What you make is gone when the tab closes, so save it to a file.',
  },
  notices: {
    deleted: (name) => `${name} is in the bin.`,
    keptBoth: (name) => `Two tabs changed the same thing. Both are kept; the second is “${name}”.`,
    cameBack: (name) => `${name} had been deleted in another tab; since you worked on it, it is back.`,
    stayed: (name) => `${name} was changed in another tab, so it was not deleted.`,
    draftRestored: (name) =>
      `The last thing you typed was not kept when the tab closed. It is back${name === '' ? '' : `, in ${name}`}.`,
    imported: (count) => `${plural(Number(count), 'thing')} read in.`,
    exampleStays: (name) =>
      `${name} is an example and stays as it is. Make it yours, and everything in it can be changed.`,
    heldApart: (name) =>
      `${name} was changed on another device in a way that does not go with yours. Yours stays as it is here.`,
    exchangeStopped: (count) =>
      `Another device would have taken ${plural(Number(count), 'thing')} off the shelf at once. Nothing was taken, and nothing goes to and fro now.`,
    backupDue: () =>
      'It is time for a copy outside this browser: “Save everything to a file”, at the foot of the shelf.',
  },
};

import { plural } from './plural';

/** A shelf on several devices, and links for helpers and learners. */
export const sharingMessages = {
  title: 'Use on another device',
  why: 'See the same shelf on your phone and your laptop. Both work without a network and catch up later.',
  isThere: 'Check for a sharing server',
  looking: 'Looking …',
  notThere: 'This address has no sharing server. Start the app with npm run share, then open it there.',
  notSecure:
    'This address isn’t secure, so the browser can’t lock your work before it is sent. Open the app at an https address.',
  deviceName: 'Name of this device',
  deviceHelp: 'So you know it in the list. “This device” if you leave it empty.',
  thisDevice: 'This device',
  begin: 'Share this shelf',
  linkTitle: 'Link for your other device',
  linkWhy:
    'Open it there, or point its camera at the code. Whoever has this link can see and change everything. The key in it never reaches the server.',
  copy: 'Copy the link',
  copied: 'Copied.',
  notCopied: 'Not copied. Select the link and copy it yourself.',
  code: 'QR code of the link',
  shown: {
    title: 'Links for helpers and learners',
    why: 'A link shows one event and nothing else: no prices, no guests, no other box. Helpers see what to do now and count along. Learners see the steps.',
    noEvents: 'First add a box to one of your own events, on its Count page.',
    event: 'Event',
    make: { bench: 'Make a link for helpers', class: 'Make a link for learners' },
    notNow: 'We couldn’t make the link now. Try again when this page says Connected.',
    notWithdrawn: 'We couldn’t withdraw the link now. Try again when this page says Connected.',
    kinds: {
      bench: (name: string) => `${name}, for helpers`,
      class: (name: string) => `${name}, for learners`,
    },
    away: 'We can’t list your links while this device is offline. They come back when it connects.',
    newest: 'shows the newest version.',
    asItWas: 'shows the event as it was before you deleted it.',
    notYet: 'waiting for the server.',
    going: 'withdrawn. Waiting for the server.',
    helpers: (count: number) =>
      count === 0 ? 'No one has counted yet.' : `${plural(count, 'helper')} counted.`,
    gone: 'Deleted event',
    showLink: 'Show the link',
    linkOf: (title: string) => `Link: ${title}`,
    withdraw: 'Withdraw',
    withdrawOf: (title: string) => `Withdraw ${title}`,
    withdrawWhy: {
      bench:
        'Helpers can’t count by this link any more. Their counts so far stay. What they saw, they may remember.',
      class: 'Learners see nothing by this link any more. What they saw, they may remember.',
    },
  },
  devices: 'Devices',
  you: 'this one',
  hasAll: 'has everything from here',
  hasNot: 'doesn’t have your latest changes yet',
  lastHeard: (at: string) => `last seen ${at}`,
  remove: 'Remove',
  removeOf: (name: string) => `Remove ${name}`,
  removeWhy: (name: string) =>
    `${name} keeps what it has. It gets nothing new. The others get a new key by themselves. Old links stop working, those for helpers and learners too.`,
  removing: 'Moving everything to a new key …',
  notRemoved: 'It could not be removed now. Try again when the server answers.',
  cancel: 'Cancel',
  leave: 'Stop sharing on this device',
  state: {
    off: 'Another tab of this browser is syncing.',
    offline: 'Offline. Everything is kept here and is sent when the server answers.',
    joining: 'Looking for the server …',
    joined: 'Connected.',
    asks: 'Paused: another device deleted a lot at once.',
    removed:
      'This device was removed from the list. Everything you had stays here. Nothing is sent any more.',
    refused: 'The server doesn’t let this device in. Everything stays here.',
  },
  sent: (unsent: number, received: number, others: number) => {
    if (unsent > 0) return `Kept here. ${plural(unsent, 'change')} not sent yet.`;
    return others === 0
      ? 'Kept here and on the server. No other device has joined yet.'
      : `Kept here and on the server. Received by ${received} of ${plural(others, 'other device')}.`;
  },
  asks: (count: number) =>
    `Another device deleted ${plural(count, 'item')}. That is more than a fifth of your shelf. Should they go here too?`,
  takeDeletions: 'Delete them here too',
  keepAll: 'Keep them everywhere',
  joinTitle: 'Join a shared shelf',
  joinWhy: 'The shelves of both devices go together. Nothing is lost: where two items differ, you get both.',
  joinBackup: 'Your browser saves a backup of this device first.',
  join: 'Join',
  joinBroken: 'Part of this link is missing. Copy it again from the other device.',
  joinedAlready: 'This device already shares a shelf. Stop sharing first, then open the link again.',
};

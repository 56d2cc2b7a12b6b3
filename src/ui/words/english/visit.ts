import { plural } from './plural';

/** What helpers and learners read who opened a link to one event. */
export const visitMessages = {
  titles: { bench: 'Batch sheet for helpers', class: 'Steps for learners' },
  how: 'Do your step. Press +1 after each piece. Everyone’s counts add up.',
  connected: 'Connected.',
  offline: 'Offline.',
  unsent: (count: number, up: boolean) =>
    `Your counts of ${plural(count, 'step')} aren’t sent yet.${up ? '' : ' Keep counting, and keep this page open until they are sent.'}`,
  sent: 'Your counts are sent. The host’s device hasn’t received all of them yet.',
  received: 'The host has all your counts.',
  newest: 'You see the newest version the host has sent.',
  lastSeen: 'You see the version of your last connection.',
  care: 'Take care',
  over: 'This link was withdrawn',
  overWhy: 'It no longer shows anything. Ask whoever gave it to you for a new one.',
  overCounts: (unsent: number) =>
    unsent === 0
      ? 'Every count you made before was sent. Ask whoever gave you the link for a new one.'
      : `Your counts of ${plural(unsent, 'step')} can’t be sent any more. Tell the host, and ask for a new link.`,
  waits: {
    joining: 'Looking for the event …',
    joined: 'Looking for the event …',
    offline: 'The server can’t be reached. We keep trying.',
    refused: 'There is nothing behind this link yet. Keep this page open, or ask for a new link.',
  },
  otherTab: 'This link is open in another tab of this browser. Close that tab to continue here.',
  broken: 'Part of this link is missing',
  brokenWhy: 'Scan the code again, or ask for the link again.',
  notSecure:
    'This address isn’t secure, so the browser can’t open what was locked. Ask for an https address.',
};

import type { CommandWords } from '../../ui/words/command-words';
import { plural } from './plural';

export const commandMessages: CommandWords = {
  find: 'Find and do',
  findHelp: 'A page, an act, a box or an event. Arrows choose, Enter does it.',
  none: 'Nothing of that name.',
  close: 'Close',
  keys: 'Keys',
  keysWhy:
    'On a Mac, Cmd in place of Ctrl. No key does anything while you type into a field, but those with Ctrl.',
  toKeys: 'All keys',
  keepNow: 'Keep everything now',
  newBox: 'New box',
  keeping: 'Safe keeping',
  thisList: 'Find and do',
  theseKeys: 'These keys',
  fieldUp: 'In a length: one mark of your ruler more or less',
  fieldUpMore: 'In a length: a longer step',
  fieldBack: 'In a length: back to what it was',
  fieldTake: 'In a length: take what is typed',
  zoomIn: 'In a drawing: nearer',
  zoomOut: 'In a drawing: farther',
  zoomWhole: 'In a drawing: all of it',
  kinds: { act: 'act', page: 'page', place: 'place', event: 'event', recipe: 'box' },
  measureIn: (unit) => `Measure in ${unit.toLowerCase()}`,
  found: (count) => plural(count, 'thing'),
};

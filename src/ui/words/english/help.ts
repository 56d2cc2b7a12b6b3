import { glossaryEntries } from './glossary';
import { glossaryNames } from './glossary-names';
import { keyMessages } from './keys';

export const helpMessages = {
  title: 'Help',
  why: 'Lines, craft words and keys explained.',
  toShelf: 'Go to the shelf',
  lines: 'Lines',
  linesWhy:
    'They look the same on screen and on paper, and none depends on color. Exported files name each kind of line instead.',
  line: 'Line',
  looks: 'Drawn as',
  hands: 'What to do',
  net: 'A net with its lines',
  netWhy: 'An open-top box laid flat, inside up.',
  words: 'Words',
  keys: 'Keys',
  ofKeys: keyMessages,
  ofLine: {
    cut: { looks: 'wide, unbroken', hands: 'Cut all the way through.' },
    'score-valley': { looks: 'dashes', hands: 'Score, then fold toward you.' },
    'score-mountain': { looks: 'dash and dot', hands: 'Score, then fold away from you.' },
    'score-flat': { looks: 'short dashes', hands: 'Score it. It is flat again when the box is closed.' },
    slit: { looks: 'wide, a bar at each end', hands: 'Cut from bar to bar. Stop at the bars.' },
    glue: { looks: 'slanted hatch, letter G', hands: 'Glue or tape the side you see.' },
    'glue-below': {
      looks: 'broken hatch, letter G and an arrow',
      hands: 'Turn the piece over and glue there.',
    },
    bare: { looks: 'slanted hatch in a frame', hands: 'Leave it plain. Glue sticks to bare cardstock.' },
    covered: { looks: 'thin broken hatch', hands: 'Hidden when the box is closed.' },
    waste: { looks: 'crossed hatch', hands: 'Cut it away.' },
    bleed: {
      looks: 'fine dots',
      hands: 'Let a pattern run out to here, so no white edge shows after cutting.',
    },
    edge: { looks: 'narrow, unbroken', hands: 'Nothing. It is the edge of the piece.' },
    offcut: { looks: 'dash and two dots', hands: 'Keep this piece. It is large enough to use.' },
    grain: { looks: 'an arrow at both ends', hands: 'Lay the cardstock so its fibers run this way.' },
    dimension: {
      looks: 'thin, with slanted ticks',
      hands: 'Measure from the 0. Nothing needs adding up.',
    },
    move: { looks: 'an arrow', hands: 'Turn or move the piece this way.' },
  },
  /** In the order of the alphabet of the language. */
  names: glossaryNames,
  entries: glossaryEntries,
};

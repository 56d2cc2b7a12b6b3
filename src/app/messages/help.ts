import type { HelpWords } from '../../ui/words/help-words';
import { glossaryEntries } from './glossary';
import { glossaryNames } from './glossary-names';
import { keyMessages } from './keys';

export const helpMessages: HelpWords = {
  title: 'Words and lines',
  why: 'What the lines of the drawings tell your hands, and what the words of the trade mean here.',
  toShelf: 'To the shelf',
  lines: 'Lines',
  linesWhy:
    'They look the same on screen and on paper, and none depends on color. Files for other programs name each kind of line instead.',
  line: 'Line',
  looks: 'Looks like',
  hands: 'What hands do',
  net: 'A net with its lines',
  netWhy: 'An open-top box laid flat, as it lies on the bench with its inside up.',
  words: 'Words',
  keys: 'Keys',
  ofKeys: keyMessages,
  ofLine: {
    cut: { looks: 'wide, unbroken', hands: 'Cut through, from edge to edge or round a corner.' },
    'score-valley': { looks: 'dashes', hands: 'Score, then fold towards you.' },
    'score-mountain': { looks: 'dash and dot', hands: 'Score, then fold away from you.' },
    'score-flat': { looks: 'short dashes', hands: 'Score; it lies flat again when the box is closed.' },
    slit: { looks: 'wide, a bar at each end', hands: 'Cut through from bar to bar, and stop at the bars.' },
    glue: { looks: 'slanted hatch, letter G', hands: 'Glue or tape on the face you see.' },
    'glue-below': {
      looks: 'broken hatch, letter G and an arrow',
      hands: 'Turn the card over and glue there.',
    },
    bare: { looks: 'slanted hatch in a frame', hands: 'Leave it bare of decoration: glue holds on card.' },
    covered: { looks: 'thin broken hatch', hands: 'Nothing shows here when the box is closed.' },
    waste: { looks: 'crossed hatch', hands: 'Cut it away.' },
    bleed: { looks: 'fine dots', hands: 'Let a print run on to here, so that no white shows after the cut.' },
    edge: { looks: 'narrow, unbroken', hands: 'Nothing: the edge of the card as it is.' },
    offcut: { looks: 'dash and two dots', hands: 'Keep the piece; it is large enough for something.' },
    grain: { looks: 'an arrow at both ends', hands: 'Lay the card so that its fibres run this way.' },
    dimension: {
      looks: 'thin, with slanted ticks',
      hands: 'Measure from the 0; nothing needs to be added up.',
    },
    move: { looks: 'an arrow', hands: 'Turn or move the card so.' },
  },
  names: glossaryNames,
  entries: glossaryEntries,
};

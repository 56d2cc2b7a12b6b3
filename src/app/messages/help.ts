import type { HelpWords } from '../../ui/words/help-words';
import { keyMessages } from './keys';

export const helpMessages: HelpWords = {
  title: 'Words and lines',
  why: 'What the lines of the drawings tell your hands, and what the words of the trade mean here.',
  toShelf: 'To the shelf',
  lines: 'Lines',
  linesWhy:
    'They look the same on the screen, on paper and in files. None is told by a colour, so a grey printer loses nothing.',
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
  terms: [
    { word: 'Blank', says: 'The rectangle of card one piece is made from, before anything is cut away.' },
    { word: 'Burnish', says: 'To rub a fold or a glued joint flat with a bone folder.' },
    {
      word: 'Caliper',
      says: 'The thickness of card. Measure ten sheets together and divide by ten. Favor card is often near 0.3 mm.',
    },
    {
      word: 'Clearance',
      says: 'Air between a thing and the walls, so that it goes in and comes out again.',
    },
    {
      word: 'Dressing',
      says: 'What goes onto the box: bands, ribbon, tags, layers of paper.',
    },
    {
      word: 'Easy mark',
      says: 'A number that your tool has a mark for, best a whole or a half: found at a glance, hard to miss.',
    },
    { word: 'Fence', says: 'The raised edge of a trimmer or board that the card is pushed against.' },
    {
      word: 'Flap',
      says: 'A panel that closes an end. Flaps at the bottom lie on one another and are glued.',
    },
    {
      word: 'Glue tab',
      says: 'The narrow panel at the end of the row of walls that is glued to the first wall.',
    },
    {
      word: 'Grain',
      says: 'The way the fibres of the card run. Along the grain it folds cleanly; across it the fold may crack.',
    },
    { word: 'Inside, outside', says: 'Sizes of the room within, and of the closed box, card and all.' },
    { word: 'Kerf', says: 'What a cut takes away. A blade takes nothing; a saw or a beam does.' },
    {
      word: 'Lap',
      says: 'The way one glued panel lies over another, in an order that lets both be reached.',
    },
    { word: 'Liner', says: 'A second layer inside the back of a tall box, so that it stands straight.' },
    { word: 'Net', says: 'The whole piece laid flat, with its cuts and scores.' },
    { word: 'Offcut', says: 'What is left of a sheet. A large one can be kept for liners, tags and bands.' },
    { word: 'Panel', says: 'A face of the box between scores or edges: a wall, a flap, a tab, the floor.' },
    {
      word: 'Roughness',
      says: 'How hard the marks of a box are to find, added up. Whole inches or centimetres count nothing.',
    },
    { word: 'Scant, full', says: 'A hair less, or a hair more, than the mark that is named.' },
    { word: 'Score', says: 'A crease pressed into the card, so that it folds there and nowhere else.' },
    { word: 'Score to score', says: 'The size of a panel as it is measured on the flat card.' },
    { word: 'Sheet', says: 'Card as it is sold. A “12 inch” sheet may measure 11 7/8: measure yours.' },
    { word: 'Slit', says: 'A cut within the card that leaves both sides joined at its end.' },
    { word: 'Spares', says: 'Boxes made beyond those ordered, since some spoil.' },
    { word: 'Squaring', says: 'A narrow strip cut off an edge first, so that the corner is true.' },
    { word: 'Yield', says: 'How many pieces a sheet gives.' },
  ],
};

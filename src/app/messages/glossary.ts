import type { GlossaryEntries } from '../../ui/words/glossary-words';

export const glossaryEntries: GlossaryEntries = {
  blank: {
    says: 'The rectangle of card one piece is made from, before anything is cut away.',
    shows: 'A rectangle of card with two corners crossed out, which are cut away.',
  },
  burnish: { says: 'To rub a fold or a glued joint flat with a bone folder.' },
  caliper: {
    says: 'The thickness of card. Measure ten sheets together and divide by ten. Favor card is often near 0.3 mm.',
    shows: 'Ten sheets on top of one another from the side, measured together.',
  },
  clearance: {
    says: 'Air between a thing and the walls, so that it goes in and comes out again.',
    shows: 'A box cut open, a thing standing in it, and the air measured on both sides.',
  },
  dressing: {
    says: 'What goes onto the box: bands, ribbon, tags, layers of paper.',
    shows: 'The front of a box with a band round it and a tag on the band.',
  },
  'easy-mark': {
    says: 'A number that your tool has a mark for, best a whole or a half: found at a glance, hard to miss.',
    shows: 'A ruler, and a score that stands on one of its long marks.',
  },
  fence: {
    says: 'The raised edge of a trimmer or board that the card is pushed against.',
    shows: 'Card pushed to the left against a bar; a score measured from the bar.',
  },
  flap: {
    says: 'A panel that closes an end. Flaps at the bottom lie on one another and are glued.',
    shows: 'A panel, and below its score a narrower one named flap.',
  },
  'glue-tab': {
    says: 'The narrow panel at the end of the row of walls that is glued to the first wall.',
    shows: 'The end of a row of panels: a narrow one hatched for glue, with a G.',
  },
  grain: {
    says: 'The way the fibres of the card run. Along the grain it folds cleanly; across it the fold may crack.',
    shows: 'A card with fibres from left to right and an arrow at both ends along them.',
  },
  'inside-outside': {
    says: 'Sizes of the room within, and of the closed box, card and all.',
    shows: 'A box cut open, measured once within its walls and once over them.',
  },
  kerf: {
    says: 'What a cut takes away. A blade takes nothing; a saw or a beam does.',
    shows: 'A card parted in two; the strip between both cuts is gone.',
  },
  lap: {
    says: 'The way one glued panel lies over another, in an order that lets both be reached.',
    shows: 'One panel lying over the edge of another, hatched for glue where they meet.',
  },
  liner: {
    says: 'A second layer inside the back of a tall box, so that it stands straight.',
    shows: 'A tall back with a second layer on it, a little smaller.',
  },
  net: {
    says: 'The whole piece laid flat, with its cuts and scores.',
    shows:
      'Four walls in a row with a tab, flaps below them, dashes where it is scored, slits between the flaps.',
  },
  offcut: {
    says: 'What is left of a sheet. A large one can be kept for liners, tags and bands.',
    shows: 'A sheet, a part cut from its left, and what is left of it kept.',
  },
  panel: {
    says: 'A face of the box between scores or edges: a wall, a flap, a tab, the floor.',
    shows: 'Four walls in a row, one of them set off.',
  },
  roughness: {
    says: 'How hard the marks of a box are to find, added up. Whole inches or centimetres count nothing.',
  },
  'scant-full': {
    says: 'A hair less, or a hair more, than the mark that is named.',
    shows: 'A mark of a ruler, with one line a hair before it and one a hair after.',
  },
  score: {
    says: 'A crease pressed into the card, so that it folds there and nowhere else.',
    shows:
      'A card with a dashed line, which is folded towards you, and a line of dashes and dots, folded away.',
  },
  'score-to-score': {
    says: 'The size of a panel as it is measured on the flat card.',
    shows: 'A row of panels, measured from one score to the next.',
  },
  sheet: {
    says: 'Card as it is sold. A “12 inch” sheet may measure 11 7/8: measure yours.',
    shows: 'A whole sheet, measured across and up.',
  },
  slit: {
    says: 'A cut within the card that leaves both sides joined at its end.',
    shows:
      'A card with a score across it, and a cut from its lower edge to the score, with a bar at each end.',
  },
  spares: {
    says: 'Boxes made beyond those ordered, since some spoil.',
    shows: 'Eight boxes in two rows, and one more beside them.',
  },
  squaring: {
    says: 'A narrow strip cut off an edge first, so that the corner is true.',
    shows: 'A sheet whose left edge falls away in a narrow strip.',
  },
  yield: {
    says: 'How many pieces a sheet gives.',
    shows: 'A sheet cut in six equal parts, with a narrow strip left.',
  },
};

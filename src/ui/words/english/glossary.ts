import type { PicturedWord } from '../../../core/draw/strokes/word-pictures';
import type { GlossaryWord } from './glossary-names';
export const glossaryEntries = {
  blank: {
    says: 'The rectangle you cut first for a piece. The trade calls it a blank.',
    shows: 'A rectangle with two corners crossed out, to cut away.',
  },
  burnish: { says: 'Rub a fold or a glued joint flat with a bone folder.' },
  caliper: {
    says: 'The thickness of a paper. Measure ten sheets together and divide by ten. Favor boxes are often near 0.3 mm (0.012 in).',
    shows: 'Ten sheets in a stack, seen from the side and measured together.',
  },
  clearance: {
    says: 'The gap around an item, so it goes in and comes out again. The trade calls it clearance.',
    shows: 'A box cut open with an item in it, and the gap measured on both sides.',
  },
  dressing: {
    says: 'Anything on the box: bands, ribbon, tags, layers of paper. A saved set of them is a look.',
    shows: 'The front of a box with a band around it and a tag on the band.',
  },
  'easy-mark': {
    says: 'A size that falls on your tool’s big marks, best a whole or a half. You find it at a glance.',
    shows: 'A ruler, and a score on one of its long marks.',
  },
  fence: {
    says: 'The raised edge of a trimmer or board that you push the paper against.',
    shows: 'A sheet pushed left against a bar, and a score measured from the bar.',
  },
  flap: {
    says: 'A panel that closes an end. Bottom flaps overlap and are glued.',
    shows: 'A panel, and below its score a narrower panel called flap.',
  },
  'glue-tab': {
    says: 'The narrow panel at the end of the walls. It is glued to the first wall.',
    shows: 'The end of a row of panels: a narrow one hatched for glue and marked G.',
  },
  grain: {
    says: 'The way the fibers run. Cardstock folds cleanly along the grain. A fold across it may crack.',
    shows: 'A sheet with fibers from left to right, and an arrow along them.',
  },
  'inside-outside': {
    says: 'Inside is the space within the walls. Outside is the closed box, walls included.',
    shows: 'A box cut open, measured once inside its walls and once outside.',
  },
  kerf: {
    says: 'The width a cut takes away. A blade takes nothing. A saw or a laser does.',
    shows: 'A sheet cut in two, and the strip between is gone.',
  },
  lap: {
    says: 'How far one glued panel overlaps another.',
    shows: 'One panel over the edge of another, hatched for glue where they meet.',
  },
  liner: {
    says: 'A second layer inside the back of a tall box, to keep it straight.',
    shows: 'A tall back with a second layer on it, a little smaller.',
  },
  net: {
    says: 'A piece drawn flat, with its cuts and scores.',
    shows:
      'Four walls in a row with a tab. Flaps are below them, with dashes for scores and slits between the flaps.',
  },
  offcut: {
    says: 'The rest of a sheet after cutting. Keep a large one for liners, tags and bands.',
    shows: 'A sheet with a piece cut from its left, and the rest kept.',
  },
  panel: {
    says: 'One flat face between scores or edges: a wall, a flap, a tab or the floor.',
    shows: 'Four walls in a row, with one marked.',
  },
  roughness: {
    says: 'How fine the marks of a box are, added up. 0 means whole inches or whole centimeters.',
  },
  'scant-full': {
    says: 'Scant is a hair less than the mark. Full is a hair more.',
    shows: 'A ruler mark, with one line a hair before it and one a hair after.',
  },
  score: {
    says: 'A crease pressed into cardstock, so it folds there and nowhere else.',
    shows: 'A dashed line, folded toward you, and a dash-and-dot line, folded away.',
  },
  'score-to-score': {
    says: 'The size of a panel measured flat, from one score to the next.',
    shows: 'A row of panels, measured from one score to the next.',
  },
  sheet: {
    says: 'Paper as it is sold. A “12 inch” sheet may be 11 7/8 in, so measure yours.',
    shows: 'A whole sheet, measured across and up.',
  },
  slit: {
    says: 'A cut that stops inside the piece, so both sides stay joined.',
    shows:
      'A piece with a score across it. A cut runs from its lower edge to the score, with a bar at each end.',
  },
  spares: {
    says: 'Extra boxes, because some go wrong.',
    shows: 'Eight boxes in two rows, and one extra.',
  },
  squaring: {
    says: 'Trim a narrow strip off an edge first, so the corner is square.',
    shows: 'A sheet with a narrow strip cut off its left edge.',
  },
  yield: {
    says: 'How many pieces you get from a sheet.',
    shows: 'A sheet cut into six equal pieces, with a narrow strip left.',
  },
} satisfies { readonly [Word in PicturedWord]: { readonly says: string; readonly shows: string } } & {
  readonly [Word in GlossaryWord]: { readonly says: string };
};

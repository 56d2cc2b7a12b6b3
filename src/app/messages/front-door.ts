import type { FrontDoorWords } from '../../ui/words/front-door-words';
import { plural } from './plural';

export const frontDoorMessages: FrontDoorWords = {
  title: 'What goes in?',
  why: 'Answer four questions. Boxes that hold it and fit your paper appear as you type.',
  item: 'What goes in?',
  itemHelp: 'Choose from the list, or type its size.',
  measured: 'I measured it',
  size: 'Its size',
  sizeHelp:
    'Width x depth x height, such as 2 x 2 x 3. For something round: across x tall. For a ball: across.',
  sizeUnread: 'This does not read as a size. Type it like 2 x 2 x 3 or 50 x 50 x 75 mm.',
  each: 'How many in each box?',
  eachHelp: 'They are packed for you.',
  favors: 'How many favors?',
  favorsHelp: 'One for each guest. Spares are added.',
  paper: 'What paper?',
  paperHelp: 'Paper you have, or could buy.',
  typed: 'I type it',
  typedPaper: 'Your paper',
  typedHelp: 'As on the wrapper, such as 12x12, 65 lb, white, $12.99 for 25.',
  typedUnread: 'There is no sheet size in this. Start with it: 12x12 or 8 1/2 x 11 in.',
  tool: 'What do you cut and score with?',
  toolHelp: 'Every mark falls on the marks of this tool.',
  noTool: 'Ruler and knife',
  tools: {
    trimmer: 'Paper trimmer, 12 in, marks every 1/16 in',
    board: 'Scoring board, 12 in, a groove every 1/8 in',
    metric: 'Paper trimmer, 30 cm, marks every 1 mm',
  },
  matters: 'What matters most?',
  ranks: {
    easiest: 'Easiest',
    'least-paper': 'Least paper',
    quickest: 'Quickest',
    sturdiest: 'Sturdiest',
    fanciest: 'Fanciest',
  },
  must: 'It must',
  merits: {
    lid: 'close with a lid',
    tall: 'stand tall',
    'flat-packet': 'be a flat packet',
    'no-glue': 'need no glue',
    'trimmer-only': 'have scores from edge to edge only',
    'one-sheet': 'fit on one sheet',
  },
  answers: 'Boxes for it',
  needsSize: 'Type its size or choose it from the list, and boxes appear here.',
  needsPaper: 'Type your paper or choose one, and boxes appear here.',
  looking: 'Still looking.',
  stop: 'Stop',
  nothing: 'None of the styles holds it on this paper. Try a larger sheet, or fewer in each box.',
  nothingFiltered: 'No box has all of these. Untick one.',
  knowShape: 'I know the shape',
  make: 'Make this box',
  noPrice: 'no price given',
  watch: 'Good to know',
  newBox: 'New box',
  plainGoods: 'Contents',
  closings: {
    lid: 'closes with a separate lid',
    tuck: 'tucks shut',
    sleeve: 'slides into a sleeve',
    folds: 'folds shut',
    open: 'stays open at the top',
  },
  sheets: (count, atLeast) =>
    atLeast === 0
      ? `${plural(count, 'sheet')} for all`
      : count === atLeast
        ? `${plural(count, 'sheet')} for all, the fewest possible`
        : `${plural(count, 'sheet')} for all, within ${count - atLeast} of the fewest`,
  perSheet: (count) => `${count} per sheet`,
  minutes: (count) => (count < 120 ? `about ${count} minutes` : `about ${Math.round(count / 30) / 2} hours`),
  cost: (money) => `${money} of paper`,
  finest: (mark) => `finest mark ${mark}`,
  fits: (spare) => `up to ${spare} to spare`,
  glued: (count) => (count === 0 ? 'no glue' : plural(count, 'glued joint')),
  found: (boxes, done, of) =>
    done < of
      ? `${plural(boxes, 'box', 'boxes')} so far, ${done} of ${of} styles looked at.`
      : `${plural(boxes, 'box', 'boxes')}. All ${of} styles looked at.`,
  sold: (sheet, gsm) => `${sheet}, ${gsm === 216 ? '80 lb cover' : `${gsm} g/m²`}`,
  heard: (sheet, gsm, caliper) => `Sheet ${sheet}, ${gsm} g/m², ${caliper} thick.`,
};

import { paperLabelMessages } from './paper-label';
import { plural } from './plural';

export const frontDoorMessages = {
  title: 'What goes in?',
  why: 'Answer four questions. Boxes that hold it and fit your paper appear as you type.',
  item: 'What goes in?',
  itemHelp: 'Choose from the list, or type its size.',
  measured: 'I measured it',
  size: 'Its size',
  sizeHelp:
    'Width x depth x height, such as 2 x 2 x 3. For something round: across x tall. For a ball: across.',
  sizeUnread: 'This isn’t a size. Type it like 2 x 2 x 3 or 50 x 50 x 75 mm.',
  each: 'How many in each box?',
  eachHelp: 'We pack them for you.',
  favors: 'How many favors?',
  favorsHelp: 'One for each guest. We add spares.',
  paper: 'What paper?',
  paperHelp: 'A paper you have or could buy.',
  typed: 'Another paper',
  typedPaper: 'Your paper',
  label: paperLabelMessages,
  tool: 'What do you cut and score with?',
  toolHelp: 'Every measurement falls on this tool’s marks.',
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
  must: 'The box must',
  merits: {
    lid: 'close with a lid',
    tall: 'stand tall',
    'flat-packet': 'be a flat packet',
    'no-glue': 'need no glue',
    'trimmer-only': 'have only edge-to-edge scores',
    'one-sheet': 'fit on one sheet',
  },
  answers: 'Boxes that fit',
  needsSize: 'Choose what goes in, or type its size. Boxes appear here.',
  needsPaper: 'Choose or type your paper. Boxes appear here.',
  looking: 'Still looking',
  stop: 'Stop',
  nothing: 'No style holds it on this paper. Try a larger sheet, or fewer in each box.',
  nothingFiltered: 'No box has all of these. Clear one.',
  knowShape: 'I know the style',
  make: 'Make this box',
  noPrice: 'no price given',
  watch: 'Good to know',
  newBox: 'New box',
  plainGoods: 'My item',
  closings: {
    lid: 'closes with a separate lid',
    tuck: 'tucks shut',
    sleeve: 'slides into a sleeve',
    folds: 'folds shut',
    open: 'stays open at the top',
  },
  sheets: (count: number, atLeast: number) =>
    atLeast === 0
      ? `${plural(count, 'sheet')} for all`
      : count === atLeast
        ? `${plural(count, 'sheet')} for all, the fewest possible`
        : `${plural(count, 'sheet')} for all, within ${count - atLeast} of the fewest`,
  perSheet: (count: number) => `${count} per sheet`,
  minutes: (count: number) =>
    count < 120 ? `about ${count} minutes` : `about ${Math.round(count / 30) / 2} hours`,
  cost: (money: string) => `${money} of paper`,
  finest: (mark: string) => `finest mark ${mark}`,
  fits: (spare: string) => `up to ${spare} to spare`,
  glued: (count: number) => (count === 0 ? 'no glue' : plural(count, 'glued joint')),
  found: (boxes: number, done: number, of: number) =>
    done < of
      ? `${plural(boxes, 'box', 'boxes')} so far. Checked ${done} of ${of} styles.`
      : `${plural(boxes, 'box', 'boxes')}. Checked all ${of} styles.`,
  sold: (sheet: string, gsm: number) => `${sheet}, ${gsm === 216 ? '80 lb cover' : `${gsm} g/m²`}`,
};

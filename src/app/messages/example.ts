import type { MakingWords } from '../../ui/words/making-words';

export const exampleMessages: MakingWords['example'] = {
  says: (name) =>
    `${name} is an example to look round in. Turn its pages, print what you like: it stays as it is until you make it yours.`,
  ownBox: 'Start a box of your own',
  hints: 'First steps',
  nth: (hint, of) => `${hint} of ${of}`,
  next: 'Next hint',
  noMore: 'No more hints',
  hint: [
    'Work through the places in order, or jump to any of them.',
    'Every number is measured from one edge of the card and stands on the marks of your own tool. Touch a number: the same line lights in the drawing and in the table.',
    'To start your own, choose Start a box of your own and say what goes in it. Your work is saved in this browser. Back it up from the Shelf.',
  ],
};

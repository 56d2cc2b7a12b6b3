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
    'The pages stand in the order of the work. Under each name is what it has got, or what it needs next; open any of them at any time.',
    'Every number is measured from one edge of the card and stands on the marks of your own tool. Touch a number: the same line lights in the drawing and in the table.',
    'A box of your own starts from the thing to be given: its size, on the page Contents. All you make stays in this browser; the foot of the shelf saves it to a file.',
  ],
};

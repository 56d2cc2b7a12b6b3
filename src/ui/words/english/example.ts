export const exampleMessages = {
  app: 'Design favor boxes and make them by the dozen.',
  says: (name: string) => `This is an example: ${name}. Look around and print what you like.`,
  ownBox: 'Start a box of your own',
  hints: 'First steps',
  nth: (hint: number, of: number) => `${hint} of ${of}`,
  next: 'Next hint',
  noMore: 'No more hints',
  /** Read one after the other. */
  hint: [
    'Work through the places in order, or jump to any of them.',
    'Every measurement starts from the same edge and falls on your tool’s own marks. Tap a number to find its line in the drawing and the table.',
    'To start your own, choose Start a box of your own and say what goes in it. Your work is saved in this browser. Back it up from the Shelf.',
  ],
};

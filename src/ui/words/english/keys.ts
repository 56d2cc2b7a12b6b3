import type { Wording } from '../wording';

export const keyMessages = {
  why: 'On a Mac, use Cmd instead of Ctrl. While you type in a field, Undo undoes your typing first.',
  places: {
    anywhere: 'Anywhere',
    length: 'In a length',
    count: 'In a count',
    text: 'In a name or a number',
    drawing: 'In a drawing',
    space: 'In the 3D view',
    cuts: 'In the cuts of a sheet',
    card: 'In the steps',
    batch: 'In the batch',
    list: 'In Search',
  },
  acts: {
    anywhere: {
      undo: 'Undo',
      redo: 'Redo',
      keep: 'Save now',
      find: 'Search',
      keys: 'These keys',
    },
    length: {
      step: 'One ruler mark more or less',
      stride: 'A larger step',
      back: 'Cancel',
      take: 'Apply',
    },
    count: { step: 'One more or less', stride: 'Ten more or less' },
    text: { back: 'Cancel', take: 'Apply' },
    drawing: { nearer: 'Zoom in', farther: 'Zoom out', whole: 'Fit', move: 'Move around, when zoomed in' },
    space: { turn: 'Turn it', nearer: 'Zoom in', farther: 'Zoom out', whole: 'Reset view' },
    cuts: { step: 'Previous cut, next cut', ends: 'First cut, last cut' },
    card: { step: 'Previous step, next step' },
    batch: { one: 'One more done', step: 'Previous step, next step' },
    list: { step: 'The one above or below', take: 'Choose it' },
  },
  /** As it is written on the keyboard: `Ctrl`, `Shift`, an arrow. */
  faces: {
    ArrowUp: '↑',
    ArrowDown: '↓',
    ArrowLeft: '←',
    ArrowRight: '→',
    Escape: 'Esc',
    '-': '−',
  } as Readonly<Record<string, string>>,
};

/** Texts of the list of keys: the places where they are heard, and what each does there. */
export type KeyWords = Wording<typeof keyMessages>;

import type { KeyWords } from '../../ui/words/key-words';

export const keyMessages: KeyWords = {
  why: 'On a Mac, Cmd in place of Ctrl. While you type into a field, Undo takes back your typing first.',
  places: {
    anywhere: 'Anywhere',
    length: 'In a length',
    count: 'In a count',
    text: 'In a name or a number',
    drawing: 'In a drawing',
    space: 'At the folding card',
    cuts: 'At the cuts of a sheet',
    card: 'At a step on the bench',
    list: 'In Find and do',
  },
  acts: {
    anywhere: {
      undo: 'Undo',
      redo: 'Redo',
      keep: 'Keep everything now',
      find: 'Find and do',
      keys: 'These keys',
    },
    length: {
      step: 'One mark of your ruler more or less',
      stride: 'A longer step',
      back: 'Back to what it was',
      take: 'Take what is typed',
    },
    count: { step: 'One more or less', stride: 'Ten more or less' },
    text: { back: 'Back to what it was', take: 'Take what is typed' },
    drawing: { nearer: 'Nearer', farther: 'Farther', whole: 'All of it', move: 'Along, once you are nearer' },
    space: { turn: 'Turn it', nearer: 'Nearer', farther: 'Farther', whole: 'As at first' },
    cuts: { step: 'The cut before, the next cut', ends: 'The first cut, the last' },
    card: { step: 'The step before, the next step' },
    list: { step: 'The one above or below', take: 'Do it' },
  },
  faces: {
    ArrowUp: '↑',
    ArrowDown: '↓',
    ArrowLeft: '←',
    ArrowRight: '→',
    Escape: 'Esc',
    '-': '−',
  },
};

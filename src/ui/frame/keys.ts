/**
 * Every key that does something, by the place where it is heard. Who listens asks `keyIn`; the list of keys and the help page print this
 * table. A tag may have several keys: for one act (`Ctrl Y`, `Ctrl Shift Z`), or one for each way it goes (`ArrowUp` first, then `ArrowDown`).
 * `Ctrl` stands for Cmd as well.
 */
export const KEYS = {
  anywhere: {
    undo: ['Ctrl Z'],
    redo: ['Ctrl Y', 'Ctrl Shift Z'],
    keep: ['Ctrl S'],
    find: ['Ctrl K', '/'],
    keys: ['?'],
  },
  length: {
    step: ['ArrowUp', 'ArrowDown'],
    stride: ['Shift ArrowUp', 'Shift ArrowDown'],
    back: ['Escape'],
    take: ['Enter'],
  },
  count: { step: ['ArrowUp', 'ArrowDown'], stride: ['Shift ArrowUp', 'Shift ArrowDown'] },
  text: { back: ['Escape'], take: ['Enter'] },
  drawing: {
    nearer: ['+', '='],
    farther: ['-'],
    whole: ['0'],
    move: ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'],
  },
  space: {
    turn: ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'],
    nearer: ['+', '='],
    farther: ['-'],
    whole: ['0'],
  },
  cuts: { step: ['ArrowLeft', 'ArrowRight'], ends: ['Home', 'End'] },
  card: { step: ['ArrowLeft', 'ArrowRight'] },
  batch: { one: ['+', '='], step: ['ArrowLeft', 'ArrowRight'] },
  list: { step: ['ArrowUp', 'ArrowDown'], take: ['Enter'] },
} as const satisfies Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;

export type KeyPlace = keyof typeof KEYS;
export type KeyAct<P extends KeyPlace> = keyof (typeof KEYS)[P] & string;

/** What is read of a key event, the browser's own or React's. */
export interface KeyPressed {
  readonly key: string;
  readonly code: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/** What a key means in a place, and which of that act's keys it was, from 0; null if it means nothing there. */
export function keyIn<P extends KeyPlace>(place: P, event: KeyPressed): readonly [KeyAct<P>, number] | null {
  const pressed = chordOf(event);
  for (const [act, chords] of Object.entries<readonly string[]>(KEYS[place])) {
    const nth = chords.indexOf(pressed);
    if (nth >= 0) return [act as KeyAct<P>, nth];
  }
  return null;
}

/** As it stands in the table. A letter with Ctrl is also told by its place on the keyboard, for alphabets that have no such letter. */
function chordOf({ key, code, ctrlKey, metaKey, altKey, shiftKey }: KeyPressed): string {
  if (altKey) return '';
  const ctrl = ctrlKey || metaKey;
  const letter = ctrl && !/^[a-z]$/i.test(key) ? /^Key([A-Z])$/.exec(code)?.[1] : undefined;
  const face = letter ?? (key.length === 1 ? key.toUpperCase() : key);
  // Shift is part of how a sign is typed, but not of a letter or an arrow.
  const shift = shiftKey && (ctrl || key.length > 1);
  return `${ctrl ? 'Ctrl ' : ''}${shift ? 'Shift ' : ''}${face}`;
}

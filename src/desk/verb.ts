/** Input the desk turns away: a stable code, where it stood, what stood there, what was expected, and a sentence for the maker. */
export interface DeskRefusal {
  readonly code: string;
  readonly path: string;
  readonly found: string;
  readonly expected: string;
  readonly says: string;
}

/** What was given on the command line, sorted: plain words in order, options given once, options given again and again. */
export interface Given {
  readonly words: readonly string[];
  readonly one: Readonly<Record<string, string>>;
  readonly many: Readonly<Record<string, readonly string[]>>;
}

/** A file to be written. */
export interface WrittenFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** The bench under a verb: where it reads, and where it puts things. Nothing else in the house touches a machine. */
export interface Desk {
  /** One line, or a whole document, to standard output. */
  readonly print: (document: string | Uint8Array) => void;
  /** A message for the maker, to standard error. */
  readonly tell: (message: string) => void;
  /** A text file, or why it cannot be read. */
  readonly read: (path: string) => string | DeskRefusal;
  /** Writes files and the folders above them, all of them whole or none; gives the reason if the machine will not. Saved work is never written over. */
  readonly write: (files: readonly WrittenFile[]) => DeskRefusal | null;
  /** The app's own printing face, TrueType. */
  readonly font: (weight: 'regular' | 'bold') => Uint8Array;
  /** The time of day, ISO 8601, UTC. */
  readonly now: () => string;
  /** Milliseconds from a steady clock, for measuring how long something took. */
  readonly tick: () => number;
}

/** One verb of the desk, in a file of its own that exports it as `verb`. Gives what it refused: nothing when all was done. */
export interface Verb {
  /** How it is called after the verb itself, for `--help`: `'INSTANCES.json [--seconds S]'`. */
  readonly usage: string;
  readonly answers: string;
  readonly words: { readonly least: number; readonly most: number };
  readonly options: Readonly<Record<string, 'one' | 'many'>>;
  readonly run: (given: Given, desk: Desk) => Promise<readonly DeskRefusal[]> | readonly DeskRefusal[];
}

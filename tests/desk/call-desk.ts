import { machine } from '../../src/desk/machine';
import { runDesk } from '../../src/desk/run-desk';
import type { Desk, DeskRefusal } from '../../src/desk/verb';

/** What one call at a desk without a machine left behind. `files` are there to be read; what is written goes to `written`. */
export interface Called {
  readonly refused: readonly DeskRefusal[];
  readonly codes: readonly string[];
  readonly printed: string;
  readonly told: string;
  readonly written: ReadonlyMap<string, string | Uint8Array>;
}

export async function callDesk(
  words: readonly string[],
  files: Readonly<Record<string, string>> = {},
): Promise<Called> {
  const printed: string[] = [];
  const told: string[] = [];
  const written = new Map<string, string | Uint8Array>();
  const desk: Desk = {
    print: (document) => {
      printed.push(typeof document === 'string' ? document : new TextDecoder('latin1').decode(document));
    },
    tell: (message) => {
      told.push(message);
    },
    read: (path) =>
      files[path] ?? {
        code: 'enoent',
        path,
        found: 'nothing',
        expected: 'a file',
        says: `${path}: there is no such file.`,
      },
    write: (made) => {
      for (const { path, content } of made) written.set(path, content);
      return null;
    },
    font: machine.font,
    now: () => '2026-02-03T04:05:06Z',
    tick: () => 0,
  };
  const refused = await runDesk(words, desk);
  const codes = refused.map(({ code }) => code);
  return { refused, codes, printed: printed.join('\n'), told: told.join('\n'), written };
}

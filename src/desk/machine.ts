import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Desk, DeskRefusal } from './verb';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'that is a folder',
  EEXIST: 'a part of the path is not a folder',
  EACCES: 'it may not be opened',
  ENOTDIR: 'a part of the path is not a folder',
  ENAMETOOLONG: 'the name is too long',
  EROFS: 'nothing can be written there',
  ERR_FS_FILE_TOO_LARGE: 'it is too large',
  ERR_ENCODING_INVALID_ENCODED_DATA: 'it is not text in UTF-8',
};

function refusePath(path: string, expected: string, error: unknown): DeskRefusal {
  const code = (error as NodeJS.ErrnoException).code ?? 'unreadable';
  const reason = REASONS[code] ?? 'the machine refuses';
  return { code: code.toLowerCase(), path, found: reason, expected, says: `${path}: ${reason}.` };
}

/** The desk on this machine's files and standard streams. */
export const machine: Desk = {
  print: (document) => {
    process.stdout.write(document);
    if (typeof document === 'string' && !document.endsWith('\n')) process.stdout.write('\n');
  },
  tell: (message) => {
    process.stderr.write(`${message}\n`);
  },
  read: (path) => {
    try {
      return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path));
    } catch (error) {
      return refusePath(path, 'a text file that can be read', error);
    }
  },
  write: (path, content) => {
    try {
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, content);
      return null;
    } catch (error) {
      return refusePath(path, 'a file that can be written', error);
    }
  },
  font: (weight) => readFileSync(new URL(`../../public/fonts/inter-${weight}.ttf`, import.meta.url)),
  now: () => new Date().toISOString(),
  tick: () => performance.now(),
};

import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { FORMAT } from '../../shared/workbook';
import type { Desk, DeskRefusal, WrittenFile } from './verb';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'that is a folder',
  EEXIST: 'a part of the path is not a folder',
  EACCES: 'it may not be opened',
  EFBIG: 'it is larger than this machine lets a file be',
  ENOSPC: 'the disk is full',
  ENOTDIR: 'a part of the path is not a folder',
  ENAMETOOLONG: 'the name is too long',
  EROFS: 'nothing can be written there',
  ERR_FS_FILE_TOO_LARGE: 'it is too large',
  ERR_ENCODING_INVALID_ENCODED_DATA: 'it is not text in UTF-8',
};

/** Most bytes read of any file: three times the largest backup. source: our own */
const MOST_BYTES = 64_000_000;
const CHUNK = 1_048_576; // bytes, 1 MB

function refusePath(path: string, expected: string, error: unknown): DeskRefusal {
  const code = (error as NodeJS.ErrnoException).code ?? 'unreadable';
  const reason = REASONS[code] ?? 'the machine refuses';
  return { code: code.toLowerCase(), path, found: reason, expected, says: `${path}: ${reason}.` };
}

/** Every file read in this run, by device and number, so that no other name of it hides it. */
const wasRead = new Set<string>();
const identityOf = (path: string): string => {
  const { dev, ino } = statSync(path, { bigint: true });
  return `${dev} ${ino} ${ino === 0n ? realpathSync(path) : ''}`;
};

/** Bytes of a file, at most so many: a pipe or a device is not asked for its size, which it does not know. */
function readBounded(path: string): Uint8Array {
  const file = openSync(path, 'r');
  try {
    const chunks: Uint8Array[] = [];
    for (let bytes = 0; ; ) {
      const chunk = new Uint8Array(CHUNK);
      const got = readSync(file, chunk);
      if (got === 0) return Buffer.concat(chunks);
      bytes += got;
      if (bytes > MOST_BYTES) throw Object.assign(new Error(), { code: 'ERR_FS_FILE_TOO_LARGE' });
      chunks.push(chunk.subarray(0, got));
    }
  } finally {
    closeSync(file);
  }
}

/** The folders above a file, one by one: made all at once under /proc, Node never comes back. */
function makeFolder(path: string): void {
  if (existsSync(path)) return;
  makeFolder(dirname(path));
  mkdirSync(path);
}

/** Why a file that is there must stay: it holds saved work. Nothing the desk writes looks like that. */
function refuseSavedWork(path: string): DeskRefusal | null {
  if (!existsSync(path) || !statSync(path).isFile()) return null;
  const refuse = (found: string): DeskRefusal => ({
    code: 'holds-saved-work',
    path,
    found,
    expected: 'another name',
    says: `${path} holds ${found}, and is left as it is. Give --out another name.`,
  });
  if (wasRead.has(identityOf(path))) return refuse('what was read');
  const head = new Uint8Array(400);
  const file = openSync(path, 'r');
  const got = readSync(file, head);
  closeSync(file);
  const text = new TextDecoder().decode(head.subarray(0, got));
  return new RegExp(`"format"\\s*:\\s*"${FORMAT}"`).test(text) ? refuse('a saved workbook') : null;
}

/** A file beside its place, whole and on the disk; it takes its name when all are. A pipe or device is written as it is. */
function layBeside(
  { path, content }: WrittenFile,
  nth: number,
): { readonly from: string; readonly to: string } | null {
  makeFolder(dirname(path));
  const to = existsSync(path) ? realpathSync(path) : path;
  if (existsSync(to) && !statSync(to).isFile()) {
    writeFileSync(to, content);
    return null;
  }
  const from = join(dirname(to), `.desk-${process.pid}-${nth}.part`);
  const file = openSync(from, 'w');
  try {
    writeFileSync(file, content);
    fsyncSync(file);
  } catch (error) {
    rmSync(from, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
  return { from, to };
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
      const text = new TextDecoder('utf-8', { fatal: true }).decode(readBounded(path));
      wasRead.add(identityOf(path));
      return text;
    } catch (error) {
      return refusePath(path, 'a text file that can be read', error);
    }
  },
  write: (files) => {
    const laid: { readonly from: string; readonly to: string }[] = [];
    let at = '';
    try {
      for (const [nth, file] of files.entries()) {
        at = file.path;
        const saved = refuseSavedWork(at);
        if (saved) return saved;
        const beside = layBeside(file, nth);
        if (beside) laid.push(beside);
      }
      for (const { from, to } of laid) {
        at = to;
        renameSync(from, to);
      }
      return null;
    } catch (error) {
      return refusePath(at, 'a file that can be written', error);
    } finally {
      for (const { from } of laid) rmSync(from, { force: true });
    }
  },
  font: (weight) => readFileSync(new URL(`../../public/fonts/inter-${weight}.ttf`, import.meta.url)),
  now: () => new Date().toISOString(),
  tick: () => performance.now(),
};

import { suggestName } from './nearest-name';
import { refuse } from './refuse';
import type { Desk, DeskRefusal, Given } from './verb';

/** The options of a verb that writes one document, and how they are called. */
export const DOCUMENT_OPTIONS = { format: 'one', out: 'one', paper: 'one' } as const;
export const documentUsage = (formats: readonly string[]): string =>
  `[--format ${formats.join('|')}] [--paper letter|a4] [--out FILE]`;

/** One of a verb's formats, by `--format`; the first when nothing is said. */
export function readFormat<Format extends string>(
  given: Given,
  formats: readonly [Format, ...Format[]],
): Format | DeskRefusal {
  const written = given.one['format'] ?? formats[0];
  const format = formats.find((known) => known === written);
  const says = `There is no format “${written}”. ${suggestName(written, formats)}`;
  return format ?? refuse('unknown-format', '--format', written, formats.join(', '), says);
}

/** Puts a document where `--out` says, else to standard output. */
export function deliver(document: string | Uint8Array, given: Given, desk: Desk): readonly DeskRefusal[] {
  const out = given.one['out'];
  if (out === undefined) {
    desk.print(document);
    return [];
  }
  const refused = desk.write([{ path: out, content: document }]);
  return refused ? [refused] : [];
}

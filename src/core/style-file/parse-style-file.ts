import { describeValue, type Refusal } from '../rows/refusals';
import { nestsDeeperThan, repeatedKey, tooWide } from '../rows/scan-json';
import { SPELLINGS } from './piece-schema';
import { STYLE_FORMAT, STYLE_SCHEMA } from './schema';
import { refusalOf, type StyleRefusal } from './style-refusal';

/** Gates of a style file before its fields are read. source: our own, several times the largest style here */
const LIMITS = { letters: 200_000, depth: 16, entries: 200, fields: 100 };

/** Something of the file that is not as it has to be: where, what stands there, and what is needed. */
export const refusedField = ({
  code,
  path,
  found,
  expected,
}: Omit<Refusal, 'code'> & { readonly code: string }): StyleRefusal =>
  refusalOf(
    code,
    path,
    path === ''
      ? 'This file has {found}. It needs {expected}.'
      : 'In {path} the file has {found}. It needs {expected}.',
    { path, found, expected: SPELLINGS.get(expected) ?? expected },
    path === '' || path === 'format'
      ? 'Choose a file that was saved as a style.'
      : 'Change that line of the file.',
  );

/** The parsed text of a file whose size, nesting and header pass; or why it is no style file. */
export function parseStyleFile(
  text: string,
): { readonly data: unknown } | { readonly refusals: readonly StyleRefusal[] } {
  const gate = (code: string, path: string, found: string, expected: string) => ({
    refusals: [refusedField({ code, path, found, expected })],
  });
  if (text.length > LIMITS.letters)
    return gate('too-large', '', `${text.length} letters`, `at most ${LIMITS.letters} letters`);
  if (nestsDeeperThan(LIMITS.depth, text))
    return gate('too-deep', '', `more than ${LIMITS.depth} levels`, `at most ${LIMITS.depth} levels`);
  const wide = tooWide(LIMITS, text);
  if (wide) return gate('too-many', wide.path, `more than ${wide.most} ${wide.kind}`, `at most ${wide.most}`);
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return gate('not-json', '', describeValue(text.slice(0, 40)), 'a box style saved as JSON');
  }
  const key = repeatedKey(text);
  if (key !== null) return gate('repeated-key', key, `“${key}” twice in one place`, 'each name once');
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    return gate('not-a-style', '', describeValue(data), 'a box style saved as JSON');
  const header: Readonly<Record<string, unknown>> = { ...data };
  if (header['format'] !== STYLE_FORMAT)
    return gate('not-a-style', 'format', describeValue(header['format']), STYLE_FORMAT);
  const schema = header['schema'];
  if (typeof schema === 'number' && Number.isSafeInteger(schema) && schema > STYLE_SCHEMA)
    return gate('newer-schema', 'schema', `${schema}`, `at most ${STYLE_SCHEMA}`);
  return { data };
}

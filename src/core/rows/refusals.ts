import type { z } from 'zod';

/**
 * Every reason for which foreign data is refused. Each but `damaged`, which is said of links alone, has a file in `tests/fixtures/refused/` that is refused for it,
 * and a sentence for people in `src/ui/words/english`.
 */
export const REFUSAL_CODES = [
  'too-large',
  'not-utf8',
  'too-deep',
  'not-json',
  'repeated-key',
  'not-a-workbook',
  'newer-schema',
  'missing-field',
  'unknown-field',
  'wrong-type',
  'not-whole',
  'too-small',
  'too-big',
  'off-tick',
  'not-a-choice',
  'bad-spelling',
  'empty',
  'too-long',
  'too-many',
  'same-id',
  'damaged',
] as const;
export type RefusalCode = (typeof REFUSAL_CODES)[number];

/** Foreign data that is not ours to open: where in it, what stands there, and what was expected. */
export interface Refusal {
  readonly code: RefusalCode;
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

const MOST_REFUSALS = 100;
/** Most named values of one record: sizes, options. source: our own; the largest style has a fifth of it */
export const MOST_NAMED = 100;
const MOST_LETTERS = 60;

/** A value in a few letters, for a sentence. */
export function describeValue(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  const text =
    typeof value === 'string' ? JSON.stringify(value.slice(0, MOST_LETTERS)) : `${value as number}`;
  return text.slice(0, MOST_LETTERS);
}

/** `['recipes', 3, 'sizesMm', 'width']` as `recipes[3].sizesMm.width`. */
const printPath = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (text, step) =>
      typeof step === 'number' ? `${text}[${step}]` : text ? `${text}.${String(step)}` : String(step),
    '',
  );

/**
 * Foreign data through its schema: the value, or what is wrong with it. Never throws: where a validator finds more faults than it can hand on,
 * that is the one fault told.
 */
export function readBy<Schema extends z.ZodType>(
  schema: Schema,
  data: unknown,
):
  | { readonly ok: true; readonly value: z.infer<Schema> }
  | { readonly ok: false; readonly refusals: readonly Refusal[] } {
  try {
    const reading = schema.safeParse(data);
    return reading.success
      ? { ok: true, value: reading.data }
      : { ok: false, refusals: refusalsOf(reading.error.issues, data) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const found = 'more faults than can be listed';
    return { ok: false, refusals: [{ code: 'too-many', path: '', found, expected: 'data of this format' }] };
  }
}

const valueAt = (data: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, step) => (typeof value === 'object' && value !== null ? Reflect.get(value, step) : undefined),
    data,
  );

/** What a validator found in `data`, as refusals; the first hundred. */
export const refusalsOf = (issues: readonly z.core.$ZodIssue[], data: unknown): readonly Refusal[] =>
  issues.flatMap((issue) => refusalsOfIssue(issue, data)).slice(0, MOST_REFUSALS);

function refusalsOfIssue(issue: z.core.$ZodIssue, data: unknown): readonly Refusal[] {
  const value = valueAt(data, issue.path);
  const refuse = (code: RefusalCode, expected: string): Refusal[] => [
    { code, path: printPath(issue.path), found: describeValue(value), expected },
  ];
  if (value === undefined && issue.code !== 'custom') return refuse('missing-field', 'a value');
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        code: 'unknown-field',
        path: printPath([...issue.path, key]),
        found: key,
        expected: 'a field of this format',
      }));
    case 'invalid_type':
      return issue.expected === 'int' && typeof value === 'number' && Number.isFinite(value)
        ? refuse('not-whole', 'a whole number')
        : refuse('wrong-type', issue.expected);
    case 'invalid_value':
      return refuse('not-a-choice', issue.values.map(String).join(', '));
    case 'invalid_union':
      return refuse('not-a-choice', 'one of the kinds of this format');
    case 'invalid_format':
      return refuse(
        'bad-spelling',
        issue.format === 'regex' ? (issue.pattern ?? 'another spelling') : issue.format,
      );
    case 'invalid_key':
      return refuse('bad-spelling', 'another name');
    case 'too_small':
      return issue.origin === 'string'
        ? refuse('empty', 'at least one letter')
        : refuse('too-small', `at least ${issue.minimum}`);
    case 'too_big':
      if (issue.origin === 'string') return refuse('too-long', `at most ${issue.maximum} letters`);
      if (issue.origin === 'array') return refuse('too-many', `at most ${issue.maximum}`);
      return refuse('too-big', `at most ${issue.maximum}`);
    case 'custom':
      if (issue.message === 'same-id') return refuse('same-id', 'an id used once');
      if (issue.message === 'empty') return refuse('empty', 'at least one letter that shows');
      return issue.message === 'too-many'
        ? refuse('too-many', `at most ${MOST_NAMED}`)
        : refuse('off-tick', 'a whole number of 1/320 mm');
    default:
      return refuse('wrong-type', issue.message);
  }
}

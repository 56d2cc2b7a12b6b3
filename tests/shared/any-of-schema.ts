import fc from 'fast-check';
import { isSeen } from '../../src/core/rows/text';

/** The part of JSON Schema (draft 2020-12) that the file format uses. */
export interface JsonSchema {
  readonly type?: 'object' | 'array' | 'string' | 'integer' | 'number' | 'boolean' | 'null';
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly propertyNames?: JsonSchema;
  readonly additionalProperties?: JsonSchema | false;
  readonly items?: JsonSchema;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly format?: string;
}

const TICKS_PER_MM = 320;
const LONGEST_LIST = 2;
const LONGEST_TEXT = 40;

/** Any value that a schema allows: every field over its whole range, fields that may be left out left out at times. Lists are short. */
export function anyOf(schema: JsonSchema): fc.Arbitrary<unknown> {
  if ('const' in schema) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...schema.enum);
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices) return fc.oneof(...choices.map(anyOf));
  const { minimum = 0, maximum = 0 } = schema;
  switch (schema.type) {
    case 'object':
      return schema.propertyNames ? anyNamed(schema) : anyFields(schema);
    case 'array':
      return anyList(schema.items ?? {});
    case 'integer':
      return fc.oneof(
        { weight: 8, arbitrary: fc.integer({ min: minimum, max: maximum }) },
        fc.constantFrom(minimum, maximum),
      );
    case 'number':
      // Lengths, on whole ticks.
      return fc
        .integer({ min: Math.ceil(minimum * TICKS_PER_MM), max: maximum * TICKS_PER_MM })
        .map((ticks) => ticks / TICKS_PER_MM);
    case 'string':
      return anyText(schema);
    case 'boolean':
      return fc.boolean();
    case 'null':
      return fc.constant(null);
    default:
      throw new Error(`a schema that no value is made for: ${JSON.stringify(schema)}`);
  }
}

function anyFields({ properties = {}, required = [] }: JsonSchema): fc.Arbitrary<unknown> {
  const fields = Object.fromEntries(Object.entries(properties).map(([name, inner]) => [name, anyOf(inner)]));
  return fc.record(fields, { requiredKeys: [...required], noNullPrototype: true });
}

const anyNamed = ({ propertyNames, additionalProperties }: JsonSchema): fc.Arbitrary<unknown> =>
  fc.dictionary(anyText(propertyNames ?? {}), anyOf(additionalProperties || {}), {
    maxKeys: 4,
    noNullPrototype: true,
  });

/** Rows of one list have ids of their own. */
const anyList = (items: JsonSchema): fc.Arbitrary<unknown> =>
  items.properties?.['id'] || items.oneOf?.some(({ properties }) => properties?.['id'])
    ? fc.uniqueArray(anyOf(items) as fc.Arbitrary<{ id: string }>, {
        maxLength: LONGEST_LIST,
        selector: ({ id }) => id,
      })
    : fc.array(anyOf(items), { maxLength: LONGEST_LIST });

function anyText({
  format,
  pattern,
  minLength = 0,
  maxLength = LONGEST_TEXT,
}: JsonSchema): fc.Arbitrary<string> {
  if (format === 'date-time') return anyMoment;
  if (format === 'date') return anyMoment.map((moment) => moment.slice(0, 10));
  if (pattern) return fc.stringMatching(new RegExp(pattern.replace(/\{(\d),\d\d\}/, '{$1,8}')));
  const longest = Math.min(maxLength, LONGEST_TEXT);
  return fc
    .string({ unit: 'grapheme', maxLength: longest })
    .map((text) => text.replace(/[\p{Cc}\u202A-\u202E\u2066-\u2069]/gu, '').slice(0, longest))
    .map((text) => (minLength === 0 || isSeen(text) ? text : `${text.slice(1)}x`));
}

const anyMoment = fc
  .date({ min: new Date('1999-01-01'), max: new Date('2199-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());

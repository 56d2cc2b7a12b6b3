import jsep from 'jsep';
import type { Chosen, Values } from '../styles/language/types';
import type { Fact } from '../units/reason';

/**
 * A length, angle or room that no linear form can give, as text: `'min(height, depth / 2) - relief'`. The parser makes a tree of it; only what is
 * listed here is taken from that tree, so a file brings numbers and never code. Units are checked before anything is counted.
 */
export interface Formula {
  /** Millimeters to the power asked for, or degrees; not a number where there is no answer. */
  readonly of: (values: Values, chosen: Chosen) => number;
}

/** What stands in a formula that is not taken: a template with its facts, and what to write. */
interface FormulaSlip {
  readonly says: string;
  readonly facts: Readonly<Record<string, Fact>>;
  readonly remedy: string;
}

/** Names that a formula may use: lengths, workings, and options with the ids of their choices. */
export interface KnownNames {
  readonly lengths: ReadonlySet<string>;
  readonly options: ReadonlyMap<string, readonly string[]>;
  readonly workings?: ReadonlyMap<string, Working>;
  /** What an integral goes over; there is one at a time. */
  readonly over?: { readonly name: string; readonly kind: number };
}

/** A named step of other formulas, in any unit and never rounded; counted once each time a formula is. */
export interface Working {
  readonly kind: number | 'any';
  readonly run: (values: Values, chosen: Chosen, scope: Scope) => number;
}

/** Workings counted so far, and what an integral goes over just now. */
type Scope = Map<string, number>;

/** The longest formula read, in letters. source: our own, four times the longest in use */
const MOST_LETTERS = 300;
/** How high a length may be raised: a room is a length to the third. source: our own */
const MOST_POWER = 6;

/** Millimeters to a power (0: a bare number or degrees), `any` for a bare zero; a comparison; or an option's choice. */
type Kind = number | 'any' | 'truth' | 'choice';
interface Part {
  readonly kind: Kind;
  readonly run: Working['run'];
}

class Slip extends Error {
  readonly slip: FormulaSlip;
  constructor(slip: FormulaSlip) {
    super(slip.says);
    this.slip = slip;
  }
}

const slip = (says: string, facts: Readonly<Record<string, string>>, remedy: string): never => {
  const named = Object.fromEntries(Object.entries(facts).map(([name, text]) => [name, { text }]));
  throw new Slip({ says, facts: named, remedy });
};

type Slipped = { readonly ok: false; readonly slip: FormulaSlip };

/** Reads a formula that gives millimeters to this power (1 a length, 3 a room, 0 degrees). Never throws. */
export const readFormula = (
  text: string,
  power: number,
  known: KnownNames,
): { readonly ok: true; readonly formula: Formula } | Slipped =>
  unlessSlipped(() => {
    const { kind, run } = readPart(text, known);
    if (kind !== 'any' && kind !== power)
      slip(
        'The formula {formula} gives {given}, and {wanted} is needed.',
        { formula: text, given: nameOf(kind), wanted: nameOf(power) },
        'Write a length with its unit, such as 1/8 * in. Multiply or divide until the unit is right.',
      );
    return { ok: true, formula: { of: (values, chosen) => run(values, chosen, new Map()) } };
  });

/** Reads a working of this name, which gives a number in whatever unit; `taken`: something that comes later is called so. Never throws. */
export const readWorking = (
  name: string,
  text: string,
  known: KnownNames,
  taken: boolean,
): { readonly ok: true; readonly working: Working } | Slipped =>
  unlessSlipped(() => {
    if (taken || isTaken(name, known))
      slip('The working {name} has a name that is taken.', { name }, 'Give it another name.');
    const { kind, run } = number(readPart(text, known), name);
    const once: Working['run'] = (values, chosen, scope) => {
      const found = scope.get(name) ?? run(values, chosen, scope);
      scope.set(name, found);
      return found;
    };
    return { ok: true, working: { kind, run: once } };
  });

const isTaken = (name: string, { lengths, options, workings }: KnownNames): boolean =>
  Object.hasOwn(CONSTANTS, name) || lengths.has(name) || options.has(name) || workings?.has(name) === true;

function readPart(text: string, known: KnownNames): Part {
  if (text.length > MOST_LETTERS)
    slip('This formula has {letters} letters.', { letters: `${text.length}` }, 'Use at most 300 letters.');
  return partOf(parse(text), known);
}

function unlessSlipped<Read>(read: () => Read): Read | Slipped {
  try {
    return read();
  } catch (error) {
    if (error instanceof Slip) return { ok: false, slip: error.slip };
    throw error;
  }
}

function parse(text: string): jsep.Expression {
  try {
    return jsep(text);
  } catch (error) {
    // the parser throws an Error with the place it stopped at
    const at = (error as { readonly index?: number }).index ?? 0;
    return slip(
      'The formula {formula} can’t be read at letter {at}.',
      { formula: text, at: `${at + 1}` },
      'Check brackets, commas and signs there.',
    );
  }
}

const nameOf = (kind: Kind): string =>
  kind === 0
    ? 'a number or degrees'
    : kind === 1
      ? 'a length'
      : kind === 2
        ? 'an area'
        : kind === 3
          ? 'a volume'
          : typeof kind === 'string'
            ? 'no number'
            : `a length to the power ${kind}`;

function partOf(node: jsep.Expression, known: KnownNames): Part {
  switch (node.type) {
    case 'Literal':
      return literal((node as jsep.Literal).value);
    case 'Identifier':
      return named((node as jsep.Identifier).name, known);
    case 'UnaryExpression':
      return signed(node as jsep.UnaryExpression, known);
    case 'BinaryExpression':
      return joined(node as jsep.BinaryExpression, known);
    case 'ConditionalExpression':
      return chosenBy(node as jsep.ConditionalExpression, known);
    case 'CallExpression':
      return called(node as jsep.CallExpression, known);
    default:
      return slip(
        'A formula can’t hold {part}.',
        { part: node.type },
        'Use names, numbers, + - * / and the functions listed.',
      );
  }
}

function literal(value: unknown): Part {
  if (typeof value !== 'number' || !Number.isFinite(value))
    return slip('{value} is no number.', { value: String(value) }, 'Write a plain number, such as 0.25.');
  return { kind: value === 0 ? 'any' : 0, run: () => value };
}

/** source: 25.4 mm by definition */
const CONSTANTS: Readonly<Record<string, Part>> = {
  in: { kind: 1, run: () => 25.4 },
  mm: { kind: 1, run: () => 1 },
  pi: { kind: 0, run: () => Math.PI },
};

function named(name: string, { lengths, options, workings, over }: KnownNames): Part {
  if (over?.name === name) return { kind: over.kind, run: (_, __, scope) => scope.get(name) ?? Number.NaN };
  const constant = Object.hasOwn(CONSTANTS, name) ? CONSTANTS[name] : undefined;
  if (constant) return constant;
  if (lengths.has(name)) return { kind: 1, run: (values) => values[name] ?? Number.NaN };
  const working = workings?.get(name);
  if (working) return working;
  return slip(
    'The name {name} has no value here.',
    { name },
    options.has(name)
      ? 'Compare an option with one of its choices, such as top == "open".'
      : 'Use a name from the lines above it.',
  );
}

function signed({ operator, argument }: jsep.UnaryExpression, known: KnownNames): Part {
  if (operator !== '-' && operator !== '+')
    return slip('The sign {operator} can’t be used.', { operator }, 'Use + or -.');
  const { kind, run } = number(partOf(argument, known), operator);
  return { kind, run: operator === '-' ? (...at) => -run(...at) : run };
}

/** A part that is a number, whatever its unit. */
const number = (part: Part, operator: string): Part & { readonly kind: number | 'any' } =>
  typeof part.kind === 'number' || part.kind === 'any'
    ? { kind: part.kind, run: part.run }
    : slip(
        '{operator} needs numbers on both sides.',
        { operator },
        'Put the comparison into brackets before a ?.',
      );

/** The unit that both share; a bare zero has any. */
function shared(p: Part, q: Part, operator: string): Kind {
  const [one, other] = [number(p, operator).kind, number(q, operator).kind];
  if (one === 'any') return other;
  if (other === 'any' || other === one) return one;
  return slip(
    '{operator} joins {one} and {other}.',
    { operator, one: nameOf(one), other: nameOf(other) },
    'Write a length with its unit, such as 1/8 * in.',
  );
}

const ARITHMETIC: Readonly<Record<string, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
};
const COMPARED: Readonly<Record<string, (a: number, b: number) => boolean>> = {
  '<': (a, b) => a < b,
  '<=': (a, b) => a <= b,
  '>': (a, b) => a > b,
  '>=': (a, b) => a >= b,
};

function joined({ operator, left, right }: jsep.BinaryExpression, known: KnownNames): Part {
  if (operator === '==' || operator === '!=') return choiceIs(operator, left, right, known);
  if (operator === '**') return raised(partOf(left, known), right);
  const [p, q] = [partOf(left, known), partOf(right, known)];
  const compare = Object.hasOwn(COMPARED, operator) ? COMPARED[operator] : undefined;
  if (compare) {
    shared(p, q, operator);
    return { kind: 'truth', run: (...at) => (compare(p.run(...at), q.run(...at)) ? 1 : 0) };
  }
  const count = Object.hasOwn(ARITHMETIC, operator) ? ARITHMETIC[operator] : undefined;
  if (!count) return slip('The sign {operator} can’t be used.', { operator }, 'Use + - * / ** < <= > >= ==.');
  const run: Part['run'] = (...at) => count(p.run(...at), q.run(...at));
  if (operator === '+' || operator === '-') return { kind: shared(p, q, operator), run };
  const [one, other] = [number(p, operator).kind, number(q, operator).kind];
  if (one === 'any') return { kind: 'any', run };
  return { kind: bounded(one + (operator === '*' ? 1 : -1) * (other === 'any' ? 0 : other)), run };
}

const bounded = (power: number): number =>
  Math.abs(power) <= MOST_POWER
    ? power
    : slip(
        'A length to the power {power} is more than can be counted with.',
        { power: `${power}` },
        'Divide before you multiply on.',
      );

/** `x ** 2`: to a small whole power, so that the unit is known. */
function raised(base: Part, right: jsep.Expression): Part {
  const times = right.type === 'Literal' ? (right as jsep.Literal).value : null;
  if (typeof times !== 'number' || !Number.isInteger(times) || times < 1 || times > 4)
    return slip(
      '{operator} needs a whole number from 1 to 4 after it.',
      { operator: '**' },
      'Write x ** 2, or sqrt(x).',
    );
  const { kind, run } = number(base, '**');
  return { kind: kind === 'any' ? kind : bounded(kind * times), run: (...at) => run(...at) ** times };
}

/** `top == "open"`: is the option chosen in this way? */
function choiceIs(operator: string, left: jsep.Expression, right: jsep.Expression, known: KnownNames): Part {
  const option = left.type === 'Identifier' ? (left as jsep.Identifier).name : '';
  const id = right.type === 'Literal' ? (right as jsep.Literal).value : null;
  const choices = known.options.get(option);
  if (choices === undefined || typeof id !== 'string' || !choices.includes(id))
    return slip(
      '{operator} asks for an option and one of its choices, not {option} and {id}.',
      { operator, option: option || 'a sum', id: typeof id === 'string' ? id : 'a number' },
      'Write the option’s name first and a choice in quotes after it.',
    );
  const same = operator === '==';
  return { kind: 'truth', run: (_, chosen) => ((chosen[option] === id) === same ? 1 : 0) };
}

function chosenBy({ test, consequent, alternate }: jsep.ConditionalExpression, known: KnownNames): Part {
  const [asked, yes, no] = [partOf(test, known), partOf(consequent, known), partOf(alternate, known)];
  if (asked.kind !== 'truth')
    slip('{operator} needs a comparison before it.', { operator: '?' }, 'Write t > 0.4 * mm ? one : other.');
  const kind = shared(yes, no, '?');
  return { kind, run: (...at) => (asked.run(...at) === 1 ? yes.run(...at) : no.run(...at)) };
}

const DEGREE = Math.PI / 180; // source: definition
/** Of bare numbers, in degrees where they are angles. */
const OF_NUMBER: Readonly<Record<string, (value: number) => number>> = {
  sin: (deg) => Math.sin(deg * DEGREE),
  cos: (deg) => Math.cos(deg * DEGREE),
  tan: (deg) => Math.tan(deg * DEGREE),
  asin: (ratio) => Math.asin(ratio) / DEGREE,
  acos: (ratio) => Math.acos(ratio) / DEGREE,
  atan: (ratio) => Math.atan(ratio) / DEGREE,
};
/** Of several values in one unit, which the answer has too. */
const OF_ALIKE: Readonly<Record<string, (...values: number[]) => number>> = {
  min: Math.min,
  max: Math.max,
  hypot: Math.hypot,
  abs: Math.abs,
};
const FUNCTIONS = [
  ...Object.keys(OF_ALIKE),
  'sqrt',
  'atan2',
  ...Object.keys(OF_NUMBER),
  'number',
  'integral',
];
/** Most values that one function is given. source: our own */
const MOST_VALUES = 8;

function called({ callee, arguments: given }: jsep.CallExpression, known: KnownNames): Part {
  const name = callee.type === 'Identifier' ? (callee as jsep.Identifier).name : '';
  const needs =
    name === 'atan2' ? 2 : ['abs', 'sqrt'].includes(name) || Object.hasOwn(OF_NUMBER, name) ? 1 : null;
  if (!FUNCTIONS.includes(name))
    slip(
      'There is no function {name} here.',
      { name: name || '?' },
      'Use min, max, hypot, abs, sqrt, sin, cos, tan, asin, acos, atan, atan2, number or integral.',
    );
  if (name === 'number') return numberOf(given, known);
  if (name === 'integral') return integral(given, known);
  const most = needs ?? MOST_VALUES;
  if (given.length < (needs ?? 2) || given.length > most)
    slip(
      'The function {name} is given {count} values.',
      { name, count: `${given.length}` },
      needs === 1 ? 'Give it one.' : 'Give it two or more.',
    );
  const parts = given.map((each) => number(partOf(each, known), name));
  const [first = CONSTANTS['pi'] as Part] = parts;
  const kind = parts.reduce<Kind>((all, part) => shared({ ...part, kind: all }, part, name), 'any');
  const values: (...at: Parameters<Part['run']>) => number[] = (...at) => parts.map(({ run }) => run(...at));
  if (name === 'sqrt')
    return {
      kind:
        typeof kind === 'number' && kind % 2 !== 0
          ? oddRoot(kind)
          : kind === 'any'
            ? kind
            : (kind as number) / 2,
      run: (...at) => Math.sqrt(first.run(...at)),
    };
  if (name === 'atan2')
    return { kind: 0, run: (...at) => Math.atan2(values(...at)[0] ?? 0, values(...at)[1] ?? 0) / DEGREE };
  const alike = OF_ALIKE[name];
  if (alike) return { kind, run: (...at) => alike(...values(...at)) };
  if (kind !== 0 && kind !== 'any')
    slip(
      'The function {name} is given {given}.',
      { name, given: nameOf(kind) },
      'Divide one length by another first.',
    );
  const ofNumber = OF_NUMBER[name] ?? Math.abs;
  return { kind: 0, run: (...at) => ofNumber(first.run(...at)) };
}

/** `number(sides)`: the number that a choice of this option stands for. */
function numberOf(given: readonly jsep.Expression[], { options }: KnownNames): Part {
  const [asked] = given;
  const name = given.length === 1 && asked?.type === 'Identifier' ? (asked as jsep.Identifier).name : '';
  const choices = options.get(name);
  const [first = ''] = choices ?? [];
  if (!choices?.every((id) => /^\d{1,4}$/.test(id)))
    slip(
      'The function number is given {option}, which is no option whose choices are all numbers.',
      { option: name || 'a sum' },
      'Give it the name of an option such as sides, with the choices "5", "6" and "8".',
    );
  return { kind: 0, run: (_, chosen) => Number(chosen[name] ?? first) };
}

/** Parts that an integral is summed over. source: Simpson's rule; with so many the error is far below a tick */
const PARTS = 400;

/** `integral(a, 0, 45, cos(a))`: the area under a formula, over a name of its own from one value to another. None stands within another. */
function integral(given: readonly jsep.Expression[], known: KnownNames): Part {
  const [over, from, to, body] = given;
  const name = over?.type === 'Identifier' ? (over as jsep.Identifier).name : '';
  if (!from || !to || !body || given.length > 4 || name === '' || isTaken(name, known) || known.over)
    return slip(
      'An integral needs a new name, where it begins, where it ends and a formula.',
      {},
      'Write integral(a, 0, 45, cos(a)), and no integral within another.',
    );
  const [start, end] = [partOf(from, known), partOf(to, known)];
  const along = shared(start, end, 'integral');
  const kind = typeof along === 'number' ? along : 0;
  const under = number(partOf(body, { ...known, over: { name, kind } }), 'integral');
  const run: Part['run'] = (values, chosen, scope) => {
    const [least, most] = [start.run(values, chosen, scope), end.run(values, chosen, scope)];
    const before = scope.get(name);
    let sum = 0;
    for (let part = 0; part <= PARTS; part++) {
      scope.set(name, least + ((most - least) * part) / PARTS);
      const weight = part === 0 || part === PARTS ? 1 : part % 2 === 1 ? 4 : 2;
      sum += weight * under.run(values, chosen, scope);
    }
    if (before === undefined) scope.delete(name);
    else scope.set(name, before);
    return ((most - least) * sum) / (3 * PARTS);
  };
  return { kind: under.kind === 'any' ? 'any' : bounded(under.kind + kind), run };
}

const oddRoot = (kind: number): number =>
  slip(
    'sqrt is given {given}, which has no square root here.',
    { given: nameOf(kind) },
    'Take the root of an area, such as width * depth.',
  );

import jsep from 'jsep';
import type { Chosen, Values } from '../styles/language/types';
import { called } from './formula-functions';
import {
  bounded,
  CONSTANTS,
  type FormulaSlip,
  isTaken,
  type KnownNames,
  nameOf,
  number,
  type Part,
  Slip,
  shared,
  slip,
  type Working,
} from './formula-parts';

/**
 * A length, angle or room that no linear form can give, as text: `'min(height, depth / 2) - relief'`. The parser makes a tree of it; only what is
 * listed here is taken from that tree, so a file brings numbers and never code. Units are checked before anything is counted.
 */
export interface Formula {
  /** Millimeters to the power asked for, or degrees; not a number where there is no answer. */
  readonly of: (values: Values, chosen: Chosen) => number;
}

/** The longest formula read, in letters. source: our own, four times the longest in use */
const MOST_LETTERS = 300;

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
      return called(node as jsep.CallExpression, known, partOf);
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
  return { kind, run: operator === '-' ? (values, chosen, scope) => -run(values, chosen, scope) : run };
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
    return {
      kind: 'truth',
      run: (values, chosen, scope) =>
        compare(p.run(values, chosen, scope), q.run(values, chosen, scope)) ? 1 : 0,
    };
  }
  const count = Object.hasOwn(ARITHMETIC, operator) ? ARITHMETIC[operator] : undefined;
  if (!count) return slip('The sign {operator} can’t be used.', { operator }, 'Use + - * / ** < <= > >= ==.');
  const run: Part['run'] = (values, chosen, scope) =>
    count(p.run(values, chosen, scope), q.run(values, chosen, scope));
  if (operator === '+' || operator === '-') return { kind: shared(p, q, operator), run };
  const [one, other] = [number(p, operator).kind, number(q, operator).kind];
  if (one === 'any') return { kind: 'any', run };
  return { kind: bounded(one + (operator === '*' ? 1 : -1) * (other === 'any' ? 0 : other)), run };
}

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
  return {
    kind: kind === 'any' ? kind : bounded(kind * times),
    run: (values, chosen, scope) => run(values, chosen, scope) ** times,
  };
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
  return {
    kind,
    run: (values, chosen, scope) =>
      (asked.run(values, chosen, scope) === 1 ? yes : no).run(values, chosen, scope),
  };
}

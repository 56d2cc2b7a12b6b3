import type jsep from 'jsep';
import {
  bounded,
  CONSTANTS,
  isTaken,
  type Kind,
  type KnownNames,
  nameOf,
  number,
  type Part,
  shared,
  slip,
} from './formula-parts';

type PartOf = (node: jsep.Expression, known: KnownNames) => Part;

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

/** A function of this list with what it is given; `partOf` reads that. */
export function called(
  { callee, arguments: given }: jsep.CallExpression,
  known: KnownNames,
  partOf: PartOf,
): Part {
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
  if (name === 'integral') return integral(given, known, partOf);
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
  if (name === 'sqrt')
    return {
      kind:
        typeof kind === 'number' && kind % 2 !== 0
          ? oddRoot(kind)
          : kind === 'any'
            ? kind
            : (kind as number) / 2,
      run: (values, chosen, scope) => Math.sqrt(first.run(values, chosen, scope)),
    };
  const second = parts[1] ?? first;
  if (name === 'atan2')
    return {
      kind: 0,
      run: (values, chosen, scope) =>
        Math.atan2(first.run(values, chosen, scope), second.run(values, chosen, scope)) / DEGREE,
    };
  const alike = OF_ALIKE[name];
  if (alike && parts.length === 1)
    return { kind, run: (values, chosen, scope) => alike(first.run(values, chosen, scope)) };
  if (alike && parts.length === 2)
    return {
      kind,
      run: (values, chosen, scope) =>
        alike(first.run(values, chosen, scope), second.run(values, chosen, scope)),
    };
  if (alike)
    return {
      kind,
      run: (values, chosen, scope) => alike(...parts.map(({ run }) => run(values, chosen, scope))),
    };
  if (kind !== 0 && kind !== 'any')
    slip(
      'The function {name} is given {given}.',
      { name, given: nameOf(kind) },
      'Divide one length by another first.',
    );
  const ofNumber = OF_NUMBER[name] ?? Math.abs;
  return { kind: 0, run: (values, chosen, scope) => ofNumber(first.run(values, chosen, scope)) };
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
function integral(given: readonly jsep.Expression[], known: KnownNames, partOf: PartOf): Part {
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

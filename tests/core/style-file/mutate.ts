/** What a file may hold in place of what it should: the odd, the huge, the empty, and names that every object has. */
const ODD: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  1e308,
  0.5,
  '',
  ' ',
  '0',
  '-1 in',
  '999999 in',
  '999999/1 in',
  '1/0 in',
  '1/999999 width + 1/999983 depth',
  'width',
  '-width',
  '0 - width',
  't',
  '1/8 in',
  'width - 40 in',
  'constructor',
  '__proto__',
  'toString',
  'left.left',
  'base.e99',
  'width * height',
  'sqrt(0 - 1)',
  'width / 0',
  'hypot(width, depth) ** 4',
  '1e999 * mm',
  'alert(1)',
  'this.constructor',
  '((((((((((1))))))))))',
  'number(sides)',
  'integral(a, 0, width, a)',
  'integral(a, 0, 1/0 * mm, a ** 2)',
  'turn',
  90,
  180,
  -180,
  3,
  24,
  25,
  [],
  {},
  ['width', 'height'],
  [['0', '0']],
];

type Draw = () => number;
type Json = Record<string, unknown> | unknown[];

const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null;

/** Every object and list in a value, itself first. */
function nodesOf(value: unknown): Json[] {
  return isJson(value) ? [value, ...Object.values(value).flatMap(nodesOf)] : [];
}

/** A file with one to four things changed: a value made odd, left out, doubled, put elsewhere or renamed, or letters of the text itself. */
export function mutate(text: string, draw: Draw): string {
  const pick = <Value>(values: readonly Value[]): Value =>
    values[Math.floor(draw() * values.length)] as Value;
  if (draw() < 0.1) return scratch(text, draw);
  const data: unknown = JSON.parse(text);
  const times = draw() < 0.5 ? 1 : 1 + Math.floor(draw() * 4);
  for (let turn = 0; turn < times; turn++) {
    const nodes = nodesOf(data);
    const node = pick(nodes) as Record<string, unknown>;
    const keys = Object.keys(node);
    const key = keys.length === 0 ? '0' : pick(keys);
    const kind = draw();
    if (draw() < 0.5) node[key] = pick(alike(nodes, key)) ?? pick(ODD);
    else if (kind < 0.4) node[key] = pick(ODD);
    else if (kind < 0.55) {
      if (Array.isArray(node)) node.splice(Number(key), 1);
      else Reflect.deleteProperty(node, key);
    } else if (kind < 0.7) {
      const from = pick(nodes) as Record<string, unknown>;
      const other = Object.keys(from);
      if (other.length > 0) node[key] = JSON.parse(JSON.stringify(from[pick(other)] ?? null)) as unknown;
    } else if (kind < 0.85) {
      if (Array.isArray(node)) node.push(...(JSON.parse(JSON.stringify(node)) as unknown[]).slice(0, 40));
      else node[pick(['constructor', 'valueOf', 'in', 'mm', 't', 'x', 'base', 'size', 'lens'])] = node[key];
    } else {
      const form = node[key];
      node[key] =
        typeof form === 'string'
          ? `${form} ${pick(['-', '+', '*', '/'])} ${pick(['width', '1 in', '2', 't'])}`
          : pick(ODD);
    }
  }
  return JSON.stringify(data);
}

/** What the file has under the same name elsewhere: wrong here, and of the right kind. */
const alike = (nodes: readonly Json[], key: string): readonly unknown[] =>
  nodes.flatMap((node) =>
    Object.entries(node).flatMap(([name, value]: [string, unknown]) =>
      name === key ? [JSON.parse(JSON.stringify(value)) as unknown] : [],
    ),
  );

/** Letters of the text taken out, doubled or put in. */
function scratch(text: string, draw: Draw): string {
  const at = Math.floor(draw() * text.length);
  const length = Math.floor(draw() * 20);
  const odd = ['', '{', ']', '"', '\\', '\u202e', '9'.repeat(30), text.slice(at, at + 400)];
  return text.slice(0, at) + (odd[Math.floor(draw() * odd.length)] ?? '') + text.slice(at + length);
}

/** Names that say nothing about what lies inside. */
const EMPTY_NAMES = ['util', 'utils', 'helper', 'helpers', 'misc', 'common', 'lib', 'stuff'];

/** The parts of a path that are named for nothing, and file names that are not kebab-case. */
export function namelessParts(path: string): string[] {
  const parts = path.split('/').map((part) => part.split('.')[0] ?? '');
  const empty = parts.filter((part) => EMPTY_NAMES.includes(part.toLowerCase()));
  const file = path.split('/').at(-1) ?? '';
  const kebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9-]+)*\.(ts|tsx)$/;
  return /\.tsx?$/.test(file) && !kebab.test(file) ? [...empty, file] : empty;
}

/**
 * Words and paths that belong to somebody's machine or to how a file came to be, never to the product.
 * One letter of each stands in brackets so that this list does not find itself.
 */
const STRANGERS: readonly RegExp[] = [
  /(^|[^\w.])\/(w[o]rk|r[o]ot|h[o]me|U[s]ers|t[m]p)\//,
  /\btr[a]nscripts?\b/i,
  /\bseed d[o]cument/i,
  /\b(ch[a]tbot|language m[o]del|AI[- ](gener|assist)[a]ted|art[i]ficial intelligence)\b/i,
  /\bissue #?\d/i,
  /\b(T[O]DO|F[I]XME|X{3}|H[A]CK)\b/,
];

/** Every stranger found in a text, as found. */
export const strangersIn = (text: string): string[] =>
  STRANGERS.flatMap((stranger) => stranger.exec(text)?.[0] ?? []);

const QUOTE = 0x22;
const BACKSLASH = 0x5c;

/** Index of the quote that closes the string opened at `start`; the text's length if none does. */
function endOfString(text: string, start: number): number {
  for (let at = start + 1; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === BACKSLASH) at++;
    else if (code === QUOTE) return at;
  }
  return text.length;
}

/**
 * Whether brackets outside strings nest deeper than `limit`. Asked of the raw text, before anything parses it:
 * a parser takes a million levels, the code that walks its answer does not.
 */
export function nestsDeeperThan(limit: number, text: string): boolean {
  let depth = 0;
  for (let at = 0; at < text.length; at++) {
    const char = text[at];
    if (char === '"') at = endOfString(text, at);
    else if (char === '{' || char === '[') {
      depth++;
      if (depth > limit) return true;
    } else if (char === '}' || char === ']') depth--;
  }
  return false;
}

/**
 * The first object key that valid JSON gives twice in one object, or null: a parser would keep the last one without a word.
 * `__proto__` counts as given twice, since every object has one and validators pass over it.
 */
export function repeatedKey(text: string): string | null {
  const open: (Set<string> | null)[] = [];
  let keyNext = false;
  for (let at = 0; at < text.length; at++) {
    const char = text[at];
    const keys = open.at(-1) ?? null;
    if (char === '"') {
      const end = endOfString(text, at);
      if (keyNext && keys) {
        const key = String(JSON.parse(text.slice(at, end + 1)));
        if (keys.has(key)) return key;
        keys.add(key);
      }
      keyNext = false;
      at = end;
    } else if (char === '{') {
      open.push(new Set(['__proto__']));
      keyNext = true;
    } else if (char === '[') {
      open.push(null);
      keyNext = false;
    } else if (char === '}' || char === ']') open.pop();
    else if (char === ',') keyNext = keys !== null;
  }
  return null;
}

/** Most entries of one list and most fields of one object. */
export interface WidthLimits {
  readonly entries: number;
  readonly fields: number;
}

/** A list or an object with more in it than may be: its name in the text, and how far it was counted. */
export interface TooWide {
  readonly path: string;
  readonly kind: 'entries' | 'fields';
  readonly most: number;
}

/**
 * The first list or object that holds more than `limits` let it, or null. Asked of the raw text, before anything parses it: a validator notes a
 * fault for every entry, and a million of them are more than it can hand on. Where the text is no JSON the answer says nothing.
 */
export function tooWide(limits: WidthLimits, text: string): TooWide | null {
  /** Each open bracket: whether it is an object, where the name stands that it goes by, and the commas in it. */
  const open: { readonly object: boolean; readonly name: readonly [number, number]; commas: number }[] = [];
  let name: readonly [number, number] = [0, 0];
  for (let at = 0; at < text.length; at++) {
    const char = text[at];
    if (char === '"') {
      const end = endOfString(text, at);
      name = [at + 1, end];
      at = end;
    } else if (char === '{' || char === '[') {
      const within = open.at(-1);
      open.push({ object: char === '{', name: within?.object ? name : [0, 0], commas: 0 });
    } else if (char === '}' || char === ']') open.pop();
    else if (char === ',') {
      const here = open.at(-1);
      if (!here) continue;
      here.commas++;
      const most = here.object ? limits.fields : limits.entries;
      if (here.commas >= most) return { path: pathOf(), kind: here.object ? 'fields' : 'entries', most };
    }
  }
  return null;

  function pathOf(): string {
    return open
      .map(({ name: [from, to] }, depth) => {
        const above = open[depth - 1];
        if (!above) return '';
        return above.object ? text.slice(from, Math.min(to, from + 80)) : `${above.commas}`;
      })
      .filter((step) => step !== '')
      .join('.');
  }
}

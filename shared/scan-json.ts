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

/** A constant whose name ends in its unit, `TAB_MM = 12`, and that is not worked out from another constant. */
const CONSTANT =
  /^(?:export )?const ([A-Z0-9_]+_(?:MM3?|UM|DEG|GSM|G|TICKS|SECONDS|MINUTES|PERCENT|PER_(?:MM|INCH|SHEET|HOUR)))(?:: [^=]+)? = (?!.*[A-Z]{2})[^;]*\d/;
const COMMENT = /^\s*(\/\/|\/\*|\*)/;

/** Named numbers of a source text that do not say where they come from: `source:` behind the number, or in the comment over its group. */
export function unsourcedNumbers(text: string): string[] {
  const lines = text.split('\n');
  return lines.flatMap((line, at) => {
    const [, name] = CONSTANT.exec(line) ?? [];
    if (name === undefined || /source:/i.test(line)) return [];
    let above = at - 1;
    while (above >= 0 && CONSTANT.test(lines[above] ?? '')) above--;
    for (; above >= 0 && COMMENT.test(lines[above] ?? ''); above--)
      if (/source:/i.test(lines[above] ?? '')) return [];
    return [name];
  });
}

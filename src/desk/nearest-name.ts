/** Letters to add, drop, change or swap with their neighbor to turn one word into another (optimal string alignment). */
function lettersApart(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, column) => column)];
  for (let i = 1; i <= a.length; i++) {
    const above = rows[i - 1]!;
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped =
        i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? rows[i - 2]![j - 2]! + 1 : changed;
      row.push(Math.min(above[j]! + 1, row[j - 1]! + 1, changed, swapped));
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}

/** The name a maker most likely meant, or null if none is near: at most a third of its letters wrong, or it holds what they wrote. */
function nearestName(written: string, names: readonly string[]): string | null {
  const word = written.slice(0, 64).toLowerCase();
  const ranked = names
    .map((name) => ({ name, apart: lettersApart(word, name.toLowerCase()) }))
    .sort((a, b) => a.apart - b.apart);
  const [best] = ranked;
  if (best && best.apart <= Math.max(1, Math.floor(best.name.length / 3))) return best.name;
  return (word.length > 2 && names.find((name) => name.toLowerCase().includes(word))) || null;
}

/** A refusal's last sentence: the nearest name if there is one, else all of them. */
export function suggestName(written: string, names: readonly string[]): string {
  const nearest = nearestName(written, names);
  return nearest === null ? `There are: ${names.join(', ')}.` : `Did you mean ${nearest}?`;
}

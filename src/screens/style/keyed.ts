/** Each of a list with a key that stays when another changes: its name, and which of that name it is. */
export function keyed<Value>(
  list: readonly Value[],
  nameOf: (value: Value) => string,
): readonly { readonly key: string; readonly value: Value; readonly at: number }[] {
  const counts = new Map<string, number>();
  return list.map((value, at) => {
    const name = nameOf(value);
    const nth = (counts.get(name) ?? 0) + 1;
    counts.set(name, nth);
    return { key: `${name} ${nth}`, value, at };
  });
}

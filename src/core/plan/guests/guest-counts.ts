import type { EventLine, FavorEvent, Guest } from '../../rows';

/** The line whose favor a guest gets: their own if it is still there, else the first. */
export const lineOfGuest = (
  { lines }: Pick<FavorEvent, 'lines'>,
  { lineId }: Pick<Guest, 'lineId'>,
): EventLine | undefined => lines.find(({ id }) => id === lineId) ?? lines[0];

/** How many guests get each line, by the id of the line. */
export function guestsByLine(event: Pick<FavorEvent, 'lines' | 'guests'>): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const each of event.guests ?? []) {
    const id = lineOfGuest(event, each)?.id;
    if (id !== undefined) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  return counts;
}

/** The event with every line that follows its guests counted again; a line that no guest gets keeps its count and follows no more. */
export function countedByGuests(event: FavorEvent): FavorEvent {
  const counts = guestsByLine(event);
  return {
    ...event,
    lines: event.lines.map((line) => {
      if (!line.byGuests) return line;
      const { byGuests, byTable: _, ...plain } = line;
      const count = counts.get(line.id);
      return count === undefined ? plain : { ...plain, byGuests, count };
    }),
  };
}

/** The event with this list of guests: each line that any of them gets follows the list from now on. */
export function withGuests(event: FavorEvent, guests: readonly Guest[]): FavorEvent {
  if (guests.length === 0) {
    const { guests: _, ...none } = event;
    return { ...none, lines: event.lines.map(({ byGuests: __, ...line }) => line) };
  }
  const counts = guestsByLine({ lines: event.lines, guests: [...guests] });
  const lines = event.lines.map(
    (line): EventLine => (counts.has(line.id) ? { ...line, byGuests: true } : line),
  );
  return countedByGuests({ ...event, guests: [...guests], lines });
}

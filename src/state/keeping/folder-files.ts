import { dayOf } from './day-of';

/** How many copies stay in the folder, and of how many days before them the last one does. Source: our own. */
const LAST_KEPT = 5;
const DAYS_KEPT = 10;

const NAME = /^crease-and-count-(\d{4}-\d{2}-\d{2})-(\d{6}(?:-\d+)?)(?:-\d+-of-\d+)?\.json$/;

/** A stamp that no copy in the folder bears yet: the day and the second where the maker is, `2026-11-26-142530`. */
export function newStamp(milliseconds: number, names: readonly string[]): string {
  const date = new Date(milliseconds);
  const clock = [date.getHours(), date.getMinutes(), date.getSeconds()];
  const stamp = `${dayOf(milliseconds)}-${clock.map((part) => `${part}`.padStart(2, '0')).join('')}`;
  const taken = new Set(names.map(stampOf));
  let number = 2;
  let fresh = stamp;
  while (taken.has(fresh)) fresh = `${stamp}-${number++}`;
  return fresh;
}

/** Copies that may go now that there is a newer one: neither among the last, nor the last of one of the last days. Other files never. */
export function outlived(names: readonly string[]): readonly string[] {
  const stamps = [...new Set(names.flatMap((name) => stampOf(name) ?? []))].sort().reverse();
  const stay = new Set(stamps.slice(0, LAST_KEPT));
  const days = new Set<string>();
  for (const stamp of stamps) {
    const day = stamp.slice(0, 10);
    if (days.has(day) || days.size >= DAYS_KEPT) continue;
    days.add(day);
    stay.add(stamp);
  }
  return names.filter((name) => {
    const stamp = stampOf(name);
    return stamp !== null && !stay.has(stamp);
  });
}

function stampOf(name: string): string | null {
  const [, day, clock] = NAME.exec(name) ?? [];
  return day === undefined || clock === undefined ? null : `${day}-${clock}`;
}

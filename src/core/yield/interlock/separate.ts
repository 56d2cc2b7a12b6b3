import { LeastOverlap } from './least-overlap';
import type { NestGrid, Place } from './nest-grid';

export interface SeparateLimits {
  readonly moves: number;
  /** True to give up now; asked every few moves. */
  readonly stop: () => boolean;
  /** From 0 to 1, seeded. */
  readonly random: () => number;
}

/**
 * Tries to lay these parts on a sheet so that none overlap: again and again one that does is moved to where it overlaps least, and overlaps that
 * will not go away count more each time. Null: not found within the limits. Source: guided local search for packing, Voudouris & Tsang 1999;
 * Egeblad, Nielsen, Odgaard, EJOR 183 (2007) (from memory); the tables by rows are our own.
 */
export function separate(
  grid: NestGrid,
  kindOf: readonly number[],
  start: readonly (Place | null)[],
  sheet: { readonly across: number; readonly up: number },
  limits: SeparateLimits,
): readonly Place[] | null {
  const count = kindOf.length;
  const weights = new Int32Array(count * count).fill(1);
  const hits = new Uint8Array(count * count);
  const hitCount = new Int32Array(count);
  const places: Place[] = [];
  const rooms = grid.lies.map((_, lie) => grid.room(lie, sheet.across, sheet.up));
  const least = new LeastOverlap(grid, rooms, limits.random);
  const fits = (place: Place | null): place is Place =>
    place !== null && place.column < rooms[place.lie]!.columns && place.row < rooms[place.lie]!.rows;
  const draw = (below: number) => Math.min(below - 1, Math.floor(limits.random() * below));

  for (const [at, kind] of kindOf.entries()) {
    const lies = grid.ofKind[kind]!.filter((lie) => rooms[lie]!.columns > 0 && rooms[lie]!.rows > 0);
    if (lies.length === 0) return null;
    const known = start[at] ?? null;
    const lie = lies[draw(lies.length)]!;
    places.push(
      fits(known) ? known : { lie, column: draw(rooms[lie]!.columns), row: draw(rooms[lie]!.rows) },
    );
  }
  const note = (a: number, b: number, hit: number) => {
    const change = hit - hits[a * count + b]!;
    if (change === 0) return;
    hits[a * count + b] = hit;
    hits[b * count + a] = hit;
    hitCount[a]! += change;
    hitCount[b]! += change;
  };
  const meet = (part: number) => {
    for (let other = 0; other < count; other++)
      if (other !== part) note(part, other, grid.overlap(places[part]!, places[other]!) ? 1 : 0);
  };
  for (let part = 0; part < count; part++) meet(part);

  for (let move = 0; move < limits.moves; move++) {
    if ((move & 7) === 0 && limits.stop()) return null;
    let colliding = 0;
    for (let part = 0; part < count; part++) if (hitCount[part]! > 0) colliding++;
    if (colliding === 0) return places;
    let pick = draw(colliding);
    let part = 0;
    for (; part < count; part++) if (hitCount[part]! > 0 && pick-- === 0) break;
    places[part] = least.placeOf(part, kindOf[part]!, places, weights);
    meet(part);
    for (let other = 0; other < count; other++)
      if (hits[part * count + other] === 1) {
        weights[part * count + other]! += 1;
        weights[other * count + part]! += 1;
      }
  }
  return null;
}

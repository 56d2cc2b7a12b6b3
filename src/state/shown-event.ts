import { readRow } from '../../shared/tables';
import { withoutPrices, withoutStock } from '../../shared/without-private';
import type { FavorEvent, Paper, Recipe, Run, Supply } from '../../shared/workbook';
import { sameValue } from './keeping/same-value';
import type { ComingRow } from './ports';
import { toolInHand } from './results/tool-in-hand';
import type { Shelf } from './shelf';

/** What one device counted at one stage. */
export type Counted = Run['stages'][number];
/** No two counts of an event have the same of these. */
export const countedAs = ({ stage, by = '' }: Counted): string => `${stage} ${by}`;

/** What somebody sees who was given a link to one event: the batch, and nothing of prices, guests or the rest of the shelf. */
export interface ShownEvent {
  readonly unit: 'in' | 'mm';
  readonly rows: readonly ComingRow[];
  /** What was counted so far, by every device. */
  readonly counts: readonly Counted[];
}

/** For helpers with what they count; for learners the boxes alone. Null: there is no such event. */
export function showEvent(
  rows: Shelf,
  eventId: string,
  kind: 'bench' | 'class',
  unit: 'in' | 'mm',
): ShownEvent | null {
  const event = rows.events.get(eventId);
  if (!event) return null;
  const tool = rows.tools.get(event.toolId ?? '') ?? toolInHand(rows.tools, unit);
  const recipes = [...new Set(event.lines.map(({ recipeId }) => recipeId))].flatMap(
    (id) => rows.recipes.get(id) ?? [],
  );
  const named = idsIn([event.lines, event.tapeId, event.glueId, recipes]);
  const isHelper = kind === 'bench';
  const shown: ComingRow[] = [
    { table: 'events', id: eventId, row: { ...bareEvent(event, isHelper), toolId: tool?.id ?? null } },
    ...recipes.map((recipe): ComingRow => ({ table: 'recipes', id: recipe.id, row: bareRecipe(recipe) })),
    ...papersOf(rows, named).map(
      (paper): ComingRow => ({ table: 'papers', id: paper.id, row: barePaper(paper, isHelper) }),
    ),
    ...(isHelper ? [...rows.supplies.values()] : [])
      .filter(({ id }) => named.has(id))
      .map((supply): ComingRow => ({ table: 'supplies', id: supply.id, row: bareSupply(supply) })),
    ...(tool ? [{ table: 'tools', id: tool.id, row: mine(tool) } as const] : []),
  ];
  return { unit, rows: shown, counts: isHelper ? (event.run?.stages ?? []) : [] };
}

/** The event with what helpers counted laid in; null: nothing new, or no event that could be kept. What was counted before never goes. */
export function withCounts(event: FavorEvent, counts: readonly Counted[]): FavorEvent | null {
  const { stages, firstRight } = event.run ?? { stages: [], firstRight: [] };
  const came = new Map(counts.map((count) => [countedAs(count), count]));
  const known = new Set(stages.map(countedAs));
  const next = [
    ...stages.map((count) => came.get(countedAs(count)) ?? count),
    ...counts.filter((count) => !known.has(countedAs(count))),
  ];
  if (sameValue(next, stages)) return null;
  const reading = readRow('events', { ...event, run: { stages: next, firstRight } });
  return reading.ok ? reading.row : null;
}

/** What stays the same however often a row is kept, so that only what changed is sent again; nobody else's example. */
function mine<Row extends object>(row: Row): Row {
  const { example: _example, ...own } = row as Row & { readonly example?: true };
  return { ...own, rev: 0 } as unknown as Row;
}

function bareEvent(event: FavorEvent, isHelper: boolean): FavorEvent {
  const { id, createdAt, name, date, lines, spares, currency, tapeId, glueId, kits, pace, cutFor } = event;
  return {
    id,
    rev: 0,
    createdAt,
    changedAt: createdAt,
    name,
    date,
    spares,
    currency,
    notes: '',
    lines: lines.map(({ byTable: _tables, byGuests: _guests, ...line }) => line),
    tapeId: isHelper ? tapeId : null,
    ...(isHelper && {
      ...(glueId !== undefined && { glueId }),
      ...(kits !== undefined && { kits }),
      ...(pace !== undefined && { pace }),
      ...(cutFor !== undefined && { cutFor }),
      run: { stages: [], firstRight: event.run?.firstRight ?? [] },
    }),
  };
}

function bareRecipe(recipe: Recipe): Recipe {
  const { handout: _, ...rest } = mine(recipe);
  return { ...rest, notes: '', changedAt: recipe.createdAt };
}

const barePaper = (paper: Paper, isHelper: boolean): Paper => ({
  ...mine(paper),
  changedAt: paper.createdAt,
  packs: [],
  // Sheets are laid out from offcuts that are there.
  onHandSheets: isHelper && paper.offcutOfId !== undefined ? paper.onHandSheets : 0,
});

const bareSupply = (supply: Supply): Supply => ({
  ...withoutPrices(withoutStock(mine(supply))),
  changedAt: supply.createdAt,
});

/** The papers named, and offcuts of them. */
const papersOf = ({ papers }: Shelf, named: ReadonlySet<string>): Paper[] =>
  [...papers.values()].filter(({ id, offcutOfId }) => named.has(id) || named.has(offcutOfId ?? ''));

/** Every text in a value: whatever may name a row. */
function idsIn(value: unknown): Set<string> {
  const found = new Set<string>();
  const look = (each: unknown): void => {
    if (typeof each === 'string') found.add(each);
    else if (typeof each === 'object' && each !== null) for (const inner of Object.values(each)) look(inner);
  };
  look(value);
  return found;
}

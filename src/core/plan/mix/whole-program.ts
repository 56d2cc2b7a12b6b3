import { isByPiece, keyOf, type MixPattern } from './mix-program';
import { stepsOf } from './price-list';
import type { MixOrder } from './types';

/**
 * Solves a program in whole numbers, written in the LP file format of general solvers, within so many seconds: the value of every variable, or
 * null where there is no solution, or none was found. What it answers is only a guide.
 */
export type WholeSolver = (model: string, limits: WholeLimits) => ReadonlyMap<string, number> | null;

/** Nothing better than `target` is needed. */
export interface WholeLimits {
  readonly target: number;
  readonly seconds: number;
}

/** What is used of a general solver for programs in whole numbers. */
export interface GeneralSolver {
  solve(
    model: string,
    options: {
      readonly mip_rel_gap: number;
      readonly mip_abs_gap: number;
      readonly objective_target: number;
      readonly time_limit: number;
    },
  ): { readonly Columns: Readonly<Record<string, object>> };
}

/** A general solver, asked for the very best: by its own measure it stops a ten-thousandth before. */
export const wholeSolverOf =
  (general: GeneralSolver): WholeSolver =>
  (model, { target, seconds }) => {
    const found = general.solve(model, {
      mip_rel_gap: 0,
      mip_abs_gap: 0.5,
      objective_target: target + 0.5,
      time_limit: seconds,
    });
    const values = new Map<string, number>();
    for (const [name, column] of Object.entries(found.Columns)) {
      const value = 'Primal' in column ? column.Primal : null;
      if (typeof value !== 'number' || !Number.isFinite(value)) return null;
      values.set(name, value);
    }
    return values;
  };

/** A choice in whole numbers: how often each pattern is cut, and boxes of each lot from each card where they have several parts. */
export interface WholeMix {
  readonly uses: readonly { readonly pattern: MixPattern; readonly sheets: number }[];
  readonly shares: ReadonlyMap<string, number>;
}

/** The cheapest way to cover the order with these patterns for less than `below`; null: there is none, or it was not found. */
export function solveWholeMix(
  order: MixOrder,
  patterns: readonly MixPattern[],
  { below, ...limits }: WholeLimits & { readonly below: number },
  solve: WholeSolver,
): WholeMix | null {
  const { model, shareNames } = writeModel(order, patterns, below);
  const values = solve(model, limits);
  if (values === null) return null;
  const whole = (name: string): number => Math.round(values.get(name) ?? 0);
  return {
    uses: patterns.map((pattern, at) => ({ pattern, sheets: whole(`x${at}`) })).filter(({ sheets }) => sheets > 0), // biome-ignore format: one row
    shares: new Map([...shareNames].map(([key, name]) => [key, whole(name)])),
  };
}

function writeModel(order: MixOrder, patterns: readonly MixPattern[], below: number) {
  const { lots, formats } = order;
  const prices = formats.map(({ packs }, at) => packs.filter(({ units }) => units > 0).flatMap(stepsOf).map((step, nth) => ({ ...step, name: `z${at}_${nth}` }))); // biome-ignore format: one row
  const shareNames = new Map<string, string>();
  const rows: string[] = [];
  const cutOf = (part: string, cards: readonly string[]): string[] =>
    patterns.flatMap(({ format, counts }, at) => {
      const count = cards.includes(formats[format]!.card) ? (counts.get(part) ?? 0) : 0;
      return count > 0 ? [`${count} x${at}`] : [];
    });
  const cover = (terms: readonly string[], least: number): void => {
    rows.push(`${terms.length > 0 ? terms.join(' + ') : '0 none'} >= ${least}`);
  };
  for (const lot of lots) {
    if (isByPiece(lot)) {
      for (const { id, count } of lot.parts) cover(cutOf(id, lot.cards), count * lot.boxes);
      continue;
    }
    for (const card of lot.cards) {
      const name = `s${shareNames.size}`;
      shareNames.set(keyOf(lot.id, card), name);
      for (const { id, count } of lot.parts) rows.push(`${[...cutOf(id, [card]), ''].join(' + ').replace(/ \+ $/, '')} - ${count} ${name} >= 0`); // biome-ignore format: one row
    }
    cover(lot.cards.map((card) => shareNames.get(keyOf(lot.id, card))!), lot.boxes); // biome-ignore format: one row
  }
  for (const [at, { sheet }] of formats.entries()) {
    const used = patterns.flatMap(({ format }, nth) => (format === at ? [`x${nth}`] : []));
    if (used.length === 0) continue;
    const bought = prices[at]!.map(({ units, name }) => ` - ${units} ${name}`).join('');
    rows.push(`${used.join(' + ')}${bought} <= ${sheet.onHand}`);
  }
  const paid = prices.flat().map(({ price, name }) => `${price} ${name}`).join(' + ') || '0 none'; // biome-ignore format: one row
  if (Number.isFinite(below)) rows.push(`${paid} <= ${below - 1}`);
  const names = [...patterns.map((_, at) => `x${at}`), ...shareNames.values(), ...prices.flat().map(({ name }) => name), 'none']; // biome-ignore format: one row
  const model = `Minimize\n obj: ${paid}\nSubject To\n${rows.map((row, at) => ` r${at}: ${row}`).join('\n')}\nGeneral\n ${names.join('\n ')}\nEnd\n`; // biome-ignore format: one row
  return { model, shareNames };
}

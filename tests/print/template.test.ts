import { describe, expect, it } from 'vitest';
import type { PieceNet, Point } from '../../src/core/net/types';
import { STYLES } from '../../src/core/styles';
import { toMm } from '../../src/core/units';
import { pdfOf } from '../../src/print';
import { boxOf, openTop, PAPERS, templateOf } from './printed-boxes';
import { fonts, type ReadPage, type ReadPath, readPdf } from './read-pdf';

type At = readonly [x: number, y: number];
const TOLERANCE_MM = 0.1;

const straight = (path: ReadPath) => path.points.length === 2 && path.stroked;
const lengthOf = ({ points }: ReadPath) =>
  Math.hypot(points[1]![0] - points[0]![0], points[1]![1] - points[0]![1]);

/** Lengths of the bars, each found by its words: they stand nearest to it. */
function barsOf(page: ReadPage, words: string): { across: number[]; up: number[] } {
  const long = page.paths.filter(
    (path) => straight(path) && !path.dashed && lengthOf(path) > 90 && lengthOf(path) < 110,
  );
  const nearest = page.texts
    .filter(({ text }) => text === words)
    .map(({ at }) => {
      const distance = ({ points: [a, b] }: ReadPath) => distanceTo(at, a!, b!);
      return long.reduce((best, path) => (distance(path) < distance(best) ? path : best));
    });
  const isLevel = ({ points: [a, b] }: ReadPath) => Math.abs(a![1] - b![1]) < 0.01;
  return {
    across: nearest.filter(isLevel).map(lengthOf),
    up: nearest.filter((path) => !isLevel(path)).map(lengthOf),
  };
}

/** Centres of the register crosses: where two bare 8 mm strokes cross. */
function crossesOf({ paths }: ReadPage): At[] {
  const strokes = paths.filter(straight).filter((path) => Math.abs(lengthOf(path) - 8) < 0.02);
  const middle = ({ points: [a, b] }: ReadPath): At => [(a![0] + b![0]) / 2, (a![1] + b![1]) / 2];
  return strokes
    .map(middle)
    .filter((at, i, all) => all.findIndex(([x, y]) => Math.hypot(x - at[0], y - at[1]) < 0.02) < i);
}

const minus = (a: At, b: At): At => [a[0] - b[0], a[1] - b[1]];

/** The shift most pairs of points agree on among those allowed, and how many do. */
function voteShift(
  from: readonly At[],
  to: readonly At[],
  allowed: (shift: At) => boolean = () => true,
): { shift: At; votes: number } {
  const votes = new Map<string, { shift: At; votes: number }>();
  for (const a of from)
    for (const b of to) {
      const shift = minus(b, a);
      if (!allowed(shift)) continue;
      const name = shift.map((mm) => Math.round(mm / 0.2)).join(' ');
      votes.set(name, { shift, votes: (votes.get(name)?.votes ?? 0) + 1 });
    }
  return [...votes.values()].reduce((best, one) => (one.votes > best.votes ? one : best), {
    shift: [0, 0],
    votes: 0,
  });
}

/** Row and column of a page, from the name printed on it: "page B1 of 2 × 2". */
function placeOf({ texts }: ReadPage): readonly [row: number, column: number] {
  const name = texts.map(({ text }) => /page ([A-Z])(\d+) of/.exec(text)).find((match) => match !== null);
  return [(name?.[1] ?? 'A').charCodeAt(0) - 65, Number(name?.[2] ?? 1) - 1];
}

/** All pages of one piece laid cross on cross, each against the page to its left, or above it in the first column; three crosses must meet. */
function assemble(pages: readonly ReadPage[]): ReadPath[] {
  const laid = new Map<string, At>([['0 0', [0, 0]]]);
  return pages.flatMap((page) => {
    const [row, column] = placeOf(page);
    let shift = laid.get(`${row} ${column}`);
    if (shift === undefined) {
      const beside = column > 0;
      const [otherRow, otherColumn] = beside ? [row, column - 1] : [row - 1, column];
      const other = pages.find((one) => placeOf(one).join(' ') === `${otherRow} ${otherColumn}`);
      const found = voteShift(crossesOf(page), other === undefined ? [] : crossesOf(other), ([x, y]) =>
        beside ? x > 20 && Math.abs(y) < 1 : y < -20 && Math.abs(x) < 1,
      );
      expect(found.votes).toBeGreaterThanOrEqual(3);
      const base = laid.get(`${otherRow} ${otherColumn}`) ?? [0, 0];
      shift = [base[0] + found.shift[0], base[1] + found.shift[1]];
      laid.set(`${row} ${column}`, shift);
    }
    const [dx, dy] = shift;
    return page.paths.map((path) => ({ ...path, points: path.points.map(([x, y]): At => [x + dx, y + dy]) }));
  });
}

/** A cubic curve as short chords. */
function flatten({ points, curved }: ReadPath): At[] {
  if (!curved) return [...points];
  const out: At[] = [points[0]!];
  for (let i = 1; i + 2 < points.length; i += 3) {
    const [p, q, r, s] = [points[i - 1]!, points[i]!, points[i + 1]!, points[i + 2]!];
    for (let t = 0.05; t < 1.001; t += 0.05)
      out.push(
        [0, 1].map(
          (k) =>
            (1 - t) ** 3 * p[k]! +
            3 * (1 - t) ** 2 * t * q[k]! +
            3 * (1 - t) * t * t * r[k]! +
            t ** 3 * s[k]!,
        ) as unknown as At,
      );
  }
  return out;
}

function distanceTo([x, y]: At, [ax, ay]: At, [bx, by]: At): number {
  const [dx, dy] = [bx - ax, by - ay];
  const share = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(x - ax - share * dx, y - ay - share * dy);
}

/**
 * How far each worked edge of the net is from the nearest printed line, at its ends and (straight ones) along it; the worst of them. A net
 * whose tab would end at the top is printed half round.
 */
const worstMiss = (piece: PieceNet, paths: readonly ReadPath[], stretch = 1): number =>
  Math.min(...[1, -1].map((way) => missOf(piece, paths, way * stretch)));

/** `stretch`: negative where the net is taken half round. */
function missOf(piece: PieceNet, paths: readonly ReadPath[], stretch: number): number {
  const mm = ({ x, y }: Point): At => [toMm(x) * stretch, toMm(y) * stretch];
  const drawn = paths.filter(({ stroked, widthMm }) => stroked && widthMm > 0.2).map(flatten);
  const edges = piece.edges.filter(({ kind }) => kind !== 'join');
  const { shift } = voteShift(
    edges.flatMap(({ a, b }) => [mm(a), mm(b)]),
    drawn.flatMap((run) => [run[0]!, run.at(-1)!]),
  );
  let worst = 0;
  for (const { a, b, curve } of edges)
    for (const share of curve === null ? [0, 0.2, 0.4, 0.6, 0.8, 1] : [0, 1]) {
      const [p, q] = [mm(a), mm(b)];
      const at: At = [p[0] + share * (q[0] - p[0]) + shift[0], p[1] + share * (q[1] - p[1]) + shift[1]];
      const nearest = Math.min(
        ...drawn.flatMap((run) => run.slice(1).map((to, i) => distanceTo(at, run[i]!, to))),
      );
      worst = Math.max(worst, nearest);
    }
  return worst;
}

describe('a printed template, read back by another reader', { timeout: 30_000 }, () => {
  for (const style of STYLES)
    for (const paper of PAPERS)
      it(`measures true: ${style.id} on ${paper}`, async () => {
        for (const piece of boxOf(style).pieces) {
          const pages = await readPdf(await pdfOf(templateOf(style, paper, { pieces: [piece] }), fonts));
          for (const page of pages)
            for (const [words, lengthMm] of [
              ['100 mm', 100],
              ['4 in', 101.6],
            ] as const) {
              const { across, up } = barsOf(page, words);
              expect([across.length, up.length]).toEqual([1, 1]);
              for (const bar of [...across, ...up])
                expect(Math.abs(bar - lengthMm)).toBeLessThan(TOLERANCE_MM);
            }
          expect(worstMiss(piece, assemble(pages))).toBeLessThan(TOLERANCE_MM);
        }
      });

  it('is told from one printed at 97 %', async () => {
    const [piece] = boxOf(openTop).pieces;
    const pages = await readPdf(
      await pdfOf(templateOf(openTop, 'a4', { stretch: { across: 0.97, up: 0.97 } }), fonts),
    );
    expect(Math.abs(barsOf(pages[0]!, '100 mm').across[0]! - 100)).toBeGreaterThan(2);
    expect(worstMiss(piece!, assemble(pages))).toBeGreaterThan(1);
  });

  it('is stretched by what the printer falls short, net and bars alike', async () => {
    const pillow = STYLES.find(({ id }) => id === 'pillow-pack')!;
    const [piece] = boxOf(pillow).pieces;
    const pages = await readPdf(
      await pdfOf(templateOf(pillow, 'a4', { stretch: { across: 1.02, up: 1.02 } }), fonts),
    );
    expect(barsOf(pages[0]!, '100 mm').up[0]).toBeCloseTo(102, 2);
    expect(worstMiss(piece!, assemble(pages), 1.02)).toBeLessThan(TOLERANCE_MM);
  });
});

describe('the template of the box 11 in long', () => {
  it('takes two pages, named on an assembly map', async () => {
    const pages = await readPdf(await pdfOf(templateOf(openTop, 'letter'), fonts));
    expect(pages.length).toBe(2);
    for (const page of pages)
      expect(page.texts.map(({ text }) => text)).toEqual(
        expect.arrayContaining(['A1', 'A2', 'Line up the crosses, then tape.']),
      );
  });

  it('shows a strip of 10 mm on both pages', async () => {
    const pages = await readPdf(await pdfOf(templateOf(openTop, 'letter'), fonts));
    const [first, second] = pages.map(crossesOf);
    const { shift } = voteShift(second!, first!);
    const levelScore = (page: ReadPage) =>
      page.paths.find(
        (path) =>
          straight(path) &&
          path.dashed &&
          path.widthMm > 0.3 &&
          lengthOf(path) > 20 &&
          Math.abs(path.points[0]![1] - path.points[1]![1]) < 0.01,
      )!;
    const endOfFirst = Math.max(...levelScore(pages[0]!).points.map(([x]) => x));
    const startOfSecond = Math.min(...levelScore(pages[1]!).points.map(([x]) => x)) + shift[0];
    expect(endOfFirst - startOfSecond).toBeCloseTo(10, 2);
  });
});

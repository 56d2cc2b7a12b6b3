import { expect } from 'vitest';
import {
  type Answer,
  type AnswersQuestion,
  findAnswers,
  RANKS,
  type Rank,
  rankAnswers,
  recipeOfAnswer,
  type StyleAnswers,
} from '../../../src/core/answers';
import { leastCrossing } from '../../../src/core/checks/check-item-room';
import { neededRooms } from '../../../src/core/fit';
import { asItStands } from '../../../src/core/net';
import { netOfRecipe, type SheetPlanner, sheetOfPaper } from '../../../src/core/plan';
import { planSheets } from '../../../src/core/yield';

/** As the worker does: a plan within a few hundredths of a second, with its bound. */
const planQuickly: SheetPlanner = (parts, paper, tool) =>
  planSheets(parts, paper, tool, { seconds: 0.03, now: () => performance.now() });

/** Styles that have an answer, and how long the first and all of them took; null: there is none. */
interface Judged {
  readonly styles: number;
  readonly firstMs: number | null;
  readonly allMs: number;
}

type Numbers = readonly number[];
const firstDifference = (a: Numbers, b: Numbers): number => {
  for (let at = 0; at < a.length; at++) if (a[at] !== b[at]) return (a[at] ?? 0) - (b[at] ?? 0);
  return 0;
};

/**
 * What a rank promises of one number that a reader can check: marks and joints, sheets, minutes, sag, odd panels. The answers are laid again
 * from the recipe they would become, not read from the search.
 */
export function judgeAnswers(question: AnswersQuestion): Judged {
  const begun = performance.now();
  let firstMs: number | null = null;
  const found: StyleAnswers[] = [];
  for (const one of findAnswers(question, planQuickly)) {
    found.push(one);
    if (one.answers.length > 0) firstMs ??= performance.now() - begun;
  }
  const allMs = performance.now() - begun;
  const rooms = neededRooms(question.contents);
  const all = found.flatMap(({ answers }) => answers);
  const judged = new Set<Answer>();
  for (const rank of RANKS) {
    const [first, ...others] = rankAnswers(found, rank);
    if (!first) continue;
    if (!judged.has(first)) judgeFirst(first, question, rooms);
    judged.add(first);
    // Brute force: every box of every style, not only the one that the order kept of it.
    for (const other of all)
      expect(
        firstDifference(first.keys[rank], other.keys[rank]),
        `${rank}: ${first.styleId} before ${other.styleId}`,
      ).toBeLessThanOrEqual(0);
    expect(new Set([first, ...others].map(({ styleId }) => styleId)).size).toBe(others.length + 1);
    for (const other of all) keyMeans(rank, other);
  }
  return { styles: found.filter(({ answers }) => answers.length > 0).length, firstMs, allMs };
}

/** The first number of each rank is the number the page shows. */
function keyMeans(rank: Rank, { keys, sheets, minutes }: Answer): void {
  if (rank === 'least-paper') expect(keys[rank][0]).toBe(sheets.count);
  if (rank === 'quickest') expect(keys[rank][0]).toBe(minutes);
}

function judgeFirst(answer: Answer, question: AnswersQuestion, rooms: ReturnType<typeof neededRooms>): void {
  const recipe = {
    rev: 0,
    createdAt: '',
    changedAt: '',
    id: 'box',
    name: answer.styleId,
    paperId: null,
    faceUp: 'inside' as const,
    dressings: [],
    notes: '',
    ...recipeOfAnswer(answer, question),
  };
  const net = netOfRecipe(recipe);
  const room = rooms[answer.arrangement];
  if (!net || !room) throw new Error('an answer that cannot be laid');
  const { width, depth, height } = net.inside;
  [width, depth, height].forEach((side, axis) => {
    expect(side).toBeGreaterThanOrEqual(room.inside[axis] ?? 0);
  });
  const piece = asItStands(net).find(({ shell }) => shell.length > 0);
  // A flat pocket bulges over what is in it: its room is what it says, as held above, and no solid is built of it.
  if (!piece && !net.pocket) throw new Error('a box without a room');
  // 0.04 mm of the item check, and 0.25 mm more for walls drawn as chords.
  if (piece) expect(leastCrossing(piece, net.caliperUm / 1000, room.arrangement.size)).toBeLessThan(0.3);
  const sheet = sheetOfPaper(question.paper);
  for (const { blank } of net.pieces) {
    const [long, short] = [Math.max(blank.across, blank.up), Math.min(blank.across, blank.up)];
    expect(long).toBeLessThanOrEqual(Math.max(sheet.across, sheet.up));
    expect(short).toBeLessThanOrEqual(Math.min(sheet.across, sheet.up));
  }
  expect(answer.sheets.count).toBeGreaterThanOrEqual(answer.sheets.atLeast);
  expect(answer.sheets.proven).toBe(answer.sheets.count === answer.sheets.atLeast);
}

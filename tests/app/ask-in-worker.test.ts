import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { askInWorker } from '../../src/app/ask-in-worker';
import { ticks } from '../../src/core/units';
import type { CountAsk, SheetAnswer, SheetQuestion } from '../../src/worker/plan-messages';
import { LETTER, partOf, toolOf } from '../core/yield/sheets-at-hand';

/** A worker that answers when the test lets it. */
class HeldWorker extends EventTarget {
  static all: HeldWorker[] = [];
  readonly asked: SheetQuestion[] = [];
  ended = false;

  constructor() {
    super();
    HeldWorker.all.push(this);
  }
  postMessage(question: SheetQuestion): void {
    this.asked.push(question);
  }
  terminate(): void {
    this.ended = true;
  }
  say(count: number): void {
    const data: SheetAnswer = { count: { count, layout: null }, done: true };
    if (!this.ended) this.dispatchEvent(new MessageEvent('message', { data }));
  }
}

const ask = (id: string): { count: CountAsk } => ({
  count: { part: partOf(id, ticks(9000), ticks(8000), 1), paper: LETTER, tool: toolOf() },
});
const asked = (at: number) =>
  HeldWorker.all[at]?.asked.map((question) => ('count' in question ? question.count.part.id : ''));
const countOf = (answer: SheetAnswer | null) =>
  answer !== null && 'count' in answer ? answer.count.count : null;

beforeEach(() => {
  HeldWorker.all = [];
  vi.stubGlobal('Worker', HeldWorker);
});
afterEach(() => void vi.unstubAllGlobals());

test('counts are asked one after the other, and one that is withdrawn before its turn is never asked', async () => {
  const asker = askInWorker();
  const going = new AbortController();
  const first = asker(ask('first'), going.signal);
  const passing = new AbortController();
  const passed = asker(ask('passed'), passing.signal);
  const last = asker(ask('last'), going.signal);
  passing.abort();
  expect(await passed).toBeNull();
  HeldWorker.all[0]?.say(3);
  expect(countOf(await first)).toBe(3);
  HeldWorker.all[0]?.say(5);
  expect(countOf(await last)).toBe(5);
  expect(asked(0)).toEqual(['first', 'last']);
});

test('a count that is withdrawn while it runs ends with its worker, and the next is asked of a new one', async () => {
  const asker = askInWorker();
  const mine = new AbortController();
  const first = asker(ask('first'), mine.signal);
  const next = asker(ask('next'), new AbortController().signal);
  mine.abort();
  expect(await first).toBeNull();
  expect(HeldWorker.all[0]?.ended).toBe(true);
  expect(asked(1)).toEqual(['next']);
  HeldWorker.all[1]?.say(7);
  expect(countOf(await next)).toBe(7);
});

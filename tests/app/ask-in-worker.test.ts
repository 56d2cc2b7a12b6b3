import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { askInWorker } from '../../src/app/ask-in-worker';
import { ticks } from '../../src/core/units';
import type { CountAsk, SheetAnswer, SheetQuestion } from '../../src/worker/plan-messages';
import { LETTER, partOf, toolOf } from '../core/yield/sheets-at-hand';
import { HeldWorker } from './held-worker';

class Worker extends HeldWorker<SheetQuestion> {
  static all: Worker[] = [];

  constructor() {
    super();
    Worker.all.push(this);
  }
  say(count: number): void {
    this.hear({ count: { count, layout: null }, done: true } satisfies SheetAnswer);
  }
}

const ask = (id: string): { count: CountAsk } => ({
  count: { part: partOf(id, ticks(9000), ticks(8000), 1), paper: LETTER, tool: toolOf() },
});
const asked = (at: number) =>
  Worker.all[at]?.asked.map((question) => ('count' in question ? question.count.part.id : ''));
const countOf = (answer: SheetAnswer | null) =>
  answer !== null && 'count' in answer ? answer.count.count : null;

beforeEach(() => {
  Worker.all = [];
  vi.stubGlobal('Worker', Worker);
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
  Worker.all[0]?.say(3);
  expect(countOf(await first)).toBe(3);
  Worker.all[0]?.say(5);
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
  expect(Worker.all[0]?.ended).toBe(true);
  expect(asked(1)).toEqual(['next']);
  Worker.all[1]?.say(7);
  expect(countOf(await next)).toBe(7);
});

test.each(['error', 'messageerror'])(
  'a worker that falls by %s ends its count in words, and the next is asked of a new one',
  async (how) => {
    const asker = askInWorker();
    const going = new AbortController();
    const first = asker(ask('first'), going.signal);
    const next = asker(ask('next'), going.signal);
    Worker.all[0]?.dispatchEvent(new Event(how, { cancelable: true }));
    await expect(first).rejects.toThrow();
    Worker.all[1]?.say(4);
    expect(countOf(await next)).toBe(4);
  },
);

test('a worker whose script never comes is ended after half a minute; one that is there may count for as long as it takes', async () => {
  vi.useFakeTimers();
  try {
    const asker = askInWorker();
    const going = new AbortController();
    const first = asker(ask('first'), going.signal);
    const next = asker(ask('next'), going.signal);
    const heard = expect(first).rejects.toThrow('not there');
    await vi.advanceTimersByTimeAsync(30_000);
    await heard;
    expect(Worker.all[0]?.ended).toBe(true);
    Worker.all[1]?.come();
    await vi.advanceTimersByTimeAsync(600_000);
    Worker.all[1]?.say(6);
    expect(countOf(await next)).toBe(6);
  } finally {
    vi.useRealTimers();
  }
});

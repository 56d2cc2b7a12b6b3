import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { planInWorker } from '../../src/app/plan-in-worker';
import type { EventPlan } from '../../src/core/plan';
import type { PlanAnswer, PlanQuestion } from '../../src/worker/plan-messages';
import { HeldWorker } from './held-worker';

class Worker extends HeldWorker<PlanQuestion> {
  static all: Worker[] = [];

  constructor() {
    super();
    Worker.all.push(this);
  }
  say(sheets: number, done: boolean): void {
    const { number = 0 } = this.asked.at(-1) ?? {};
    this.hear({ number, plan: planOf(sheets), done } satisfies PlanAnswer);
  }
  fail(): void {
    const { number = 0 } = this.asked.at(-1) ?? {};
    this.hear({ number, failed: 'a sick box' } satisfies PlanAnswer);
  }
}

const planOf = (sheets: number) => ({ ordered: sheets }) as EventPlan;
const ROWS = { recipes: [], events: [], papers: [], supplies: [], tools: [] };
const worker = () => {
  const last = Worker.all.at(-1);
  if (!last) throw new Error('no worker was begun');
  return last;
};

beforeEach(() => {
  Worker.all = [];
  vi.stubGlobal('Worker', Worker);
});
afterEach(() => void vi.unstubAllGlobals());

test('the first plan is told at once, and the better one ends the question', async () => {
  const told: EventPlan[] = [];
  const answer = planInWorker()(ROWS, 'e', 'plan', { tell: (plan) => void told.push(plan) });
  worker().say(12, false);
  expect(told).toEqual([planOf(12)]);
  worker().say(11, true);
  expect(await answer).toEqual(planOf(11));
  expect(Worker.all).toHaveLength(1);
});

test('withdrawn, the search ends with its worker at once, and the next question is asked of a new one', async () => {
  const plan = planInWorker();
  const asking = new AbortController();
  const answer = plan(ROWS, 'e', 'plan', { signal: asking.signal });
  worker().say(12, false);
  asking.abort();
  expect(await answer).toBeNull();
  expect(Worker.all[0]?.ended).toBe(true);
  const next = plan(ROWS, 'e');
  worker().say(10, true);
  expect(await next).toEqual(planOf(10));
});

test('a newer question of the same asker does not wait for a search, nor does it cut the first plan of another short', async () => {
  const plan = planInWorker();
  const old = plan(ROWS, 'old');
  worker().say(12, false);
  const newer = plan(ROWS, 'new');
  expect(await old).toBeNull();
  expect(worker().asked.map(({ eventId }) => eventId)).toEqual(['new']);
  // Not yet told of anything: it is let finish, and only the newest of those that wait is asked.
  const [passed, last] = [plan(ROWS, 'passed'), plan(ROWS, 'last')];
  expect(await passed).toBeNull();
  worker().say(9, false);
  expect(await newer).toBeNull();
  expect(worker().asked.map(({ eventId }) => eventId)).toEqual(['last']);
  worker().say(8, true);
  expect(await last).toEqual(planOf(8));
});

test('what might be waits for no search over other papers', async () => {
  const plan = planInWorker();
  void plan(ROWS, 'each paper', 'comparison');
  worker().say(12, false);
  const might = plan(ROWS, 'smaller', 'what-if');
  expect(Worker.all.map(({ asked }) => asked.map(({ eventId }) => eventId))).toEqual([
    ['each paper'],
    ['smaller'],
  ]);
  worker().say(9, true);
  expect(await might).toEqual(planOf(9));
  expect(Worker.all.map(({ ended }) => ended)).toEqual([false, false]);
});

describe('a worker that fails', () => {
  const fall = (how: string) => worker().dispatchEvent(new Event(how, { cancelable: true }));

  test.each(['error', 'messageerror'])(
    'by %s: the question ends in words, and the next is asked of a new one',
    async (how) => {
      const plan = planInWorker();
      const first = plan(ROWS, 'e');
      const second = plan(ROWS, 'f');
      fall(how);
      await expect(first).rejects.toThrow();
      expect(Worker.all[0]?.ended).toBe(true);
      worker().say(9, true);
      expect(await second).toEqual(planOf(9));
    },
  );

  test('by what it answers: the worker goes on', async () => {
    const plan = planInWorker();
    const first = plan(ROWS, 'sick');
    worker().fail();
    await expect(first).rejects.toThrow('a sick box');
    const next = plan(ROWS, 'healthy');
    worker().say(9, true);
    expect(await next).toEqual(planOf(9));
    expect(Worker.all).toHaveLength(1);
  });

  test('while it looks for something better: the plan that was told stands', async () => {
    const told: EventPlan[] = [];
    const answer = planInWorker()(ROWS, 'e', 'plan', { tell: (plan) => void told.push(plan) });
    worker().say(12, false);
    fall('error');
    expect(await answer).toEqual(planOf(12));
  });

  test('by saying nothing for fifteen seconds: it is ended, and said', async () => {
    vi.useFakeTimers();
    try {
      const answer = planInWorker()(ROWS, 'e');
      const heard = expect(answer).rejects.toThrow();
      await vi.advanceTimersByTimeAsync(15_000);
      await heard;
      expect(worker().ended).toBe(true);
    } finally {
      vi.useRealTimers();
    }
  });
});

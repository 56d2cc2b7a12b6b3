import { afterEach, beforeEach, expect, vi } from 'vitest';

/** Anything printed while a test runs is a fault: a warning nobody reads is a warning nobody mends. */
const printed: string[] = [];
beforeEach(() => {
  printed.length = 0;
  for (const method of ['log', 'info', 'warn', 'error', 'debug'] as const)
    vi.spyOn(console, method).mockImplementation((...words: unknown[]) => {
      printed.push(`${method}: ${words.map(String).join(' ')}`);
    });
});
afterEach(() => {
  vi.restoreAllMocks();
  expect(printed, 'printed to the console').toEqual([]);
});

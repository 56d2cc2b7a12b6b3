import '@testing-library/jest-dom/vitest';
import 'fake-indexeddb/auto';
import { cleanup } from '@testing-library/react';
import { IDBFactory } from 'fake-indexeddb';
import { afterAll, afterEach, beforeAll, vi } from 'vitest';

/** Files of tests share one page: each finds it as if nobody had been there. */
beforeAll(() => {
  globalThis.indexedDB = new IDBFactory();
  localStorage.clear();
  sessionStorage.clear();
  history.replaceState(null, '', '/');
  document.title = '';
  document.head.replaceChildren();
  document.body.replaceChildren();
});
afterEach(cleanup);
afterAll(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

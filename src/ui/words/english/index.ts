import type { Words } from '..';
import { frameMessages } from './frame';
import { partMessages } from './parts';
import { shelfMessages } from './shelf';

/** The English texts that are there at once; `pages.ts` adds those of a workbook's pages. A second language is a second pair. */
export const english: Words = {
  locale: 'en-US',
  spoken: {}, // English is what the core speaks
  ...partMessages,
  ...frameMessages,
  ...shelfMessages,
};

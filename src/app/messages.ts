import type { Words } from '../ui/words';
import { frameMessages } from './messages/frame';
import { partMessages } from './messages/parts';
import { shelfMessages } from './messages/shelf';

/** The English texts that are there at once; `page-messages.ts` adds those of a workbook's pages. A second language is a second pair. */
export const english: Words = {
  locale: 'en-US',
  spoken: {}, // English is what the core speaks
  ...partMessages,
  ...frameMessages,
  ...shelfMessages,
};

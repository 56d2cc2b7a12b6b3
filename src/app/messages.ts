import type { Words } from '../ui/words';
import { frameMessages } from './messages/frame';
import { makingMessages } from './messages/making';
import { partMessages } from './messages/parts';
import { shelfMessages } from './messages/shelf';

/** Every text of the app in English. A second language is a second object of this type. */
export const english: Words = {
  locale: 'en-US',
  ...partMessages,
  ...frameMessages,
  ...shelfMessages,
  ...makingMessages,
};

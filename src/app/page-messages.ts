import type { PageWords } from '../ui/words';
import { english } from './messages';
import { makingMessages } from './messages/making';

/** Every text of the app in English. */
export const englishPages: PageWords = { ...english, ...makingMessages };

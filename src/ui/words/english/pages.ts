import type { PageWords } from '..';
import { english } from '.';
import { makingMessages } from './making';

/** Every text of the app in English. */
export const englishPages: PageWords = { ...english, ...makingMessages };

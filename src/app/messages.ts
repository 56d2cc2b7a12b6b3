import type { Words } from '../ui/words';
import { frameMessages } from './messages/frame';
import { partMessages } from './messages/parts';

/** Every text of the app in English. A second language is a second object of this type. */
export const english: Words = { ...partMessages, ...frameMessages };

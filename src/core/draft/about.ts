import { type Edit, refused, taken } from './draft';

/** What a style is called and what is said of it in the picker. */
export const setAbout =
  (field: 'name' | 'goodFor' | 'watchOut', text: string): Edit =>
  (draft) =>
    text.trim() === ''
      ? refused('empty', 'This can’t be empty.', 'Write a few words.')
      : taken({ ...draft, [field]: text.trim() });

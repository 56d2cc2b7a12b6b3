/**
 * The text of a picked file, as much of it as may matter: a reader that takes at most so many letters is given one more where there are more.
 * A letter takes at most three bytes. Source: RFC 3629 (four bytes make two letters of a string).
 */
export const pickedText = (file: Blob, mostLetters: number): Promise<string> =>
  file.slice(0, 3 * mostLetters + 1).text();

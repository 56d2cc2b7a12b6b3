/** A browser may refuse even to look at local storage. */
export function localStorageOrNone(): Storage | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}

/** Between two tries to reach the server: at first, at most. Source: our own. */
const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 30_000;

/** How long to wait before the next try: longer each time, until one succeeds. */
export class TryingAgain {
  #wait = FIRST_WAIT_MS;

  succeeded(): void {
    this.#wait = FIRST_WAIT_MS;
  }

  /** Not all at once: who comes second hears the first, and nothing is changed by both at one moment. */
  next(): number {
    const wait = this.#wait * (0.5 + Math.random());
    this.#wait = Math.min(LONGEST_WAIT_MS, this.#wait * 2);
    return wait;
  }
}

/** What one caller may take of a server that anybody can reach. Source of all of them: our own. */
export const LIMITS = {
  /** Letters of a shelf's name: 128 random bits in base64url. */
  nameLetters: 22,
  /** Bytes of one message; the largest photo is a third of it. */
  frameBytes: 4_000_000,
  /** Bytes of one shelf, deleted rows and all. */
  shelfBytes: 128_000_000,
  /** Messages and bytes a second that one connection may send in the long run, and at once. */
  framesPerSecond: 100,
  framesAtOnce: 1000,
  bytesPerSecond: 2_000_000,
  bytesAtOnce: 64_000_000,
  /** Shelves one connection may have open: its own, and bench links. */
  shelvesPerConnection: 40,
  connectionsPerCaller: 200,
  newShelvesPerHour: 60,
  /** Milliseconds in which a connection must have shown that it may read a shelf. */
  silence: 10_000,
};

/** So much may be taken at once, and so much comes back every second. */
export class Allowance {
  readonly #most: number;
  readonly #perSecond: number;
  #left: number;
  #at: number;

  constructor(most: number, perSecond: number, now: number) {
    this.#most = most;
    this.#perSecond = perSecond;
    this.#left = most;
    this.#at = now;
  }

  /** Whether so much was left; taken if it was. */
  take(amount: number, now: number): boolean {
    this.#left = Math.min(this.#most, this.#left + ((now - this.#at) / 1000) * this.#perSecond);
    this.#at = now;
    if (amount > this.#left) return false;
    this.#left -= amount;
    return true;
  }
}

/** Elementary steps a second that a slow phone still manages; turns seconds into steps. source: measured, tests/bench */
const STEPS_PER_SECOND = 2e8;

/** How much faster a machine may be when a clock is there to cut off a slower one. source: measured, tests/bench */
const FASTER = 8;

export interface EffortLimits {
  readonly seconds?: number | undefined;
  readonly shouldStop?: (() => boolean) | undefined;
  /** Milliseconds from any clock; without one, only steps are counted. */
  readonly now?: (() => number) | undefined;
}

/**
 * How much work may still be done, counted in steps so that the same input gives the same plan; a clock, where there is one, only cuts off
 * a machine slower than the steps allow for.
 */
export class Effort {
  private readonly limits: EffortLimits;
  private readonly whole: Effort | null;
  private readonly limit: number;
  private readonly sure: number;
  private readonly deadline: number;
  private steps = 0;
  private stopped = false;

  constructor(limits: EffortLimits, whole: Effort | null = null) {
    const { seconds = 5, now } = limits;
    this.limits = limits;
    this.whole = whole;
    this.sure = seconds * STEPS_PER_SECOND;
    this.limit = this.sure * (now === undefined ? 1 : FASTER);
    this.deadline = now === undefined ? Number.POSITIVE_INFINITY : now() + seconds * 1000;
  }

  spend(steps: number): void {
    this.steps += steps;
    this.whole?.spend(steps);
  }

  /** Whether so many steps are left even to a slow machine, for work that cannot be broken off. */
  allows(steps: number): boolean {
    return this.steps + steps <= this.sure;
  }

  isSpent(): boolean {
    if (this.stopped || this.steps >= this.limit || this.whole?.isSpent()) return true;
    const { now, shouldStop } = this.limits;
    this.stopped = (shouldStop?.() ?? false) || (now !== undefined && now() >= this.deadline);
    return this.stopped;
  }

  /** At most so many steps of what is left, for a part of the work that should stay small. */
  atMost(steps: number): Effort {
    return this.share(Math.min(1, steps / Math.max(1, this.limit - this.steps)));
  }

  /** A share of what is left, for one part of the work; what it spends is spent here too. */
  share(part: number): Effort {
    return new Effort({ seconds: ((this.limit - this.steps) / STEPS_PER_SECOND) * part }, this);
  }
}

/** Repeatable numbers in 0..1 for trying things out: a linear congruential generator, constants of Numerical Recipes (from memory). */
export function swayFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

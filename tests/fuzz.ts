import { SEED } from './seed';

/**
 * How many mutated files and links a run tries: ten thousand with all tests, a million by `npm run fuzz`, or `FUZZ_TRIES`; and from which
 * seed on (`FUZZ_SEED`), so that one night does not try what the last one did.
 */
export const FUZZ_TRIES = Number(process.env['FUZZ_TRIES'] ?? 10_000);
export const FUZZ_SEED = Number(process.env['FUZZ_SEED'] ?? SEED);

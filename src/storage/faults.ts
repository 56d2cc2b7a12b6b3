import type { FaultKind, Result, StorageFault } from './port';

/** How long a save may take before it counts as not done. Source: our own; a save of one recipe takes milliseconds. */
const WATCHDOG_MS = 5000;

/** The database under us is not the one we had: somebody cleared it, or put an older one in its place. */
export class DatabaseReplaced extends Error {
  override readonly name = 'DatabaseReplaced';
}

const KINDS: Readonly<Record<string, FaultKind>> = {
  QuotaExceededError: 'full',
  DatabaseClosedError: 'lost',
  VersionError: 'newer',
  MissingAPIError: 'absent',
  SecurityError: 'absent',
  InvalidStateError: 'lost',
  UnknownError: 'lost',
  DatabaseReplaced: 'lost',
};

/**
 * What an error of the database means for the maker. An error may be wrapped: a full disk arrives as an aborted transaction
 * with the reason inside, so the innermost known name counts.
 */
export function faultOf(error: unknown): StorageFault {
  let kind: FaultKind = 'broken';
  let detail = String(error);
  for (let inner: unknown = error, depth = 0; isError(inner) && depth < 5; inner = inner.inner, depth++) {
    kind = KINDS[inner.name] ?? kind;
    detail = `${inner.name}: ${inner.message}`;
  }
  return { kind, detail };
}

interface WrappedError {
  readonly name: string;
  readonly message: string;
  readonly inner?: unknown;
}
const isError = (value: unknown): value is WrappedError =>
  typeof value === 'object' && value !== null && 'name' in value && typeof value.name === 'string';

/** The answer of `work`, or a fault: its own, or `slow` once the watchdog wakes; it never does where patience is `Infinity`. Never rejects. */
export async function watchOver<Value>(
  work: () => PromiseLike<Value>,
  patienceMs = WATCHDOG_MS,
): Promise<Result<Value>> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tooSlow = new Promise<Result<Value>>((resolve) => {
    if (patienceMs === Infinity) return;
    timer = setTimeout(
      () => resolve({ ok: false, fault: { kind: 'slow', detail: `no answer after ${patienceMs} ms` } }),
      patienceMs,
    );
  });
  const done = Promise.resolve()
    .then(work)
    .then(
      (value): Result<Value> => ({ ok: true, value }),
      (error: unknown): Result<Value> => ({ ok: false, fault: faultOf(error) }),
    );
  const answer = await Promise.race([done, tooSlow]);
  clearTimeout(timer);
  return answer;
}

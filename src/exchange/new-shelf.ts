import type { ExchangeDoor } from '../state/ports';
import type { ShelfLink } from './keys';
import { exchangeOf } from './sealed-rows';
import { runSession, type SessionHost } from './session';

/** Fills the shelf that this one moves to, before anybody hears of it; whether the server has all of it. */
export async function fillNewShelf(
  link: ShelfLink,
  host: Pick<SessionHost, 'address' | 'device' | 'readState' | 'keepState' | 'onChange'>,
  door: ExchangeDoor,
): Promise<boolean> {
  const filled = new AbortController();
  const end = await runSession(
    link,
    {
      ...host,
      agreedBefore: () => Promise.resolve([]),
      keepState: async (state) => {
        await host.keepState(state);
        filled.abort();
      },
      onUp: () => Promise.resolve(true),
      join: (fresh) =>
        door.join(
          exchangeOf(fresh, [], () => undefined),
          'ask',
          () => undefined,
        ),
      onNotes: () => undefined,
    },
    filled.signal,
  );
  return end === 'over';
}

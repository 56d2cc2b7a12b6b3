import { type ComponentType, type FunctionComponent, lazy, useState } from 'react';

/** A page that is fetched: `Page` draws it, fetching it first if nobody did; `fetch` fetches it ahead of being drawn. */
export interface FetchedPage<Props extends object> {
  readonly Page: FunctionComponent<Props>;
  readonly fetch: () => Promise<unknown>;
}

/** The pages that did not come. React draws what failed several times before it tells, and each time must meet the same failure, or it would ask without end. */
const missed = new Set<() => void>();

/** Once it was told that a page did not come, the page is asked for again the next time it is turned to. */
export function askAgainForPages(): void {
  for (const renew of missed) renew();
  missed.clear();
}

/** A page that is drawn at once where it has come already; React’s own `lazy` alone waits a beat all the same. */
export function fetchedPage<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): FetchedPage<Props> {
  let come: ComponentType<Props> | null = null;
  const fetch = async () => {
    try {
      come = await load();
    } catch (why) {
      missed.add(() => {
        waiting = lazyPage();
      });
      throw why;
    }
    return { default: come };
  };
  const lazyPage = () => lazy(fetch) as unknown as ComponentType<Props>;
  let waiting = lazyPage();
  return {
    fetch,
    // biome-ignore lint/correctness/noComponentHookFactories: made once for each page as this app is loaded, never while it is drawn.
    Page: function Page(props: Props) {
      // One or the other for as long as it stands, or it would be built again.
      const [Shown] = useState(() => come ?? waiting);
      return <Shown {...props} />;
    },
  };
}

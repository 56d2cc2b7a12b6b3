import { type Location, useLocation, useNavigate } from 'react-router';

/** What can be asked for from anywhere: the list of everything that can be done, the keys alone, or everything that prints. */
export type Asked = 'commands' | 'keys' | 'prints';

/** What lies open over the page. It is a step of the browser's history, so that Back closes it before it leaves the page. */
export function useAsked() {
  const { state, pathname, search } = useLocation() as Location<{ asked?: unknown } | null>;
  const navigate = useNavigate();
  const told = state?.asked;
  const asked: Asked | null = told === 'commands' || told === 'keys' || told === 'prints' ? told : null;
  const preferences = told === 'preferences';
  const open = asked !== null || preferences;
  return {
    asked,
    /** Whether the settings of a narrow screen are the step one is at. */
    preferences,
    ask: (what: Asked | 'preferences') =>
      void navigate({ pathname, search }, { state: { asked: what }, replace: open }),
    close: () => open && void navigate(-1),
    /** To another page, which takes the place of what lies open. */
    leaveFor: (address: string) => void navigate(address, { replace: open }),
  };
}

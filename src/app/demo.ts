import type { ExampleName } from '../ui/frame/shelf-doors';

/** Finished work of an invented village, fetched only when asked for. */
const FILES: Readonly<Record<ExampleName, URL>> = {
  supper: new URL('../../demo-data/seed-swap-supper.json', import.meta.url),
  season: new URL('../../demo-data/orchard-season.json', import.meta.url),
};

let ahead: Promise<string | null> | null = null;

/** Begins to fetch the supper; whoever asks for it next has it from here. */
export function fetchDemoAhead(): void {
  ahead = fetchNow('supper');
}

/** The text of an example's file, or null where it cannot be fetched. */
export function fetchExample(name: ExampleName): Promise<string | null> {
  if (name !== 'supper') return fetchNow(name);
  const text = ahead ?? fetchNow(name);
  ahead = null;
  return text;
}

async function fetchNow(name: ExampleName): Promise<string | null> {
  try {
    const answer = await fetch(FILES[name]);
    return answer.ok ? await answer.text() : null;
  } catch {
    return null;
  }
}

/** A finished event of an invented supper, fetched only when asked for. */
const DEMO = new URL('../../demo-data/seed-swap-supper.json', import.meta.url);

let ahead: Promise<string | null> | null = null;

/** Begins to fetch it; whoever asks for it next has it from here. */
export function fetchDemoAhead(): void {
  ahead = fetchNow();
}

export function fetchDemo(): Promise<string | null> {
  const text = ahead ?? fetchNow();
  ahead = null;
  return text;
}

async function fetchNow(): Promise<string | null> {
  try {
    const answer = await fetch(DEMO);
    return answer.ok ? await answer.text() : null;
  } catch {
    return null;
  }
}

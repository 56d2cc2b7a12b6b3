/** A finished event of an invented supper, fetched only when asked for. */
const DEMO = new URL('../../demo-data/seed-swap-supper.json', import.meta.url);

export async function fetchDemo(): Promise<string | null> {
  try {
    const answer = await fetch(DEMO);
    return answer.ok ? await answer.text() : null;
  } catch {
    return null;
  }
}

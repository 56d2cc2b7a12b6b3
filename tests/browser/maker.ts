import { type BrowserContext, test as base, expect } from '@playwright/test';

export { expect };

/** What a page did that no maker should ever meet: printed words, thrown errors, refused content, a call to another origin. */
export type Faults = string[];

/** Listens to every page of a context, present and to come. The list fills as things go wrong. */
export async function watchContext(context: BrowserContext, origin: string): Promise<Faults> {
  const faults: Faults = [];
  context.on('console', (message) => {
    // Printed by the test library itself wherever a spec does without the worker.
    if (message.text() === 'Service Worker registration blocked by Playwright') return;
    // The graphics driver’s own remark where a test reads a canvas back to take a picture of it.
    if (message.text().includes('GPU stall due to ReadPixels')) return;
    faults.push(`printed ${message.type()}: ${message.text()}`);
  });
  context.on('weberror', (error) => {
    faults.push(`thrown: ${error.error().message}`);
  });
  context.on('request', (request) => {
    const url = new URL(request.url());
    if (/^https?:$/.test(url.protocol) && url.origin !== origin)
      faults.push(`asked another origin: ${url.href}`);
  });
  await context.exposeBinding('reportRefusedContent', (_source, words: string) => {
    faults.push(`refused by the content policy: ${words}`);
  });
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
      const page = window as unknown as { reportRefusedContent: (words: string) => void };
      page.reportRefusedContent(`${violatedDirective} ${blockedURI}`);
    });
  });
  return faults;
}

/**
 * The `test` of every browser spec: it fails if a page of its context commits a fault.
 * `forgiven` names the words a spec provokes on purpose: `test.use({ forgiven: [/ReadPixels/] })`.
 */
export const test = base.extend<{ forgiven: RegExp[]; faults: Faults }>({
  forgiven: [[], { option: true }],
  faults: [
    async ({ context, baseURL, forgiven }, use) => {
      const faults = await watchContext(context, new URL(baseURL ?? '').origin);
      await use(faults);
      const unforgiven = faults.filter((fault) => !forgiven.some((pattern) => pattern.test(fault)));
      expect(unforgiven, 'faults of the page').toEqual([]);
    },
    { auto: true },
  ],
});

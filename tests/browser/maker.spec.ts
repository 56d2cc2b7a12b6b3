import { expect, test, watchContext } from './maker';

const origin = 'https://elsewhere.example';

test('the watch sees printed words, thrown errors, refused content and a call to another origin', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext();
  await context.route(`${origin}/**`, (route) => route.abort());
  const faults = await watchContext(context, new URL(baseURL ?? '').origin);
  const page = await context.newPage();
  await page.goto(baseURL ?? '');
  await page.evaluate((elsewhere) => {
    console.info('a stray word');
    setTimeout(() => {
      throw new Error('a stray error');
    });
    document.body.append(Object.assign(new Image(), { src: `${elsewhere}/pixel.png` }));
    location.assign(`${elsewhere}/page`);
  }, origin);
  for (const fault of [
    'a stray word',
    'a stray error',
    'refused by the content policy: img-src',
    `another origin: ${origin}/page`,
  ])
    await expect.poll(() => faults.join('\n')).toContain(fault);
  await context.close();
});

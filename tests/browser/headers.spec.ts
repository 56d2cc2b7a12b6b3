import { readFileSync } from 'node:fs';
import { expect, test } from './maker';

test('the headers that README gives for a server are the ones the app is tried with', async ({ page }) => {
  const readme = readFileSync('README.md', 'utf8');
  const given = [
    ...readme.matchAll(
      /^(Content-Security-Policy|X-Content-Type-Options|Referrer-Policy|Permissions-Policy): (.*)$/gm,
    ),
  ];
  expect(given).toHaveLength(4);
  const answer = await page.goto('./');
  const headers = answer?.headers() ?? {};
  for (const [, name = '', value = ''] of given) expect(headers[name.toLowerCase()], name).toBe(value);
  const inPage = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(`${inPage ?? ''}; frame-ancestors 'none'`).toBe(headers['content-security-policy']);
});

import type { Page } from '@playwright/test';
import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { StyleEditor } from './pages/style-editor';
import { workbook } from './pages/workbook';

const SCAN = 'tests/fixtures/pictures/net-300x200.png';
const outline = (inside: string) => ({
  name: 'outline.svg',
  mimeType: 'image/svg+xml',
  buffer: Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="300" height="200">${inside}<path d="M20 20h260v160h-260z" fill="none" stroke="black"/></svg>`,
  ),
});

async function openTracing(page: Page) {
  await shelf(page).lookAtDemo();
  await new StyleEditor(page).start('floor');
  await page.getByText('Trace a picture', { exact: true }).click();
  const tools = page.locator('.trace-tools');
  await expect(tools).toContainText('The picture stays on this device.');
  return { tools, files: tools.locator('input[type=file]'), under: page.locator('.trace-picture') };
}

test('a scan lies under the net at true size by two points, stays on this device, and is there after a reload', async ({
  page,
}) => {
  const { tools, files, under } = await openTracing(page);
  await files.setInputFiles(SCAN);
  await expect(under).toHaveAttribute('opacity', '0.35');
  const width = tools.getByRole('textbox', { name: 'Picture width' });
  // The floor is 4 × 3 in: 300 × 200 pixels fit in it 4 in wide.
  await expect(width).toHaveValue(/^4( in)?$/);

  // Two points of the scan: the ends of its long line, 260 of 300 pixels apart. In truth they are 6 1/2 in apart, so the picture is 7 1/2 in wide.
  await tools.getByRole('button', { name: 'Set its size by two points' }).click();
  await expect(page.locator('[data-trace]')).toBeInViewport();
  await page.waitForTimeout(300);
  const box = await under.boundingBox();
  if (!box) throw new Error('no picture');
  const tap = (across: number) =>
    page.mouse.click(box.x + (box.width * across) / 300, box.y + box.height / 2);
  await tap(20);
  await expect(tools).toContainText('Tap the other end.');
  await tap(280);
  await tools.getByRole('textbox', { name: 'True distance' }).fill('6 1/2 in');
  await tools.getByRole('button', { name: 'Use this distance' }).click();
  const typed = await width.inputValue();
  expect(typed).toMatch(/^7/);
  await under.scrollIntoViewIfNeeded();
  const after = await under.boundingBox();
  // A finger on a screen is a pixel or two off.
  expect((after?.width ?? 0) / box.width).toBeCloseTo(7.5 / 4, 1);
  // The first point stayed where it is.
  expect(
    Math.abs((after?.x ?? 0) + ((after?.width ?? 0) * 20) / 300 - (box.x + (box.width * 20) / 300)),
  ).toBeLessThan(3);

  // Typed, moved, turned, faded, hidden.
  await width.fill('5 in');
  await tools.getByRole('button', { name: 'Move right' }).click();
  await tools.getByRole('textbox', { name: 'Turn' }).fill('90');
  await tools.getByRole('slider', { name: 'Strength' }).fill('60');
  await expect(under).toHaveAttribute('opacity', '0.6');
  await expect(under).toHaveAttribute('transform', /rotate\(-90\)$/);
  const before = await under.getAttribute('transform');
  await tools.getByRole('button', { name: 'Drag it into place' }).click();
  await page.mouse.move(box.x + 60, box.y + 60);
  await page.mouse.down();
  await page.mouse.move(box.x + 100, box.y + 80, { steps: 4 });
  await page.mouse.up();
  expect(await under.getAttribute('transform')).not.toBe(before);
  await tools.getByRole('button', { name: 'Drag it into place' }).click();
  await page.mouse.move(2, 2);
  const net = page.locator('.style-net svg').first();
  const withIt = await net.screenshot();
  await tools.getByRole('checkbox', { name: 'Show the picture' }).click();
  await expect(under).toHaveCount(0);
  // It was to be seen, and is not any more.
  await page.mouse.move(2, 2);
  expect(withIt.equals(await net.screenshot())).toBe(false);
  await tools.getByRole('checkbox', { name: 'Show the picture' }).click();
  const laid = await under.getAttribute('transform');
  await page.waitForTimeout(800);

  await page.reload();
  await page.getByText('Trace a picture', { exact: true }).click();
  await expect(under).toHaveAttribute('opacity', '0.6');
  await expect(under).toHaveAttribute('transform', laid ?? '');
  // A tap on the net takes a panel in hand again.
  await expect(page.locator('[data-trace]')).toHaveCount(0);

  // What is kept of the box has no picture: no row of the shelf is larger than a box.
  await workbook(page).saved();
  const rows = await page.evaluate(async () => {
    const open = indexedDB.open('crease-and-count');
    const database = await new Promise<IDBDatabase>((resolve) => {
      open.onsuccess = () => resolve(open.result);
    });
    const names = [...database.objectStoreNames];
    const all = names.map(
      (name) =>
        new Promise((resolve) => {
          const asked = database.transaction(name).objectStore(name).getAll();
          asked.onsuccess = () => resolve(asked.result);
        }),
    );
    return JSON.stringify(await Promise.all(all));
  });
  expect(rows).toContain('ownStyle');
  expect(rows).not.toMatch(/image\/(?:webp|png)|mmPerPx/);

  // What was done to the picture is taken back beside it, and the page says why not above.
  await tools.getByRole('button', { name: 'Move up' }).click();
  await expect(under).not.toHaveAttribute('transform', laid ?? '');
  await expect(tools).toContainText('The Undo button at the top is for the box');
  await tools.getByRole('button', { name: 'Undo the last picture change' }).click();
  await expect(under).toHaveAttribute('transform', laid ?? '');
  await tools.getByRole('button', { name: 'Remove the picture' }).click();
  await expect(under).toHaveCount(0);
  await tools.getByRole('button', { name: 'Undo the last picture change' }).click();
  await expect(under).toHaveAttribute('transform', laid ?? '');

  await tools.getByRole('button', { name: 'Remove the picture' }).click();
  await expect(under).toHaveCount(0);
  await page.reload();
  await page.getByText('Trace a picture', { exact: true }).click();
  await expect(tools.getByRole('button', { name: 'Add a picture' })).toBeVisible();
});

test('an outline is drawn as a picture alone: nothing in it runs or is fetched, and what is no picture is refused in words', async ({
  page,
}) => {
  const { tools, files, under } = await openTracing(page);
  // `maker.ts` fails on any call to another origin, and on anything printed.
  await files.setInputFiles(
    outline(
      '<script>console.error("it ran"); top.ran = true; fetch("https://elsewhere.example/a")</script><image href="https://elsewhere.example/a.png" width="9" height="9"/><a href="javascript:top.ran=true"><rect width="300" height="200" fill="none" onload="top.ran = true"/></a><style>@import url("https://elsewhere.example/a.css");</style>',
    ),
  );
  await expect(under).toHaveCount(1);
  expect(await page.evaluate(() => Object.hasOwn(window, 'ran'))).toBe(false);
  // Plain pixels are left of it.
  await expect(page.locator('.trace-tools svg script, .style-net script')).toHaveCount(0);

  const alert = tools.getByRole('alert');
  await files.setInputFiles(outline('<g id="a"><use href="#b"/></g>'.repeat(20)));
  await expect(alert).toContainText('repeats its parts too often');
  await files.setInputFiles({
    name: 'scan.png',
    mimeType: 'image/png',
    buffer: Buffer.from('no scan at all'),
  });
  await expect(alert).toContainText('This isn’t a PNG, JPEG, WebP or SVG picture.');
  await files.setInputFiles(outline('<path'));
  await expect(alert).toContainText('couldn’t open this picture');
  // The one before is still there.
  await expect(under).toHaveCount(1);
});

import { expect, type Locator } from '@playwright/test';
import { test } from './maker';

test('a whole job is done by keyboard alone, and the focus is always seen', async ({ page }) => {
  /** Presses Tab until the focus is where it should be; nobody is caught anywhere on the way. */
  const tabTo = async (target: Locator, back = false) => {
    await expect(target).toBeVisible();
    for (let presses = 0; presses < 120; presses++) {
      if (await target.evaluate((element) => element === document.activeElement)) {
        const ring = await target.evaluate((element) => {
          const framed = element.closest('.field-box') ?? element;
          return [element, framed].some((each) => getComputedStyle(each).outlineStyle !== 'none');
        });
        expect(ring, 'the focus is shown').toBe(true);
        return;
      }
      await page.keyboard.press(back ? 'Shift+Tab' : 'Tab');
    }
    throw new Error(`Tab never reached ${target.toString()}`);
  };
  const press = async (target: Locator) => {
    await tabTo(target);
    await page.keyboard.press('Enter');
  };

  await page.goto('./');
  await press(page.getByRole('button', { name: 'Make it yours' }));
  await press(page.getByRole('link', { name: /^Size/ }));
  await tabTo(page.getByRole('img', { name: /^Net of/ }));
  await page.keyboard.press('+');
  await expect(page.getByRole('button', { name: 'Zoom out' })).toBeEnabled();
  await page.keyboard.press('0');
  await tabTo(page.getByRole('textbox', { name: 'Width', exact: true }));
  await page.keyboard.press('ArrowUp');
  // One mark of a trimmer with sixteenths above 3 1/2 in.
  await expect(page.getByRole('textbox', { name: 'Width', exact: true })).toHaveValue('3 9/16');
  await page.keyboard.press('ControlOrMeta+z');
  await expect(page.getByRole('textbox', { name: 'Width', exact: true })).toHaveValue('3 1/2');

  await tabTo(page.getByRole('link', { name: /^Count/ }), true);
  await page.keyboard.press('Enter');
  const count = page.getByRole('textbox', { name: 'How many of Seed box' });
  await tabTo(count);
  await page.keyboard.type('50');
  // The field's own undo and redo, which only a real browser has.
  for (const [keys, text] of [
    ['ControlOrMeta+z', '40'],
    ['ControlOrMeta+Shift+z', '50'],
  ] as const) {
    // A letter at a press, or both at once: as the browser likes.
    for (let letters = 0; letters < 2 && (await count.inputValue()) !== text; letters++)
      await page.keyboard.press(keys);
    await expect(count).toHaveValue(text);
  }
  await expect(page.getByText('to make: 50 needed + 5 spares')).toBeVisible();
  await tabTo(page.getByRole('link', { name: /^Make/ }).first(), true);
  await page.keyboard.press('Enter');
  await press(page.getByRole('button', { name: 'Next' }));
  await expect(page.getByText(/^Step 2 of/)).toBeVisible();

  // Everything that can be done is found by typing, from wherever she stands; and the keys are told.
  await page.keyboard.press('ControlOrMeta+k');
  const find = page.getByRole('combobox', { name: /^Find a page/ });
  await expect(find).toBeFocused();
  await page.keyboard.type('no such thing');
  await expect(page.getByRole('dialog').getByText('No results.').last()).toBeVisible();
  await find.fill('backup');
  await expect(page.getByRole('option', { name: 'Save everything to a file (backup) action' })).toBeVisible();
  await find.fill('glossary');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Help' })).toBeVisible();
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Keys' })).toContainText('Search');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await page.keyboard.press('/');
  await expect(find).toBeFocused();
  await page.keyboard.type('seed');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('navigation', { name: 'Pages' })).toBeVisible();
});

import { readFileSync } from 'node:fs';
import { screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { openTab, World } from '../state/open-tab';
import { openApp } from './open-app';

import '../../src/app/season-page';

async function seasonOfExample(file: string) {
  const store = await openTab(new World());
  const reading = readWorkbook(readFileSync(`demo-data/${file}.json`, 'utf8'));
  if (!reading.ok) throw new Error('the example is refused');
  const { planImport, placeExample } = store.getState();
  placeExample(planImport(reading.file));
  await openApp('/season', store);
}

test.each([
  ['seed-swap-supper', 'Village seed-swap supper'],
  ['orchard-season', 'Apple day, Box-folding class, Harvest supper, and Winter fair'],
])('above the example %s the season names the events that are there', async (file, names) => {
  await seasonOfExample(file);
  const said = new RegExp(`This is an example: ${names}\\.`);
  expect(await screen.findByRole('complementary', { name: said })).toBeVisible();
});

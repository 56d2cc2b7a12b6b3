import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readContents } from '../../shared/contents-file';
import { readWorkbook } from '../../shared/read-workbook';
import { writeWorkbook } from '../../shared/write-workbook';
import { checkBox } from '../../src/core/checks';
import { netOfRecipe, planEvent } from '../../src/core/plan';
import { styleById } from '../../src/core/styles';

const QUESTION = 'twelve-truffles.json';
const files = readdirSync('demo-data').filter((name) => name.endsWith('.json') && name !== QUESTION);
const textOf = (name: string): string => readFileSync(`demo-data/${name}`, 'utf8');

describe('the demo data', () => {
  it('has an event and a recipe', () => {
    expect(files.length).toBeGreaterThanOrEqual(2);
  });

  it('a question for the fit opens', () => {
    expect(readContents(textOf(QUESTION))).toHaveProperty('contents');
  });

  it.each(files)('%s opens, and would be saved as it stands', (name) => {
    const reading = readWorkbook(textOf(name));
    expect(reading).toMatchObject({ ok: true });
    if (reading.ok) expect(writeWorkbook(reading.file)).toBe(textOf(name));
  });

  it.each(files)('%s holds only boxes that can be made, and events with nothing in the way', (name) => {
    const reading = readWorkbook(textOf(name));
    if (!reading.ok) throw new Error(name);
    for (const recipe of reading.file.recipes) expect(netOfRecipe(recipe)?.pieces.length).toBeGreaterThan(0);
    for (const recipe of reading.file.recipes) {
      const style = styleById(recipe.styleId);
      const net = netOfRecipe(recipe);
      const stops = style && net ? checkBox(style, net).filter(({ severity }) => severity === 'stop') : [];
      expect(stops, recipe.name).toEqual([]);
    }
    for (const event of reading.file.events) expect(planEvent(reading.file, event.id)?.findings).toEqual([]);
  });
});

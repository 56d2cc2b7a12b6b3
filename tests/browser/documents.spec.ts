import { readFile } from 'node:fs/promises';
import DxfParser from 'dxf-parser';
import { callDesk } from '../desk/call-desk';
import { type ReadPage, readPdf } from '../print/read-pdf';
import { expect, test } from './maker';
import { madeFile } from './pages/made-file';
import { shelf } from './pages/shelf';
import { PAGES, workbook } from './pages/workbook';

/** The same from the desk: `npm run desk -- net --style tray-lid …`. */
async function fromDesk(format: string, ...words: readonly string[]): Promise<string | Uint8Array> {
  const asked = ['net', '--style', 'tray-lid', '--format', format, '--out', 'net', ...words];
  return (await callDesk(asked)).written.get('net') ?? '';
}
const untitled = (text: string): string =>
  text
    .trim()
    .replace(/<title>[^<]*<\/title>/, '')
    .replace(/"(file|frame)_title": ?"[^"]*",?/g, '');

test('the net goes to other programs whole and piece by piece, as the desk writes it', async ({ page }) => {
  await page.goto('./#/new');
  await page.getByRole('button', { name: /^Tray with lift-off lid/ }).click();
  await page.getByText('Export the net (SVG, DXF, FOLD)').click();
  const save = async (name: string): Promise<string> => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name }).click();
    return readFile(await (await download).path(), 'utf8');
  };
  const [fold, svg, dxf] = [
    await save('Save as FOLD'),
    await save('Save as SVG'),
    await save('Save as DXF'),
  ] as const;
  await page.getByRole('radiogroup', { name: 'Pieces' }).getByRole('radio', { name: 'Lid' }).click();
  const lid = await save('Save as DXF');
  const desk = [
    await fromDesk('fold'),
    await fromDesk('svg'),
    await fromDesk('dxf'),
    await fromDesk('dxf', '--piece', 'lid'),
  ].map(String);
  expect([fold, svg, dxf, lid].map(untitled)).toEqual(desk.map(untitled));

  // Read by others: the browser's own XML reader, and dxf-parser 1.1.2.
  const blank = await page.context().newPage(); // its policy lets a text be parsed
  const groups = await blank.evaluate(
    (text) =>
      [...new DOMParser().parseFromString(text, 'image/svg+xml').querySelectorAll('g[id]')].map(
        ({ id, parentElement }) => `${parentElement?.id ?? ''} ${id}`.trim(),
      ),
    svg,
  );
  expect(groups).toEqual(
    ['cut', 'score', 'slit', 'pare', 'glue'].flatMap((layer) => [
      layer,
      `${layer} ${layer}-tray`,
      `${layer} ${layer}-lid`,
    ]),
  );
  const read = new DxfParser().parseSync(dxf);
  const names = read?.entities.flatMap((entity) => ('text' in entity ? [String(entity.text)] : []));
  expect(names).toEqual(['Tray', 'Lid']);
  expect(new Set(read?.entities.map(({ layer }) => layer))).toEqual(
    new Set(['CUT', 'SCORE', 'SLIT', 'GLUE', 'NAME', 'PARE']),
  );
  expect(new DxfParser().parseSync(lid)?.entities.length).toBeLessThan(read?.entities.length ?? 0);

  // The template at true size: every line and word of every page where the desk puts it, as pdfjs-dist reads both.
  await page.getByRole('radio', { name: 'letter' }).click();
  const template = await madeFile(page, () =>
    page.getByRole('button', { name: 'Print a full-size template' }).click(),
  );
  const templateOfDesk = (await fromDesk('pdf', '--paper', 'letter')) as Uint8Array;
  const [ours, theirs] = await Promise.all([readUnnamed(template), readUnnamed(templateOfDesk)]);
  expect(ours).toEqual(theirs);
  expect(ours.map(({ texts }) => texts.some(({ text }) => text.startsWith('Lid, card')))).toEqual([
    false,
    true,
  ]);
});

/** The pages of a PDF without what is the row's own: its name and its number. */
const readUnnamed = async (pdf: Uint8Array): Promise<ReadPage[]> =>
  (await readPdf(pdf)).map((page) => ({
    ...page,
    texts: page.texts.filter(({ text }) => !/tray with lift-off lid|^[0-9a-f]{8}$/i.test(text)),
  }));

const PAPERS = { letter: [216, 279], A4: [210, 297] } as const;
const DOCUMENTS = [
  'Print the step card',
  'Print a full-size template',
  'Print the decorating map, full size',
  'Print the pick list and labels',
  'Print the cutting plan',
  'Print the list',
  'Print it large, with big pictures',
  'Print the batch sheet',
  'Print the lesson plan',
  'Print the handout',
];

test('every document of an event prints on the paper that is chosen, and all its fractions are whole signs', async ({
  page,
}, info) => {
  await shelf(page).openDemo();
  const printed: string[] = [];
  /** Presses everything on this page that prints, and reads what was made. */
  const printAll = async (...papers: readonly (keyof typeof PAPERS)[]) => {
    for (const acts of await page.locator('.print-acts').all())
      for (const paper of papers) {
        await acts.getByRole('radio', { name: paper }).click();
        for (const button of await acts.getByRole('button', { name: /^Print/ }).all()) {
          const label = (await button.textContent()) ?? '';
          // pdfjs-dist, which shares nothing with the writer
          const pages = await readPdf(await madeFile(page, () => button.click()));
          for (const { widthMm, heightMm } of pages)
            expect([widthMm, heightMm].map(Math.round).sort(), `${label}, ${paper}`).toEqual(PAPERS[paper]);
          const text = pages.flatMap(({ texts }) => texts.map((each) => each.text)).join(' ');
          // Its numbers are set as signs: none is left as it is typed, none comes out as a box or a blank.
          // A lesson counts minutes and has no length in it.
          if (!/lesson/.test(label)) expect(text, `${label}, ${paper}`).toMatch(/[¼½¾⅛⅜⅝⅞⁄]/);
          expect(text, `${label}, ${paper}`).not.toMatch(/\d \d+\/\d|\uFFFD/);
          printed.push(label);
        }
      }
  };
  for (const name of PAGES) {
    await workbook(page).turnTo(name);
    if (name === 'sheets') await page.getByRole('button', { name: 'Print the cutting plan' }).waitFor();
    if (name === 'event') {
      await page.getByText('Kits for a class').first().click();
      await page.getByRole('radio', { name: 'kits for a class' }).click();
      await page.getByRole('button', { name: 'Print the pick list and labels' }).waitFor();
    }
    if (name === 'bench')
      for (const view of ['One box', 'Time']) {
        await page.getByRole('radio', { name: view }).click();
        await printAll('A4');
      }
    else if (name === 'box') await printAll('letter', 'A4');
    else await printAll(name === 'handout' ? 'A4' : 'letter');
  }
  info.annotations.push({ type: 'measured', description: `${printed.length} documents printed` });
  expect([...new Set(printed)].sort()).toEqual([...DOCUMENTS].sort());
});

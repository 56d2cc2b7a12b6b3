/**
 * The maker's main job, in any engine that can go to an address and run a function in the page: a new box, its net, an event with its sheets, a
 * PDF, and all of it there again after a reload. Each wait ends in words that name the step.
 */
const STEP_MS = 45_000;
/** What all steps before may take together; a quiet machine needs a third. On a slower one a step that is not seen tells nothing of the engine. */
const QUIET_MS = 40_000;

/** The machine is too busy to say anything of the engine. */
export class TooSlow extends Error {}

/** What the page says, drawings and their letters too. */
const says = (words) => document.body.textContent.includes(words);
const press = (kind, name) => {
  const known = new RegExp(name);
  const named = [...document.querySelectorAll(kind)].find((each) =>
    known.test((each.getAttribute('aria-label') ?? each.textContent).trim()),
  );
  named?.click();
  return named !== undefined;
};
/** Types as React hears it: the value by the field's own setter, then the event of a key, then away from the field. */
const type = (label, value) => {
  const field = [...document.querySelectorAll('input')].find((each) =>
    [each.getAttribute('aria-label'), ...[...each.labels].map((one) => one.textContent)].some(
      (name) => name?.trim() === label,
    ),
  );
  if (!field) return false;
  field.focus();
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set.call(field, value);
  field.dispatchEvent(new Event('input', { bubbles: true }));
  field.blur();
  return true;
};
const holds = (label, value) =>
  [...document.querySelectorAll('input')].some(
    (each) => [...each.labels].some((one) => one.textContent.trim() === label) && each.value === value,
  );
const turnTo = (page) => {
  location.hash = location.hash.replace(/[^/]+$/, page);
  return true;
};
/** From now on, the first letters of each file the page makes. */
const watchFiles = () => {
  window.filesMade = [];
  const create = URL.createObjectURL.bind(URL);
  URL.createObjectURL = (file) => {
    void file
      .slice(0, 5)
      .text()
      .then((first) => window.filesMade.push(`${first} ${file.size > 5000}`));
    return create(file);
  };
  return true;
};
const made = (first) => window.filesMade.includes(first);
const isSaved = () => document.querySelector('.save-state-saved') !== null;
const isWorkbook = () => document.querySelector('.workbook') !== null;

/** Does the job at this address; throws with the name of the step that failed. */
export async function doMainJob(page, origin) {
  const began = Date.now();
  const until = async (step, act, ...args) => {
    const before = Date.now() - began;
    const end = Date.now() + STEP_MS;
    let why = 'not seen';
    for (;;) {
      try {
        if (await page.evaluate(act, ...args)) return;
      } catch (error) {
        if (error.name === 'TimeoutError') throw new TooSlow(`${step}: no answer`);
        why = error.message;
      }
      if (before > QUIET_MS) throw new TooSlow(`${before / 1000} s until “${step}”`);
      if (Date.now() > end) throw new Error(`${step}: ${why}`);
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  };
  await page.go(`${origin}/`);
  await until('the example opens by itself', isWorkbook);
  await page.evaluate(turnTo, 'sheets');
  await until('the sheets of the example are counted', says, 'This is the fewest sheets possible.');

  await page.go(`${origin}/#/new`);
  await until('a style is chosen', press, 'button', '^Open-top box');
  for (const [label, value] of [
    ['Width', '3 1/2'],
    ['Depth', '1 1/2'],
    ['Height', '3'],
  ])
    await until(`${label} is typed`, type, label, value);
  // The same box as in whole-job.spec.ts, where its piece is worked out.
  await until('the net stands with its size', says, '11 × 4¼ in');
  await page.evaluate(turnTo, 'bench');
  await page.evaluate(watchFiles);
  await until('the step card is asked for', press, 'button', '^Print the step card');
  await until('the step card is a PDF', made, '%PDF- true');
  await page.evaluate(turnTo, 'event');
  await until('favors are typed', type, 'How many favors', '40');
  await until('the batch is planned', press, 'button', '^Plan the batch');
  await until('spares are added', says, '40 needed + 4 spares');
  await page.evaluate(turnTo, 'box');
  await until('all is saved', isSaved);
  await page.reload();
  await until('after a reload the box is there', holds, 'Width', '3 1/2');
  await until('and its net', says, '11 × 4¼ in');
}

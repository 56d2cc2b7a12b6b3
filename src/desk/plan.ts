import { planEvent } from '../core/plan';
import { describePlan } from './describe-plan';
import { readPaper } from './paper';
import { chooseRow, readWorkbookFile } from './read-file';
import type { DeskRefusal, Verb } from './verb';

export const verb: Verb = {
  usage: 'EVENT.json [--event ID] [--out FOLDER] [--paper letter|a4]',
  answers:
    'Sheets for each paper with their bound and proof, parts, shopping list, cost and minutes of an event.',
  words: { least: 1, most: 1 },
  options: { event: 'one', out: 'one', paper: 'one' },
  run: async (given, desk) => {
    const refused: DeskRefusal[] = [];
    const [path = ''] = given.words;
    const workbook = readWorkbookFile(path, desk, refused);
    const event = workbook && chooseRow(workbook.events, given.one['event'], 'event', path, refused);
    const plan = event && planEvent(workbook, event.id);
    if (!plan) return refused;
    const paper = readPaper(given, workbook.tools[0]?.unit ?? 'in');
    if (typeof paper !== 'string') return [paper];
    const folder = given.one['out'];
    if (folder !== undefined) {
      const { printPlan } = await import('./print-plan');
      const prints = await printPlan(plan, event, workbook, paper, desk);
      const files = prints.map(({ name, content }) => ({ path: `${folder}/${name}`, content }));
      const failed = desk.write(files);
      if (failed) return [failed];
      for (const { path } of files) desk.tell(path);
    }
    desk.print(JSON.stringify(describePlan(plan), null, 2));
    return [];
  },
};

import { planEvent } from '../core/plan';
import { describePlan } from './describe-plan';
import { chooseRow, readWorkbookFile } from './read-file';
import type { DeskRefusal, Verb } from './verb';

export const verb: Verb = {
  usage: 'EVENT.json [--event ID] [--out FOLDER]',
  answers:
    'Sheets for each paper with their bound and proof, parts, shopping list, cost and minutes of an event.',
  words: { least: 1, most: 1 },
  options: { event: 'one', out: 'one' },
  run: (given, desk) => {
    const refused: DeskRefusal[] = [];
    const [path = ''] = given.words;
    const workbook = readWorkbookFile(path, desk, refused);
    const event = workbook && chooseRow(workbook.events, given.one['event'], 'event', path, refused);
    const plan = event && planEvent(workbook, event.id);
    if (!plan) return refused;
    desk.print(JSON.stringify(describePlan(plan), null, 2));
    return [];
  },
};

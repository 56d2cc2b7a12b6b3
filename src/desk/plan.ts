import { type EventMix, MIX_WAYS, type MixPlan, mixEvent, planEvent, wholeSolverOf } from '../core/plan';
import { planSheets } from '../core/yield';
import { describePlan, layoutMm } from './describe-plan';
import { readPaper } from './paper';
import { chooseRow, readWorkbookFile } from './read-file';
import { readSeconds } from './read-seconds';
import { refuse } from './refuse';
import { toolOfEvent } from './tool-of-event';
import type { DeskRefusal, Verb } from './verb';

/** A way to cut an event from several papers: money in whole minor units, boxes by paper, sheets, layouts, what is left. */
const describeMix = ({ way, plan, mixOf }: EventMix) => ({
  way,
  possible: plan !== null,
  ...(plan && {
    says: sentenceOf(plan, way),
    priceMinor: plan.priceMinor,
    boundMinor: plan.boundMinor,
    proven: plan.proven,
    boxes: plan.shares.map(({ lot: line, card: paper, boxes }) => ({ line, paper, boxes })),
    papers: plan.cuts.map(({ format: paper, plan: its, purchase, onHand }) => ({
      paper,
      sheets: its.sheets,
      onHand,
      bought: purchase.units,
      packs: purchase.packs.map(({ pack: { units, priceMinor }, count, free }) => ({ units, priceMinor, count, free })), // biome-ignore format: one row
      left: onHand + purchase.units - its.sheets,
      layouts: its.layouts.map(layoutMm),
    })),
    lines: mixOf,
    proof: plan.proof,
  }),
});

const sentenceOf = ({ proven, priceMinor, boundMinor }: MixPlan, way: EventMix['way']): string =>
  !proven
    ? `At most ${priceMinor - boundMinor} less could exist.`
    : way === 'any'
      ? 'No mix of these papers costs less.'
      : 'No other choice of so few papers costs less.';

export const verb: Verb = {
  usage: 'EVENT.json [--event ID] [--out FOLDER] [--paper letter|a4] [--seconds S] [--mix one|two|any|all]',
  answers:
    'Sheets for each paper with their bound and proof, parts, shopping list, cost and minutes of an event; with --mix the cheapest mix of the papers its lines allow.',
  words: { least: 1, most: 1 },
  options: { event: 'one', out: 'one', paper: 'one', seconds: 'one', mix: 'one' },
  run: async (given, desk) => {
    const refused: DeskRefusal[] = [];
    const [path = ''] = given.words;
    const workbook = readWorkbookFile(path, desk, refused);
    const event = workbook && chooseRow(workbook.events, given.one['event'], 'event', path, refused);
    const asked = given.one['mix'];
    const ways = MIX_WAYS.filter((way) => asked === 'all' || asked === way);
    if (asked !== undefined && ways.length === 0)
      refused.push(refuse('mix-unknown', '--mix', asked, 'one, two, any or all', NO_WAY));
    const seconds = given.one['seconds'] === undefined ? null : readSeconds(given.one['seconds']);
    if (seconds !== null && typeof seconds !== 'number') refused.push(seconds);
    if (!event || refused.length > 0) return refused;
    const limits = typeof seconds === 'number' ? { seconds, now: desk.tick } : {};
    const plan = planEvent(workbook, event.id, { planSheets: (parts, paper, tool) => planSheets(parts, paper, tool, limits) }); // biome-ignore format: one row
    if (!plan) return refused;
    const paper = readPaper(given, toolOfEvent(event, workbook)?.unit ?? 'in');
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
    const mix = ways.length === 0 ? [] : [...mixEvent(workbook, event, { ...limits, solveWhole: await wholeSolver() })].filter(({ way }) => ways.includes(way)); // biome-ignore format: one row
    desk.print(JSON.stringify({ ...describePlan(plan), ...(ways.length > 0 && { mix: mix.map(describeMix) }) }, null, 2)); // biome-ignore format: one row
    return [];
  },
};

const NO_WAY = 'A mix is from one paper, from two, from any of them, or all of these side by side.';

/** The general solver is fetched only when a mix is asked for. */
const wholeSolver = async () => wholeSolverOf(await (await import('highs')).default());

import { cautionsOf } from '../../shared/catalogue';
import type { Recipe } from '../../shared/workbook';
import type { GrainWay } from '../core/draw/strokes/grain-arrow';
import { placePieces, sizePieces } from '../core/dress';
import { type BoxNet, pieceAlone } from '../core/net';
import {
  benchToolOf,
  cutMarkOf,
  cuttingToolOf,
  favorNames,
  handSecondsOfBox,
  listRunSheet,
  usualCards,
} from '../core/plan';
import {
  calendarOf,
  type HandoutInput,
  handoutPage,
  lettersLost,
  PAPER_MM,
  type PrintDocument,
  pdfOf,
  printBenchCard,
  printCuttingSheets,
  printDecorateMap,
  printHandout,
  printKitLabels,
  printLesson,
  printNameCards,
  printNestedSheet,
  printRunSheet,
  printSeason,
  printShoppingList,
  printTableList,
  printTemplate,
  shoppingCsv,
  shortId,
} from '../print';
import { addressOfRecipe } from '../state/intents/recipe-link';
import { benchOfRecipe } from '../state/results/bench-result';
import { type BoxResult, boxOfRecipe } from '../state/results/box-result';
import { rulerOf } from '../state/results/ruler-of';
import { toolInHand } from '../state/results/tool-in-hand';
import { rowsOf } from '../state/shelf';
import type { WorkbookStore } from '../state/workbook-store';
import type { MadeFile, Printer } from '../ui/frame/printer';
import { fileNames } from '../ui/words/english/file-names';
import { leansIn, sayIn } from '../ui/words/spoken';
import type { Spoken } from './browser-printer';

const GRAIN = { upright: 'up', around: 'across', free: null } as const satisfies Record<
  Recipe['grain'],
  GrainWay | null
>;

/** Puts on paper what the workbook holds, in the reader's language. */
export function printJobs(workbook: WorkbookStore, words: Spoken): Printer {
  const hand = printHand(workbook, words);
  return { ...boxPrints(workbook, hand), ...eventPrints(workbook, hand) };
}

type PrintHand = ReturnType<typeof printHand>;

/** What every print needs: the reader's words and lengths, and the tools in use. */
function printHand(workbook: WorkbookStore, words: Spoken) {
  const say = sayIn(words);
  const ruler = () => ({ ...rulerOf(workbook.getState()), leans: leansIn(say) });
  const tool = () => toolInHand(workbook.getState().rows.tools, ruler().unit);
  return { locale: words.locale, say, ruler, tool };
}

/** Prints of one box. */
function boxPrints(workbook: WorkbookStore, { say, ruler, tool }: PrintHand) {
  const boxOf = (recipe: Recipe) => {
    const inHand = tool();
    const box = boxOfRecipe(recipe, inHand);
    if (!box) throw new Error(`no style is called ${recipe.styleId}`);
    return {
      box,
      cards: benchOfRecipe(recipe, inHand, ruler(), workbook.getState().rows.events.values())?.cards ?? [],
    };
  };
  const finestMark = () => cutMarkOf(benchToolOf(tool()));
  const linkOf = (recipe: Recipe) => addressOfRecipe(workbook.getState().rows, recipe.id, location.href);
  const handoutOf = (recipe: Recipe): HandoutInput => {
    const { box, cards } = boxOf(recipe);
    const { rows } = workbook.getState();
    return {
      recipe,
      style: box.style,
      net: box.net,
      cards,
      ruler: ruler(),
      seconds: handSecondsOfBox(box.net, benchToolOf(tool())),
      link: linkOf(recipe),
      photos: [...rows.photos.values()].filter(({ recipeId }) => recipeId === recipe.id),
      stamp: stampOf(recipe.id),
      say,
    };
  };
  const shared = (recipe: Recipe) => ({
    recipeName: recipe.name,
    faceUp: recipe.faceUp,
    grain: GRAIN[recipe.grain],
    ruler: ruler(),
    stamp: stampOf(recipe.id),
  });

  return {
    async benchCard(recipe, paper, edition = 'compact') {
      const { box, cards } = boxOf(recipe);
      const { notes } = recipe;
      const { inside } = box.net;
      return inPdf(
        printBenchCard({
          ...shared(recipe),
          paper,
          edition,
          paperName: workbook.getState().rows.papers.get(recipe.paperId ?? '')?.name ?? null,
          styleName: say(box.style.name),
          inside,
          cards,
          notes,
          link: linkOf(recipe),
          cautions: recipe.contents ? cautionsOf(recipe.contents).map(({ says }) => say(says)) : [],
          dressed: { net: box.net, dressings: recipe.dressings, mark: finestMark() },
        }),
      );
    },
    template: async (recipe, paper) =>
      inPdf(printTemplate({ ...shared(recipe), paper, pieces: boxOf(recipe).box.net.pieces })),
    ...boxFiles((recipe) => boxOf(recipe).box),
    handout: async (recipe, paper) => inPdf(printHandout({ ...handoutOf(recipe), paper })),
    handoutPage: (recipe) => {
      const page = handoutPage(handoutOf(recipe));
      return Promise.resolve({
        name: fileNames.handout(recipe.name),
        ending: 'html',
        content: new Blob([page], { type: 'text/html;charset=utf-8' }),
      });
    },
    async decorateMap(recipe, dressingId, paper) {
      const { net } = boxOf(recipe).box;
      const dressing = recipe.dressings.find(({ id }) => id === dressingId);
      const placed = dressing ? placePieces(net, sizePieces(net, dressing, finestMark())) : [];
      return inPdf(printDecorateMap({ ...shared(recipe), paper, pieces: net.pieces, placed }));
    },
  } satisfies Partial<Printer>;
}

/** The net of a box, and a style of the maker's own, as files. */
const boxFiles = (boxOf: (recipe: Recipe) => Pick<BoxResult, 'net' | 'style'>) =>
  ({
    async netFile(recipe, format, pieceId) {
      const { net } = boxOf(recipe);
      const whole = { net, name: recipe.name };
      const made = (pieceId !== null && pieceAlone(net, recipe.name, pieceId)) || whole;
      const text = await NET_FILES[format](made.net, made.name);
      return { name: made.name, ending: format, content: new Blob([text], { type: NET_KINDS[format] }) };
    },
    styleFile(recipe) {
      // only its blank space is put in again, which does not count
      const text = `${JSON.stringify(JSON.parse(recipe.ownStyle ?? 'null'), null, 1)}\n`;
      const content = new Blob([text], { type: 'application/json' });
      return Promise.resolve({ name: boxOf(recipe).style.name, ending: 'json', content });
    },
  }) satisfies Partial<Printer>;

/** Prints of an event, its guests and its season. */
function eventPrints(workbook: WorkbookStore, { locale, say, ruler, tool }: PrintHand) {
  const toolOfEvent = (eventId: string) => {
    const { events, tools } = workbook.getState().rows;
    return tools.get(events.get(eventId)?.toolId ?? '') ?? tool();
  };
  return {
    async kitLabels(plan, paper) {
      if (!plan.kit) throw new Error('this event is not for kits');
      return inPdf(
        printKitLabels({ plan, kit: plan.kit, paper, ruler: ruler(), stamp: stampOf(plan.eventId) }),
      );
    },
    async lessonPlan(plan, paper) {
      if (!plan.lesson) throw new Error('this event is not a class');
      return inPdf(
        printLesson({ plan, lesson: plan.lesson, paper, locale, say, stamp: stampOf(plan.eventId) }),
      );
    },
    async nameCards(event, paper) {
      const cards = event.nameCards ?? usualCards(ruler().unit);
      const own = workbook.getState().rows.papers.get(cards.paperId ?? '');
      const sheet = own ? { widthMm: own.acrossMm, heightMm: own.upMm } : PAPER_MM[paper];
      return inPdf(printNameCards({ event, cards, sheet, stamp: stampOf(event.id) }));
    },
    async tableList(event, paper) {
      const { recipes, papers } = workbook.getState().rows;
      const names = favorNames(event, recipes, papers);
      return inPdf(printTableList({ event, names, paper, stamp: stampOf(event.id) }));
    },
    season: async (season, paper) =>
      inPdf(printSeason({ season, paper, locale, say, stamp: stampOf('season') })),
    cuttingSheets: async (plan, paper) => {
      const cutting = cuttingToolOf(toolOfEvent(plan.eventId));
      return inPdf(
        printCuttingSheets({ plan, paper, tool: cutting, ruler: ruler(), stamp: stampOf(plan.eventId) }),
      );
    },
    nestedSheet: async (sheet, code) => inPdf(printNestedSheet({ ...sheet, stamp: stampOf(code) })),
    shoppingList: async (plan, paper) =>
      inPdf(printShoppingList({ plan, paper, locale, say, ruler: ruler(), stamp: stampOf(plan.eventId) })),
    shoppingTable: (plan) =>
      Promise.resolve({
        name: fileNames.shoppingList(plan.name),
        ending: 'csv',
        content: new Blob([shoppingCsv({ plan, locale, say })], { type: 'text/csv;charset=utf-8' }),
      }),
    async runSheet(plan, paper) {
      const { rows } = workbook.getState();
      const sheet = listRunSheet(plan, rowsOf(rows), toolOfEvent(plan.eventId));
      return inPdf(
        printRunSheet({ plan, sheet, paper, locale, say, ruler: ruler(), stamp: stampOf(plan.eventId) }),
      );
    },
    calendar: async (plan) => ({
      name: fileNames.timetable(plan.name),
      ending: 'ics',
      content: new Blob([await calendarOf(plan, stampOf(plan.eventId))], {
        type: 'text/calendar;charset=utf-8',
      }),
    }),
  } satisfies Partial<Printer>;
}

const NET_FILES = {
  fold: async (net: BoxNet, name: string) => (await import('../core/net/fold-format')).foldTextOf(net, name),
  svg: async (net: BoxNet, name: string) => (await import('../core/net/svg')).svgOf(net, name),
  dxf: async (net: BoxNet, _name: string) => (await import('../core/net/dxf')).dxfOf(net),
};
/** source: SVG is registered by W3C; DXF by IANA as image/vnd.dxf; FOLD is JSON (from memory). */
const NET_KINDS = { fold: 'application/json', svg: 'image/svg+xml', dxf: 'image/vnd.dxf' };

const stampOf = (id: string) => ({ madeAt: new Date().toISOString(), code: shortId(id) });

async function inPdf(document: PrintDocument): Promise<MadeFile> {
  const [regular, bold] = await Promise.all([fetchFace('inter-regular.ttf'), fetchFace('inter-bold.ttf')]);
  const bytes = await pdfOf(document, { regular, bold });
  const content = new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/pdf' });
  return { name: document.name, ending: 'pdf', content, lost: lettersLost(document) };
}

async function fetchFace(file: string): Promise<Uint8Array> {
  const answer = await fetch(new URL(`fonts/${file}`, document.baseURI));
  if (!answer.ok) throw new Error(`${file}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}

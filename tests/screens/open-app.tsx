import { readFileSync } from 'node:fs';
import { configure, render } from '@testing-library/react';
import { MemoryRouter, useNavigate } from 'react-router';
import { readWorkbook } from '../../shared/read-workbook';
import { App } from '../../src/app/app';
import { planEvent } from '../../src/core/plan';
import { type Planner, planHere } from '../../src/state/results/event-plan';
import { rowsOf } from '../../src/state/shelf';
import type { WorkbookStore } from '../../src/state/workbook-store';
import type { OpenWorkbook } from '../../src/ui/frame/open-workbook';
import type { MadeFile, Printer } from '../../src/ui/frame/printer';
import { english } from '../../src/ui/words/english';
import { openTab, World } from '../state/open-tab';

// Pages are fetched when they are opened; here they are at hand, so that no test waits for one to be compiled.
import '../../src/app/keeping-page';
import '../../src/app/shortcuts';
import '../../src/app/workbook-frame';
import '../../src/app/workbook-name';
import '../../src/screens/bench/bench-screen';
import '../../src/screens/box/box-screen';
import '../../src/screens/dressing/dressing-screen';
import '../../src/app/front-door-page';
import '../../src/screens/event/event-screen';
import '../../src/screens/new-recipe/new-recipe-screen';
import '../../src/screens/sheets/sheets-screen';
import '../../src/screens/shelf/shelf-screen';
import '../../src/screens/shopping/shopping-screen';
import '../../src/screens/stock/stock-screen';

configure({ asyncUtilTimeout: 10_000 });

/** A printer that only remembers what it was asked for. */
export class PaperTray implements Printer {
  readonly asked: string[] = [];
  readonly #make =
    (what: string) =>
    (_of: unknown, paper?: string): Promise<MadeFile> => {
      this.asked.push(paper === undefined ? what : `${what} on ${paper}`);
      return Promise.resolve({ name: what, ending: 'csv', content: new Blob() });
    };
  readonly benchCard = this.#make('bench card');
  readonly template = this.#make('template');
  readonly decorateMap = (_of: unknown, _dressing: unknown, paper: string) =>
    this.#make('map for decorating')(_of, paper);
  readonly netFile = (_of: unknown, format: string) => this.#make(`net as ${format}`)(_of);
  readonly styleFile = (_of: unknown) => this.#make('style file')(_of);
  readonly handout = this.#make('handout');
  readonly handoutPage = (_of: unknown) => this.#make('handout page')(_of);
  readonly kitLabels = this.#make('kit labels');
  readonly season = this.#make('season');
  readonly lessonPlan = this.#make('lesson plan');
  readonly nameCards = this.#make('name cards');
  readonly tableList = this.#make('table list');
  readonly cuttingSheets = this.#make('cutting sheets');
  readonly nestedSheet = (_of: unknown, _code: unknown) => this.#make('nested sheet')(_of);
  readonly shoppingList = this.#make('shopping list');
  readonly shoppingTable = this.#make('shopping table');
  readonly runSheet = this.#make('run sheet');
  readonly calendar = this.#make('calendar');
}

const demo = readFileSync('demo-data/seed-swap-supper.json', 'utf8');

/** A workbook in memory, with the demo on its shelf. */
export async function workbookWithDemo(): Promise<WorkbookStore> {
  const workbook = await openTab(new World());
  const reading = readWorkbook(demo);
  if (!reading.ok) throw new Error('the demo is refused');
  const { planImport, importPlanned, notices, dismiss } = workbook.getState();
  importPlanned(planImport(reading.file), english.shelf.takeIn);
  for (const { key } of [...notices, ...workbook.getState().notices]) dismiss(key);
  return workbook;
}

/** The first event of a workbook, open and planned, with its first box in hand. */
export function openEvent(store: WorkbookStore): OpenWorkbook {
  const { rows } = store.getState();
  const event = [...rows.events.values()][0]!;
  const recipes = event.lines.flatMap(({ recipeId }) => rows.recipes.get(recipeId) ?? []);
  return {
    workbook: { kind: 'event', id: event.id },
    recipe: recipes[0]!,
    recipes,
    event,
    plan: planEvent(rowsOf(rows), event.id),
    stale: false,
    bettering: false,
    settle: () => undefined,
    failed: null,
    again: () => undefined,
    mendOf: () => null,
    choosePaper: null,
    chooseTape: null,
  };
}

/** The page's own window has no notion of light; here it is day. */
window.matchMedia = (query) =>
  Object.assign(new EventTarget(), {
    matches: false,
    media: query,
    onchange: null,
  }) as unknown as MediaQueryList;

// Nor does it fetch or save files.
HTMLAnchorElement.prototype.click = () => undefined;

/** Hands out what leads to another page, as a link does. */
function Way({ hold }: { readonly hold: (goTo: (to: string) => void) => void }) {
  const navigate = useNavigate();
  hold((to) => void navigate(to));
  return null;
}

/** The whole app at an address, on a workbook in memory. */
export async function openApp(address: string, given?: WorkbookStore, planner: Planner = planHere) {
  const workbook = given ?? (await workbookWithDemo());
  const printer = new PaperTray();
  let go: (to: string) => void = () => undefined;
  const { unmount } = render(
    <MemoryRouter initialEntries={[address]}>
      <Way hold={(goTo) => (go = goTo)} />
      <App workbook={workbook} planner={planner} printer={printer} />
    </MemoryRouter>,
  );
  return { workbook, printer, unmount, go: (to: string) => go(to) };
}

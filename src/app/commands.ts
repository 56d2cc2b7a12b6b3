import type { WorkbookState } from '../state/workbook-state';
import {
  HELP,
  KEEPING,
  pageAddress,
  SHELF,
  START,
  stockAddress,
  type Workbook,
  workbookAt,
} from '../ui/frame/addresses';
import { keyFace } from '../ui/frame/key-list';
import { KEYS, type KeyAct } from '../ui/frame/keys';
import { PAGES, RECIPE_PAGES } from '../ui/frame/pages';
import type { Words } from '../ui/words';
import type { AlsoCalled, CommandWords } from '../ui/words/english/commands';
import type { KeyWords } from '../ui/words/english/keys';
import type { Asked } from './asked';
import type { Printable } from './printables';

/** One thing that can be done from anywhere. */
export interface Command {
  readonly id: string;
  readonly says: string;
  /** What kind of thing it is, said beside it. */
  readonly kind: keyof CommandWords['kinds'];
  /** Other words a maker may type for it. */
  readonly also?: AlsoCalled;
  /** The key that does the same, as it is written on the key. */
  readonly keys?: string;
  /** `slow`: answers with a promise, and is told of while it lasts. */
  readonly slow?: true;
  readonly run: () => unknown;
}

/** What the commands work on and work with. */
export interface Around {
  readonly state: WorkbookState;
  /** Where they are. */
  readonly pathname: string;
  readonly go: (address: string) => void;
  /** What can be put on paper from where they are. */
  readonly prints: readonly Printable[];
  /** Makes a document and hands it over. */
  readonly print: (make: NonNullable<Printable['make']>) => Promise<unknown>;
  readonly saveFile: (what: Parameters<WorkbookState['exportFile']>[0], name?: string) => void;
  readonly newStock: (table: StockTable) => ReturnType<WorkbookState['create']>;
  readonly ask: (what: Asked) => void;
  readonly words: Words;
  readonly own: CommandWords;
  readonly keyWords: KeyWords;
}

type StockTable = 'papers' | 'supplies' | 'tools';

/** Everything that can be done from where they are: the pages of what is open, acts, places, then everything by its name. */
export function commandsFrom(around: Around): readonly Command[] {
  return [...pages(around), ...acts(around), ...ofOpen(around), ...places(around), ...named(around)];
}

function acts({ state, words, own, keyWords, saveFile, ask }: Around): Command[] {
  const { frame } = words;
  const { history, settings } = state;
  const other = settings.unit === 'in' ? 'mm' : 'in';
  const themes = (['light', 'dark', 'contrast', 'system'] as const).filter((one) => one !== settings.theme);
  const act = (id: KeyAct<'anywhere'>, says: string, run: () => unknown): Command => ({
    id,
    says,
    kind: 'act',
    also: id,
    keys: keyFace(KEYS.anywhere[id][0], keyWords.faces),
    run,
  });
  const [last, next] = [history.done.at(-1), history.undone.at(-1)];
  return [
    ...(last ? [act('undo', `${frame.undo}: ${last.label}`, state.undo)] : []),
    ...(next ? [act('redo', `${frame.redo}: ${next.label}`, state.redo)] : []),
    act('keep', keyWords.acts.anywhere.keep, () => void state.keepNow()),
    {
      id: 'backup',
      says: words.shelf.saveEverything,
      kind: 'act',
      also: 'backup',
      run: () => saveFile({ kind: 'everything' }),
    },
    {
      id: 'unit',
      says: own.measureIn(other === 'in' ? frame.inches : frame.millimetres),
      kind: 'act',
      also: 'unit',
      run: () => void state.changeSettings({ unit: other }),
    },
    ...themes.map(
      (theme): Command => ({
        id: `theme ${theme}`,
        says: `${frame.theme}: ${frame[theme]}`,
        kind: 'act',
        also: 'theme',
        run: () => void state.changeSettings({ theme }),
      }),
    ),
    act('keys', own.toKeys, () => ask('keys')),
    { id: 'prints', says: own.toPrints, kind: 'act', also: 'toPrints', run: () => ask('prints') },
  ];
}

/** What can be done with the workbook that is open: on paper, to a file, as a copy. */
function ofOpen({ state, pathname, go, prints, print, saveFile, words, own }: Around): Command[] {
  const open = workbookAt(pathname);
  const row = open && (open.kind === 'event' ? state.rows.events : state.rows.recipes).get(open.id);
  if (!open || !row) return [];
  const copy = () => {
    const table = open.kind === 'event' ? 'events' : 'recipes';
    const made = state.duplicate({ table, id: open.id }, words.shelf.copyName(row.name));
    if (made.ok) go(pageAddress({ ...open, id: made.id }, open.kind === 'event' ? 'event' : 'box'));
  };
  return [
    ...prints.map((printable) => ofPrintable(printable)),
    {
      id: 'file',
      says: words.shelf.saveFileOf(row.name),
      kind: 'act',
      also: 'file',
      run: () => saveFile(open, row.name),
    },
    { id: 'copy', says: words.shelf.copyOf(row.name), kind: 'act', also: 'copy', run: copy },
  ];

  /** A document that waits for something leads to where that is given. */
  function ofPrintable(printable: Printable): Command {
    const { name, recipe, need, make } = printable;
    const called = own.prints[name];
    const severalBoxes = prints.some((other) => other.recipe && recipe && other.recipe !== recipe);
    const says = recipe && severalBoxes ? `${called}: ${recipe.name}` : called;
    const shared = { id: `print ${name} ${recipe?.id ?? ''}`, kind: 'act', also: name } as const;
    if (need || !make)
      return {
        ...shared,
        says: need ? own.printNeeds(says, own.needs[need.what]) : says,
        run: () => go(pageAddress(open as Workbook, need?.page ?? 'box', recipe?.id)),
      };
    return { ...shared, says, slow: true, run: () => print(make) };
  }
}

function pages({ pathname, go, words }: Around): Command[] {
  const open = workbookAt(pathname);
  if (!open) return [];
  const there = open.kind === 'event' ? PAGES : PAGES.filter((page) => RECIPE_PAGES.includes(page));
  return there.map((page) => ({
    id: `page ${page}`,
    says: words.pages[page],
    kind: 'page',
    also: page,
    run: () => go(pageAddress(open, page)),
  }));
}

function places({ state, go, words, own, newStock }: Around): Command[] {
  const place = (id: 'shelf' | 'new' | 'keeping' | 'help', says: string, address: string): Command => ({
    id,
    says,
    kind: 'place',
    also: id,
    run: () => go(address),
  });
  const stock = (table: StockTable, says: string): Command => ({
    id: `new ${table}`,
    says,
    kind: 'act',
    also: table,
    run() {
      const made = newStock(table);
      if (made.ok) go(stockAddress(table, made.id));
    },
  });
  return [
    place('shelf', words.frame.toShelf, SHELF),
    place('new', words.shelf.newRecipe, START),
    {
      id: 'new event',
      says: words.shelf.newEvent,
      kind: 'act',
      also: 'newEvent',
      run() {
        const made = state.createEvent({ name: words.shelf.newEventName });
        if (made.ok) go(pageAddress({ kind: 'event', id: made.id }, 'event'));
      },
    },
    stock('papers', words.shelf.newPaper),
    stock('supplies', words.shelf.newSupply),
    stock('tools', words.shelf.newTool),
    place('keeping', own.keeping, KEEPING),
    place('help', words.frame.help, HELP),
  ];
}

function named({ state, go }: Around): Command[] {
  const { events, recipes } = state.rows;
  const inStock = (table: StockTable, kind: 'paper' | 'supply' | 'tool'): Command[] =>
    [...state.rows[table].values()].map(({ id, name }) => ({
      id: `${table} ${id}`,
      says: name,
      kind,
      also: table,
      run: () => go(stockAddress(table, id)),
    }));
  return [
    ...[...events.values()].map(
      ({ id, name }): Command => ({
        id: `event ${id}`,
        says: name,
        kind: 'event',
        run: () => go(pageAddress({ kind: 'event', id }, 'event')),
      }),
    ),
    ...[...recipes.values()].map(
      ({ id, name }): Command => ({
        id: `recipe ${id}`,
        says: name,
        kind: 'recipe',
        run: () => go(pageAddress({ kind: 'recipe', id }, 'box')),
      }),
    ),
    ...inStock('papers', 'paper'),
    ...inStock('supplies', 'supply'),
    ...inStock('tools', 'tool'),
  ];
}

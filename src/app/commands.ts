import type { WorkbookState } from '../state/workbook-state';
import { HELP, KEEPING, NEW_RECIPE, pageAddress, SHELF, workbookAt } from '../ui/addresses';
import { PAGES, RECIPE_PAGES } from '../ui/pages';
import type { Words } from '../ui/words';
import type { CommandWords } from '../ui/words/command-words';

/** One thing that can be done from anywhere. */
export interface Command {
  readonly id: string;
  readonly says: string;
  /** What kind of thing it is, said beside it. */
  readonly kind: keyof CommandWords['kinds'];
  /** The key that does the same, as it is written on the key. */
  readonly keys?: string;
  readonly run: () => void;
}

interface Around {
  readonly state: WorkbookState;
  /** Where she stands. */
  readonly pathname: string;
  readonly go: (address: string) => void;
  readonly words: Words;
  readonly own: CommandWords;
}

/** Everything that can be done from where she stands: the pages of what is open, acts, places, then recipes and events by name. */
export function commandsFrom(around: Around): readonly Command[] {
  return [...pages(around), ...acts(around), ...places(around), ...named(around)];
}

function acts({ state, words, own }: Around): Command[] {
  const { frame } = words;
  const { history, settings } = state;
  const step = (verb: string, label: string | undefined) =>
    label === undefined ? verb : `${verb}: ${label}`;
  const other = settings.unit === 'in' ? 'mm' : 'in';
  const themes = (['light', 'dark', 'contrast', 'system'] as const).filter((one) => one !== settings.theme);
  return [
    {
      id: 'undo',
      says: step(frame.undo, history.done.at(-1)?.label),
      kind: 'act',
      keys: 'Ctrl Z',
      run: state.undo,
    },
    {
      id: 'redo',
      says: step(frame.redo, history.undone.at(-1)?.label),
      kind: 'act',
      keys: 'Ctrl Y',
      run: state.redo,
    },
    { id: 'keep', says: own.keepNow, kind: 'act', keys: 'Ctrl S', run: () => void state.keepNow() },
    {
      id: 'unit',
      says: own.measureIn(other === 'in' ? frame.inches : frame.millimetres),
      kind: 'act',
      run: () => void state.changeSettings({ unit: other }),
    },
    ...themes.map(
      (theme): Command => ({
        id: `theme ${theme}`,
        says: `${frame.theme}: ${frame[theme]}`,
        kind: 'act',
        run: () => void state.changeSettings({ theme }),
      }),
    ),
  ];
}

function pages({ pathname, go, words }: Around): Command[] {
  const open = workbookAt(pathname);
  if (!open) return [];
  const there = open.kind === 'event' ? PAGES : PAGES.filter((page) => RECIPE_PAGES.includes(page));
  return there.map((page) => ({
    id: `page ${page}`,
    says: words.pages[page],
    kind: 'page',
    run: () => go(pageAddress(open, page)),
  }));
}

function places({ go, words, own }: Around): Command[] {
  const place = (id: string, says: string, address: string): Command => ({
    id,
    says,
    kind: 'place',
    run: () => go(address),
  });
  return [
    place('shelf', words.frame.toShelf, SHELF),
    place('new', own.newBox, NEW_RECIPE),
    place('keeping', own.keeping, KEEPING),
    place('help', words.frame.help, HELP),
  ];
}

function named({ state, go }: Around): Command[] {
  const { events, recipes } = state.rows;
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
  ];
}

/** Those whose words hold every word that was typed, in any order. */
export function findCommands(commands: readonly Command[], typed: string): readonly Command[] {
  const wanted = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return commands.filter(({ says }) => wanted.every((word) => says.toLowerCase().includes(word)));
}

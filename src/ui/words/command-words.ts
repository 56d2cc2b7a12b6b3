import type { KeyAct } from '../frame/keys';
import type { PageName } from '../frame/pages';
import type { Texts } from './texts';

/** What can be put on paper from the list. */
export type PrintName =
  | 'benchCard'
  | 'template'
  | 'handoutPaper'
  | 'cuttingSheets'
  | 'shoppingList'
  | 'shoppingTable'
  | 'runSheet'
  | 'calendar'
  | 'kitLabels'
  | 'handoutPage'
  | 'decorateMap'
  | 'netSvg'
  | 'netDxf'
  | 'netFold';

/** What a document may wait for. */
export type PrintNeed = 'count' | 'counting' | 'paper' | 'date' | 'kits' | 'fixBox' | 'noSteps' | 'pickStyle';

/** Commands that are also found by other words than their own. */
export type AlsoCalled =
  | KeyAct<'anywhere'>
  | PageName
  | PrintName
  | 'backup'
  | 'unit'
  | 'theme'
  | 'file'
  | 'copy'
  | 'shelf'
  | 'new'
  | 'newEvent'
  | 'papers'
  | 'supplies'
  | 'tools'
  | 'keeping'
  | 'help'
  | 'toPrints';

/** Texts of the list of everything that can be done. */
export interface CommandWords
  extends Texts<'find' | 'findHelp' | 'none' | 'close' | 'keys' | 'toKeys' | 'keeping' | 'toPrints'> {
  readonly kinds: Texts<'act' | 'page' | 'place' | 'event' | 'recipe' | 'paper' | 'supply' | 'tool'>;
  readonly prints: Readonly<Record<PrintName, string>>;
  /** A document, and what it waits for. */
  readonly printNeeds: (print: string, need: string) => string;
  readonly needs: Readonly<Record<PrintNeed, string>>;
  /** Words a maker may type that do not stand in the command itself, with spaces between. */
  readonly also: Readonly<Record<AlsoCalled, string>>;
  /** Said beside what was found by another word. */
  readonly by: (words: readonly string[]) => string;
  readonly measureIn: (unit: string) => string;
  readonly found: (count: number) => string;
}

/** Texts of the list of everything that prints. */
export interface PrintWords extends Texts<'title' | 'save' | 'why' | 'event' | 'nothingOpen' | 'toShelf'> {
  readonly names: Readonly<Record<PrintName, string>>;
  readonly purpose: Readonly<Record<PrintName, string>>;
}

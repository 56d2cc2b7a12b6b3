import { createContext, use } from 'react';
import type { FavorEvent, Recipe } from '../../../shared/workbook';
import type { NestedSheet } from '../../core/draw/sheet/nested-net';
import type { EventPlan, SeasonPlan } from '../../core/plan';
import type { LengthUnit } from '../../core/units';

/** The paper in the printer. */
export type PrinterPaper = 'letter' | 'a4';

/** A maker who measures in inches most likely prints on letter. */
export const usualPaper = (unit: LengthUnit): PrinterPaper => (unit === 'in' ? 'letter' : 'a4');

/** A file made for the maker: what it is called, how it ends, what is in it. */
export interface MadeFile {
  readonly name: string;
  readonly ending: 'pdf' | 'csv' | 'ics' | 'html' | 'svg' | 'dxf' | 'fold' | 'json';
  readonly content: Blob;
  /** Letters that this file cannot show; said before it is printed. */
  readonly lost?: readonly string[];
}

/** Everything that can be put on paper or into a file; each loads what it needs when it is first asked. */
export interface Printer {
  readonly benchCard: (
    recipe: Recipe,
    paper: PrinterPaper,
    edition?: 'compact' | 'roomy',
  ) => Promise<MadeFile>;
  readonly template: (recipe: Recipe, paper: PrinterPaper) => Promise<MadeFile>;
  /** The flat net for other programs, all of it or one piece: FOLD 1.2, SVG or DXF in millimeters, layers named for what is done. */
  readonly netFile: (
    recipe: Recipe,
    format: 'fold' | 'svg' | 'dxf',
    pieceId: string | null,
  ) => Promise<MadeFile>;
  /** The style of a box that brings its own, as the file it was read from. */
  readonly styleFile: (recipe: Recipe) => Promise<MadeFile>;
  /** The tutorial to hand out, on paper or as one page for a phone. */
  readonly handout: (recipe: Recipe, paper: PrinterPaper) => Promise<MadeFile>;
  readonly handoutPage: (recipe: Recipe) => Promise<MadeFile>;
  /** The flat card, outside up, for decorating; with one of the recipe's dressings in place. */
  readonly decorateMap: (recipe: Recipe, dressingId: string | null, paper: PrinterPaper) => Promise<MadeFile>;
  /** Pick list and labels of a class; an event that is not for kits has none. */
  readonly kitLabels: (plan: EventPlan, paper: PrinterPaper) => Promise<MadeFile>;
  /** A card or label with the name of every guest, and what goes to which table. */
  readonly nameCards: (event: FavorEvent, paper: PrinterPaper) => Promise<MadeFile>;
  readonly tableList: (event: FavorEvent, paper: PrinterPaper) => Promise<MadeFile>;
  /** Timetable of a class and what to bring. */
  readonly lessonPlan: (plan: EventPlan, paper: PrinterPaper) => Promise<MadeFile>;
  /** Several events: one shopping list, what is promised to which, and the working days. */
  readonly season: (season: SeasonPlan, paper: PrinterPaper) => Promise<MadeFile>;
  readonly cuttingSheets: (plan: EventPlan, paper: PrinterPaper) => Promise<MadeFile>;
  /** A nested sheet at its own true size. */
  readonly nestedSheet: (sheet: NestedSheet, code: string) => Promise<MadeFile>;
  readonly shoppingList: (plan: EventPlan, paper: PrinterPaper) => Promise<MadeFile>;
  readonly shoppingTable: (plan: EventPlan) => Promise<MadeFile>;
  readonly runSheet: (plan: EventPlan, paper: PrinterPaper) => Promise<MadeFile>;
  /** The timetable of an event that has a date. */
  readonly calendar: (plan: EventPlan) => Promise<MadeFile>;
}

const PrinterContext = createContext<Printer | null>(null);
export const PrinterProvider = PrinterContext.Provider;

export function usePrinter(): Printer {
  const printer = use(PrinterContext);
  if (printer === null) throw new Error('no printer is provided above this part');
  return printer;
}

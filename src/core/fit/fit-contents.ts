import type { Contents } from '../rows/contents';
import type { BoxStyle } from '../styles/language/types';
import type { Ticks } from '../units';
import { arrangeContents } from './arrange';
import { type EasyMarkQuestion, type EasyRow, findEasyMarks } from './easy-marks';
import { clearanceOf, requiredInside } from './required-inside';
import type { Arrangement } from './types';

/** An arrangement and the inside it needs, air included. */
export interface NeededRoom {
  readonly arrangement: Arrangement;
  readonly inside: readonly [Ticks, Ticks, Ticks];
}

/** Sizes of one style for one arrangement, given as its place in the list. */
export interface FitRow extends EasyRow {
  readonly styleId: string;
  readonly arrangement: number;
}

export type FitQuestion = Omit<EasyMarkQuestion, 'style' | 'need' | 'held' | 'heldOptions'> & {
  readonly contents: Contents;
  readonly styles: readonly BoxStyle[];
  readonly held: Readonly<Record<string, Ticks>>;
};

/** The arrangements of the contents, smallest first, with the inside each needs. */
export function neededRooms(contents: Contents): NeededRoom[] {
  const { length } = clearanceOf(contents);
  return arrangeContents(contents).map((arrangement) => ({
    arrangement,
    inside: requiredInside(arrangement, length),
  }));
}

const ROOMS_TRIED = 3; // source: our choice: the smallest few; each costs a search a style
const ROWS_A_SEARCH = 6; // source: our choice: what a maker compares

/** Easy-mark sizes for the smallest arrangements in every style asked, easiest first. Holds only the sizes a style has. */
export function fitContents(
  question: FitQuestion,
  rooms: readonly NeededRoom[] = neededRooms(question.contents),
): FitRow[] {
  return question.styles
    .flatMap((style) =>
      rooms.slice(0, ROOMS_TRIED).flatMap(({ inside }, arrangement) =>
        findEasyMarks({
          ...question,
          style,
          need: inside,
          held: heldOf(style, question.held),
          heldOptions: {},
        })
          .filter(({ sheetsPerBox }) => sheetsPerBox !== null)
          .slice(0, ROWS_A_SEARCH)
          .map((row): FitRow => ({ ...row, styleId: style.id, arrangement })),
      ),
    )
    .sort(
      (a, b) =>
        a.roughness - b.roughness || (a.sheetsPerBox ?? 0) - (b.sheetsPerBox ?? 0) || a.excess - b.excess,
    );
}

const heldOf = (style: BoxStyle, held: Readonly<Record<string, Ticks>>) =>
  Object.fromEntries(Object.entries(held).filter(([name]) => Object.hasOwn(style.symbols, name)));

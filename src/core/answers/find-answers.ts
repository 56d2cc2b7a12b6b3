import { neededRooms, type YieldMemo } from '../fit';
import type { SheetPlanner } from '../plan';
import { type BoxStyle, STYLES } from '../styles';
import { boxesThatHold, compareKeys } from './boxes-that-hold';
import type { Answer, AnswersQuestion, Rank, StyleAnswers } from './types';
import { weighBox } from './weigh-box';

/** Every so many-th style, for several who look at once. */
export interface Part {
  readonly at: number;
  readonly of: number;
}

/**
 * Boxes that hold the contents, style by style, so that whoever runs it can show what there is, or stop, between two of them. Nothing
 * comes where the contents cannot be arranged.
 */
export function* findAnswers(
  question: AnswersQuestion,
  planSheets?: SheetPlanner,
  styles: readonly BoxStyle[] = STYLES,
  part: Part = { at: 0, of: 1 },
): Generator<StyleAnswers> {
  const rooms = neededRooms(question.contents);
  const memo: YieldMemo = new Map();
  for (const style of styles.filter((_, at) => at % part.of === part.at)) {
    const { boxes, none } = boxesThatHold(style, rooms, question, memo);
    const answers = boxes.flatMap((box) => weighBox(box, rooms, question, planSheets) ?? []);
    yield {
      styleId: style.id,
      answers,
      none: answers.length > 0 ? null : (none ?? 'sheet'),
      of: styles.length,
    };
  }
}

/**
 * One answer a style, best first by what matters to the maker; styles alike stand in the order of the registry, those of the maker's own after
 * them by id, whoever found them first.
 */
export function rankAnswers(found: readonly StyleAnswers[], rank: Rank): readonly Answer[] {
  const place = (styleId: string) => {
    const at = STYLES.findIndex(({ id }) => id === styleId);
    return at === -1 ? STYLES.length : at;
  };
  return found
    .toSorted((a, b) => place(a.styleId) - place(b.styleId) || compareTexts(a.styleId, b.styleId))
    .flatMap(({ answers }) => answers.toSorted((a, b) => compareKeys(a.keys[rank], b.keys[rank])).slice(0, 1))
    .toSorted((a, b) => compareKeys(a.keys[rank], b.keys[rank]));
}

const compareTexts = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

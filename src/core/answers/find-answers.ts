import { type NeededRoom, neededRooms } from '../fit';
import type { SheetPlanner } from '../plan';
import { type BoxStyle, STYLES } from '../styles';
import { boxesThatHold, compareKeys } from './boxes-that-hold';
import type { Answer, AnswersQuestion, Rank, StyleAnswers } from './types';
import { weighBox } from './weigh-box';

/**
 * Boxes that hold the contents, style by style, so that whoever runs it can show what there is, or stop, between two of them. Nothing
 * comes where the contents cannot be arranged.
 */
export function* findAnswers(
  question: AnswersQuestion,
  planSheets?: SheetPlanner,
  styles: readonly BoxStyle[] = STYLES,
  rooms: readonly NeededRoom[] = neededRooms(question.contents),
): Generator<StyleAnswers> {
  for (const [at, style] of styles.entries()) {
    const { boxes, none } = boxesThatHold(style, rooms, question);
    const answers = boxes.flatMap((box) => weighBox(box, rooms, question, planSheets) ?? []);
    yield {
      styleId: style.id,
      answers,
      none: answers.length > 0 ? null : (none ?? 'sheet'),
      done: at + 1,
      of: styles.length,
    };
  }
}

/** One answer a style, best first by what matters to the maker; styles alike stand in the order they were found. */
export function rankAnswers(found: readonly StyleAnswers[], rank: Rank): readonly Answer[] {
  return found
    .flatMap(({ answers }) => answers.toSorted((a, b) => compareKeys(a.keys[rank], b.keys[rank])).slice(0, 1))
    .toSorted((a, b) => compareKeys(a.keys[rank], b.keys[rank]));
}

import { findAnswers, type Part, type StyleAnswers } from '../core/answers';
import type { SheetPlanner } from '../core/plan';
import { bringOwnStyle } from '../core/style-file/own-style';
import { STYLES } from '../core/styles';
import type { AnswersAsk } from './fit-messages';

/** The boxes for four answers, our styles first, then those of the maker's own that travel with the question. */
export const searchAnswers = (
  { ownStyles = [], ...question }: AnswersAsk,
  planSheets?: SheetPlanner,
  part?: Part,
): Generator<StyleAnswers> =>
  findAnswers(
    question,
    planSheets,
    [...STYLES, ...ownStyles.flatMap((text) => bringOwnStyle(text) ?? [])],
    part,
  );

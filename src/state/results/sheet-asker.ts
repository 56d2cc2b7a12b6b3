import { createContext } from 'react';
import type { SheetAnswer, SheetQuestion } from '../../worker/plan-messages';

/** Answers a question about one paper, elsewhere if it can; tells every answer on the way. Null: it was withdrawn. */
export type SheetAsker = (
  question: SheetQuestion,
  signal: AbortSignal,
  tell?: (answer: SheetAnswer) => void,
) => Promise<SheetAnswer | null>;

/** Without a worker: here and now. */
export const askHere: SheetAsker = async (question, signal) => {
  const { countOnSheet, planSheets } = await import('../../core/yield');
  if (signal.aborted) return null;
  if ('cut' in question) {
    const { parts, paper, tool } = question.cut;
    return { cut: planSheets(parts, paper, tool), done: true };
  }
  const { part, paper, tool } = question.count;
  return { count: countOnSheet(part, paper, tool), done: true };
};

export const SheetAskerContext = createContext<SheetAsker>(askHere);

import { findEasyMarks, whatWouldFit } from '../core/fit';
import { styleById } from '../core/styles';
import type { MarksAsk, StyleRows } from './fit-messages';

/** The search style by style, so that whoever runs it can show what there is, or stop, between two of them. */
export function* searchStyles(ask: MarksAsk): Generator<StyleRows> {
  const of = ask.styleIds.length;
  for (const [i, styleId] of ask.styleIds.entries()) {
    const style = styleById(styleId);
    const own = i === 0 && style !== undefined;
    const question = style && {
      ...ask,
      style,
      held: own ? ask.held : {},
      heldOptions: own ? ask.heldOptions : {},
    };
    const rows = question ? findEasyMarks(question) : [];
    const none = rows.every(({ sheetsPerBox }) => sheetsPerBox === null);
    const waysOut = question && own && none ? whatWouldFit(question, rows, ask.otherPapers) : [];
    yield { styleId, rows, waysOut, done: i + 1, of };
  }
}

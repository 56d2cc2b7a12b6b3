import { render } from '@testing-library/react';
import type { ReactNode } from 'react';
import { english } from '../../src/app/messages';
import { type Ruler, USUAL_FINEST } from '../../src/core/units';
import { RulerContext } from '../../src/ui/measure';
import { WordsProvider } from '../../src/ui/words';

export const INCHES: Ruler = { unit: 'in', finest: USUAL_FINEST.in };
export const MILLIMETRES: Ruler = { unit: 'mm', finest: USUAL_FINEST.mm };

/** Draws a part with the app's words and a maker's ruler round it. */
export const drawPart = (part: ReactNode, ruler: Ruler = INCHES) =>
  render(part, {
    wrapper: ({ children }) => (
      <WordsProvider value={english}>
        <RulerContext value={ruler}>{children}</RulerContext>
      </WordsProvider>
    ),
  });

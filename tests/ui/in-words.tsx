import { render } from '@testing-library/react';
import type { ReactNode } from 'react';
import { type Ruler, USUAL_FINEST } from '../../src/core/units';
import { RulerContext } from '../../src/ui/fields/measure';
import { PageWordsProvider, WordsProvider } from '../../src/ui/words';
import { englishPages } from '../../src/ui/words/english/pages';

export const INCHES: Ruler = { unit: 'in', finest: USUAL_FINEST.in };
export const MILLIMETRES: Ruler = { unit: 'mm', finest: USUAL_FINEST.mm };

/** Draws a part with the app's words and a maker's ruler round it. */
export const drawPart = (part: ReactNode, ruler: Ruler = INCHES) =>
  render(part, {
    wrapper: ({ children }) => (
      <WordsProvider value={englishPages}>
        <PageWordsProvider value={englishPages}>
          <RulerContext value={ruler}>{children}</RulerContext>
        </PageWordsProvider>
      </WordsProvider>
    ),
  });

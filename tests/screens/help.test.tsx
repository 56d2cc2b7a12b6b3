import { render, screen, within } from '@testing-library/react';
import { MemoryRouter } from 'react-router';
import { expect, test } from 'vitest';
import { HelpPage } from '../../src/app/help-page';
import { PICTURED_WORDS } from '../../src/core/draw/strokes/word-pictures';
import { KEYS } from '../../src/ui/frame/keys';
import { WordsProvider } from '../../src/ui/words';
import { english } from '../../src/ui/words/english';

Element.prototype.scrollIntoView = () => undefined;

test('a word that somebody came for has the focus, its meaning and a picture that is told in words', () => {
  render(
    <WordsProvider value={english}>
      <MemoryRouter initialEntries={['/help?word=score']}>
        <HelpPage />
      </MemoryRouter>
    </WordsProvider>,
  );
  const sought = screen.getByText('Score', { selector: 'dt' }).parentElement!;
  expect(sought).toHaveFocus();
  expect(within(sought).getByText(/^A crease pressed into cardstock/)).toBeVisible();
  const pictures = document.querySelectorAll('svg.word-picture');
  expect(pictures).toHaveLength(PICTURED_WORDS.length);
  for (const picture of pictures) {
    const told = (by: string) => document.getElementById(picture.getAttribute(by) ?? '')?.textContent;
    expect(told('aria-labelledby')).toMatch(/./);
    expect(told('aria-describedby')).toMatch(/.\.$/);
  }
  // In the order of the alphabet.
  const words = [...document.querySelectorAll('dt')].flatMap((term) =>
    term.querySelector('kbd') ? [] : term.textContent,
  );
  expect(words).toEqual([...words].sort((a, b) => a.localeCompare(b, 'en')));
  // And every key of the table.
  const keys = Object.values(KEYS).flatMap((acts) => Object.values<readonly string[]>(acts).flat());
  expect(document.querySelectorAll('kbd')).toHaveLength(keys.length);
});

import { act, fireEvent, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { openDraft } from '../../src/core/draft/edit-style';
import { emptyBase } from '../../src/core/draft/first-draft';
import { looseEnds, type StyleProof } from '../../src/core/proof';
import { StyleTrial } from '../../src/screens/style/style-trial';
import { DraftingWordsProvider } from '../../src/ui/words/drafting-words';
import { draftingMessages } from '../../src/ui/words/english/drafting';
import { drawn, TRAY } from '../core/draft/drawn-styles';
import { drawPart } from '../ui/in-words';
import { HeldWorker } from './held-worker';

beforeEach(() => vi.stubGlobal('Worker', HeldWorker));
afterEach(() => vi.unstubAllGlobals());

const tried = (text: string) =>
  drawPart(
    <DraftingWordsProvider value={draftingMessages}>
      <StyleTrial text={text} />
    </DraftingWordsProvider>,
  );
/** What stands there once a trial of this style found nothing; the worker is played. */
function saidOfSound(text: string): readonly string[] {
  const begun: HeldWorker<unknown>[] = [];
  vi.stubGlobal(
    'Worker',
    class extends HeldWorker<unknown> {
      constructor() {
        super();
        begun.push(this);
      }
    },
  );
  const page = tried(text);
  press('Try 50 sizes');
  const open = openDraft(text);
  const loose = open.ok ? looseEnds(open.style) : [];
  act(() => begun[0]?.hear({ proof: { faults: [], tried: 50 } satisfies Partial<StyleProof>, loose }));
  const said = [screen.getByRole('status'), ...screen.queryAllByText(/^No tab/)].map(
    (each) => each.textContent,
  );
  page.unmount();
  return said;
}
function press(name: string): void {
  act(() => void fireEvent.click(screen.getByRole('button', { name })));
}

test('a trial that its maker stops is said to be stopped, and the button begins it again', () => {
  tried(emptyBase('floor', 'Mine'));
  press('Try 50 sizes');
  expect(screen.getByRole('progressbar')).toBeTruthy();
  press('Stop');
  expect(screen.queryByRole('progressbar')).toBeNull();
  expect(screen.getByRole('status').textContent).toBe('You stopped it before every size was tried.');
  press('Try 50 sizes again');
  expect(screen.getByRole('progressbar')).toBeTruthy();
});

test('a corner that no tab holds is told beside the sizes at which the box folds well', () => {
  const floor = emptyBase('floor', 'Mine');
  expect(saidOfSound(drawn(floor, TRAY))).toEqual(['It folds well at all 50 sizes we tried.']);
  expect(saidOfSound(drawn(floor, TRAY.slice(0, -1)))).toEqual([
    'It folds well at all 50 sizes we tried. Still check this before you cut a batch:',
    'No tab holds the right and back panels together where they meet.',
  ]);
});

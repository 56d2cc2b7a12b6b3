import { render, screen } from '@testing-library/react';
import { StrictMode, Suspense } from 'react';
import { beforeEach, expect, it, vi } from 'vitest';
import { Boundary } from '../../src/app/boundary';
import { fetchedPage } from '../../src/app/fetched-page';

// React prints what a boundary caught; here that is what is asked for.
beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
});

it('tells of a page that does not come, asks once a turn, and shows it when it comes', async () => {
  let asked = 0;
  let lost = true;
  const { Page } = fetchedPage(async () => {
    asked += 1;
    await Promise.resolve();
    if (lost) throw new Error('did not come');
    return () => <p>here</p>;
  });
  const at = (address: string) => (
    <StrictMode>
      <Boundary resetBy={address} instead={({ message }) => <p>{message}</p>}>
        <Suspense fallback={null}>
          <Page />
        </Suspense>
      </Boundary>
    </StrictMode>
  );
  const { rerender } = render(at('one'));
  expect(await screen.findByText('did not come')).toBeInTheDocument();
  expect(asked).toBe(1);
  rerender(at('two'));
  await vi.waitFor(() => expect(asked).toBe(2));
  expect(await screen.findByText('did not come')).toBeInTheDocument();
  lost = false;
  rerender(at('three'));
  expect(await screen.findByText('here')).toBeInTheDocument();
  expect(asked).toBe(3);
});

import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { PrintActs } from '../../src/ui/frame/print-acts';
import { drawPart } from './in-words';

test('a print that loses letters names them and opens only when she says so', async () => {
  const open = vi.spyOn(window, 'open').mockReturnValue(window);
  URL.createObjectURL = () => 'blob:made';
  const made = { name: 'card', ending: 'pdf', content: new Blob(['%PDF']) } as const;
  drawPart(
    <PrintActs
      acts={[
        { label: 'Lossy', make: () => Promise.resolve({ ...made, lost: ['结', '婚'] }) },
        { label: 'Whole', make: () => Promise.resolve({ ...made, lost: [] }) },
      ]}
    />,
  );
  await userEvent.click(screen.getByRole('button', { name: 'Lossy' }));
  expect(screen.getByRole('status')).toHaveTextContent('结 婚');
  expect(open).not.toHaveBeenCalled();
  await userEvent.click(screen.getByRole('button', { name: 'Print anyway' }));
  expect(open).toHaveBeenCalledTimes(1);
  expect(screen.queryByRole('button', { name: 'Print anyway' })).toBeNull();
  await userEvent.click(screen.getByRole('button', { name: 'Whole' }));
  expect(open).toHaveBeenCalledTimes(2);
  open.mockRestore();
});

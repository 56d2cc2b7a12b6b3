import type { Page } from '@playwright/test';

/** The bytes of the next file the page makes, whether it opens in a tab or is downloaded. */
export async function madeFile(page: Page, ask: () => Promise<void>): Promise<Uint8Array> {
  const made = page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const create = URL.createObjectURL.bind(URL);
        URL.createObjectURL = (file: Blob) => {
          const reader = new FileReader();
          reader.onload = () => resolve((reader.result as string).replace(/^.*,/, ''));
          reader.readAsDataURL(file);
          URL.createObjectURL = create;
          return create(file);
        };
      }),
  );
  await ask();
  return Uint8Array.from(Buffer.from(await made, 'base64'));
}

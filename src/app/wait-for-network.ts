/** Resolves after so many milliseconds, or when the network comes back. */
export const waitForNetwork = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    const done = () => {
      clearTimeout(timer);
      removeEventListener('online', done);
      resolve();
    };
    const timer = setTimeout(done, milliseconds);
    addEventListener('online', done);
  });

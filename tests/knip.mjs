/** What counts as used: what the app, the desk, its workers and the tests reach. `!` marks what ships. */
export default {
  entry: [
    'src/app/main.tsx!',
    'src/desk/main.ts!',
    'src/share-server/main.ts!',
    'src/core/index.ts!',
    'src/core/package/pack.mjs',
    'tests/styles/try-style.ts',
    'src/worker/*-worker.ts!',
    'tests/**/*.test.{ts,tsx}',
    'tests/browser/*.{spec.ts,mjs}',
    'tests/browser/playwright.config.ts',
    'tests/bench/*.ts',
    'tests/share-server/{two-servers,behind-proxy}.ts',
    'tests/{bundle-budget,lint-and-types,run}.mjs',
    'tests/eslint.config.js',
    'public/fonts/make-fonts.mjs',
  ],
  project: ['src/**/*.{ts,tsx}!', 'shared/**/*.ts!', 'tests/**/*.{ts,tsx,mjs,js}'],
  ignoreBinaries: ['apt-get'],
  // Taken by name, not by import: the letters' source and the tests' browser.
  ignoreDependencies: ['@expo-google-fonts/inter', '@sparticuz/chromium'],
};

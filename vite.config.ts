import react from '@vitejs/plugin-react';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { CONTENT_POLICY, PAGE_HEADERS } from './src/share-server/page-headers.ts';

/** jsPDF's ways to draw web pages and pictures, which no print here uses. */
const LEFT_OUT = ['html2canvas', 'canvg', 'dompurify'];

export default defineConfig(({ mode }) => ({
  root: 'src/app',
  publicDir: '../../public',
  base: './',
  plugins: [
    react(),
    VitePWA({
      // A new version waits until the maker takes it between two saves; nothing is swapped under her hands.
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Crease & Count',
        short_name: 'Crease & Count',
        description: 'Folded favor boxes in batches: net, bench card, sheets and shopping list.',
        start_url: './',
        display: 'standalone',
        background_color: '#e6e3dc',
        theme_color: '#e6e3dc',
        categories: ['productivity', 'lifestyle'],
        icons: [
          { src: './icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: './icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: './icon-512-maskable.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: './mark.svg', sizes: 'any', type: 'image/svg+xml' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,woff2,ttf,wasm,json}'],
        // The general solver is fetched when a mix is first asked for; without it one is found more roughly. Sharing needs a network anyway.
        globIgnores: ['tour/**', '**/highs-*.wasm', '**/browser-sharing-*.js'],
        maximumFileSizeToCacheInBytes: 8_000_000,
        clientsClaim: true,
        // In one file: a worker under Trusted Types may not fetch a second script.
        inlineWorkboxRuntime: true,
        cleanupOutdatedCaches: true,
      },
    }),
    {
      name: 'left-out',
      enforce: 'pre',
      apply: 'build',
      resolveId: (id) => (LEFT_OUT.includes(id) ? '\0left-out' : null),
      load: (id) => (id === '\0left-out' ? 'export default {};' : null),
    },
    {
      name: 'content-security-policy',
      apply: 'build',
      transformIndexHtml: () => [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_POLICY },
          injectTo: 'head-prepend',
        },
      ],
    },
  ],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist',
    emptyOutDir: true,
    target: 'es2022',
    // One sheet of styles: a page waits for its script alone.
    cssCodeSplit: false,
    rolldownOptions: {
      // The core is pure, and a test holds it to that: what nobody imports from one of its rooms need not come with the room.
      treeshake: { moduleSideEffects: [{ test: /\/src\/core\/(?!rows\/jitless)/, sideEffects: false }] },
      output: {
        // Many small files cost a slow machine more than the script in them: what the first page imports is one file, what pages share is another.
        codeSplitting: {
          groups: [
            { name: 'first', tags: ['$initial'], priority: 2 },
            {
              name: 'workbook',
              test: /\/src\/(?:app|screens|state|ui)\/|lucide-react/,
              maxModuleSize: 4000,
              minShareCount: 2,
              priority: 1,
            },
          ],
        },
      },
    },
  },
  preview: { headers: PAGE_HEADERS },
  test: {
    root: '.',
    // This ends what hangs. A machine may stand still for half a minute, and some tests draw the whole app over and over.
    testTimeout: 60_000,
    // Every core: the usual is one fewer, which leaves a small machine with one.
    maxWorkers: '100%',
    // `npm run fuzz`: a million of each in place of ten thousand, two thousand histories of five tabs, and solids at 200 sizes a style.
    ...(mode === 'fuzz' && { env: { FUZZ_TRIES: '1000000', FIVE_TABS: '2000', SOLID_SIZES: '200' } }),
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          environment: 'node',
          // The core is pure: its modules are read once and run warm, which takes a third off the run.
          isolate: false,
          include: ['tests/**/*.test.ts'],
          setupFiles: ['tests/setup/console-is-failure.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'screens',
          environment: 'jsdom',
          // A page of its own and all modules read anew would be half of what a file takes; the setup clears away what a file leaves.
          isolate: false,
          include: ['tests/**/*.test.tsx'],
          exclude: ['tests/**/*.alone.test.tsx'],
          setupFiles: ['tests/setup/console-is-failure.ts', 'tests/setup/dom.ts'],
        },
      },
      {
        extends: true,
        test: {
          // What puts another module in the place of one of ours, or counts what a module remembers, needs modules that nobody has read yet.
          name: 'alone',
          environment: 'jsdom',
          include: ['tests/**/*.alone.test.tsx'],
          setupFiles: ['tests/setup/console-is-failure.ts', 'tests/setup/dom.ts'],
        },
      },
    ],
  },
}));

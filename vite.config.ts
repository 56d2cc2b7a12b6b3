import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

/** What the built page may load: only itself. `frame-ancestors` works in a header alone. */
const csp = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
].join('; ');

/** jsPDF's ways to draw web pages and pictures, which no print here uses. */
const LEFT_OUT = ['html2canvas', 'canvg', 'dompurify'];

export default defineConfig({
  root: 'src/app',
  publicDir: '../../public',
  base: './',
  plugins: [
    react(),
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
          attrs: { 'http-equiv': 'Content-Security-Policy', content: csp },
          injectTo: 'head-prepend',
        },
      ],
    },
  ],
  worker: { format: 'es' },
  build: { outDir: '../../dist', emptyOutDir: true, target: 'es2022' },
  preview: {
    headers: {
      'Content-Security-Policy': `${csp}; frame-ancestors 'none'`,
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
    },
  },
  test: {
    root: '.',
    testTimeout: 30_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          setupFiles: ['tests/setup/console-is-failure.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'screens',
          environment: 'jsdom',
          include: ['tests/**/*.test.tsx'],
          setupFiles: ['tests/setup/console-is-failure.ts', 'tests/setup/dom.ts'],
        },
      },
    ],
  },
});

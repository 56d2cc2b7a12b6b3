import { fileURLToPath } from 'node:url';
import { defineConfig } from 'eslint/config';
import hooks from 'eslint-plugin-react-hooks';
import { configs } from 'typescript-eslint';

const root = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig(
  { basePath: root, ignores: ['**/*.js', '**/*.mjs', 'dist/**', 'node_modules/**'] },
  {
    basePath: root,
    files: ['**/*.{ts,tsx}'],
    extends: [configs.strictTypeChecked],
    // One program for all files: a third of the time of a service that opens them one by one.
    languageOptions: { parserOptions: { project: './tsconfig.json', tsconfigRootDir: root } },
    rules: {
      // A number in a sentence is fine; lengths go through printLength, which a reviewer sees.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      // `row[i]!` inside a loop whose bound is the row's length is the honest form under noUncheckedIndexedAccess.
      '@typescript-eslint/no-non-null-assertion': 'off',
      // `while (true)` with a return inside reads better than a flag.
      '@typescript-eslint/no-unnecessary-condition': [
        'error',
        { allowConstantLoopConditions: 'only-allowed-literals' },
      ],
      // Ticks are a branded number; minus one of them is a number.
      '@typescript-eslint/no-unsafe-unary-minus': 'off',
      // The compiler already refuses unused names, and knows about `_`.
      '@typescript-eslint/no-unused-vars': 'off',
      // Slow, and there is nothing here for them to see: exact pins, no enums, no classes filled with `any`.
      '@typescript-eslint/no-deprecated': 'off',
      '@typescript-eslint/no-unsafe-enum-assignment': 'off',
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
    },
  },
  {
    basePath: root,
    files: ['tests/**'],
    rules: {
      // What was printed is read back as JSON and compared: a wrong guess of its shape fails the test itself.
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
      // A stand-in keeps the promise of what it stands for.
      '@typescript-eslint/require-await': 'off',
    },
  },
  {
    basePath: root,
    files: ['src/{app,screens,ui,state}/**/*.{ts,tsx}'],
    extends: [hooks.configs.flat.recommended],
  },
);

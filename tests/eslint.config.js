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
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: root } },
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
      // The compiler already refuses unused names, and knows about `_`.
      '@typescript-eslint/no-unused-vars': 'off',
    },
  },
  {
    basePath: root,
    files: ['**/*.{ts,tsx}'],
    ignores: ['tests/browser/**'],
    extends: [hooks.configs.flat.recommended],
  },
);

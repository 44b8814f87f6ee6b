import tseslint from 'typescript-eslint';
import solid from 'eslint-plugin-solid/configs/typescript';
import globals from 'globals';
import house from './build/words-rule.js';

export default tseslint.config(
  { ignores: ['.stryker-tmp', 'reports', 'dist', 'dist-*', 'node_modules', 'test-results', 'shots'] },
  ...tseslint.configs.strictTypeChecked,
  ...tseslint.configs.stylisticTypeChecked,
  {
    languageOptions: {
      globals: globals.browser,
      parserOptions: {
        projectService: {
          allowDefaultProject: [
            '*.js',
            '*.cjs',
            'build/*.js',
            'test/*.mjs',
            'test/browser/serve.mjs',
            'test/bench/*.mjs',
            'test/mutation/*.mjs',
          ],
        },
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      'max-lines': ['error', { max: 300, skipBlankLines: true, skipComments: true }],
      'no-eval': 'error',
      'no-new-func': 'error',
      'no-restricted-syntax': [
        'error',
        { selector: "CallExpression[callee.property.name='only']", message: 'A lone test hides the others.' },
      ],
    },
  },
  {
    files: ['src/**/*.tsx', 'src/ui/**/*.ts', 'src/app/**/*.ts'],
    ...solid,
    rules: {
      ...solid.rules,
      'solid/reactivity': 'error',
      'solid/no-destructure': 'error',
      'solid/no-innerhtml': 'off',
    },
  },
  {
    files: ['src/**/*.{ts,tsx}'],
    ignores: ['**/words/**', '**/*.test.ts', '**/outside*.ts'],
    plugins: { house },
    rules: { 'house/no-words-in-logic': 'error' },
  },
  {
    // A list of sentences is looked up, not read from end to end.
    files: ['src/**/words/**/*.ts'],
    rules: { 'max-lines': ['error', { max: 420, skipBlankLines: true, skipComments: true }] },
  },
  {
    files: ['test/**/*.ts', 'src/**/*.test.ts'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off', 'max-lines': 'off' },
  },
  {
    files: ['**/*.js', '**/*.cjs', '**/*.mjs'],
    ...tseslint.configs.disableTypeChecked,
    languageOptions: { ...tseslint.configs.disableTypeChecked.languageOptions, globals: globals.node },
  },
);

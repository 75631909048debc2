import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';

/** What the model must never reach for: it runs the same in Node, in a worker and in a test. */
const outsideSim = {
  patterns: [
    {
      group: ['svelte', 'svelte/*', 'd3', 'd3-*', 'comlink', 'idb', 'node:*'],
      message: 'src/sim is pure: no DOM, Svelte, D3, workers or Node.',
    },
    {
      group: ['**/design/**', '**/app/**', '**/charts/**', '**/workers/**', '**/cli/**'],
      message: 'Imports run one way: everything may use src/sim, src/sim uses nothing above it.',
    },
  ],
};
const outsideCharts = {
  patterns: [
    { group: ['**/app/**', '**/workers/**', '**/cli/**'], message: 'Charts draw what they are given.' },
    { group: ['**/sim/**'], allowTypeImports: true, message: 'Charts take only types from src/sim.' },
  ],
};

export default ts.config(
  { ignores: ['.bench/', 'dist', 'node_modules', '.shots', 'bench/baseline'] },
  js.configs.recommended,
  ...ts.configs.strict,
  ...svelte.configs.recommended,
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/consistent-type-imports': 'error',
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'Answers must repeat: use a seeded generator.' },
      ],
      eqeqeq: 'error',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser } },
    rules: { 'svelte/require-each-key': 'error' },
  },
  {
    files: ['src/sim/**'],
    rules: {
      '@typescript-eslint/no-restricted-imports': ['error', outsideSim],
      'no-restricted-globals': [
        'error',
        'window',
        'document',
        'self',
        'navigator',
        'performance',
        'Date',
        'process',
        'setTimeout',
        'console',
      ],
    },
  },
  {
    files: ['src/charts/**'],
    rules: { '@typescript-eslint/no-restricted-imports': ['error', outsideCharts] },
  },
);

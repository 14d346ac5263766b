import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import js from '@eslint/js';
import astro from 'eslint-plugin-astro';
import svelte from 'eslint-plugin-svelte';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';
import { awaited } from './tests/layers/awaited.ts';
import { importRules } from './tests/layers/import-rules.ts';

const awaitedAsWritten = createHash('sha256')
  .update(readFileSync(new URL('./tests/layers/awaited.ts', import.meta.url)))
  .digest('hex');

const clockAndChance = {
  object: 'Math',
  property: 'random',
  message: 'Chance comes from a seed that the address carries, so that a page can be shown again.',
};

/** @param {string[]} names @param {string} message */
const globals = (names, message) => names.map((name) => ({ name, message }));

const outsideWorld = globals(
  ['console', 'fetch', 'XMLHttpRequest', 'WebSocket', 'EventSource'],
  'Pages speak to nobody: no console, no request after the first visit.',
);

const platform = globals(
  [
    'window',
    'document',
    'navigator',
    'location',
    'history',
    'localStorage',
    'sessionStorage',
    'self',
    'globalThis',
  ].concat(
    ['postMessage', 'requestAnimationFrame', 'process', 'Buffer', 'performance', 'Date', 'Temporal', 'crypto'],
    ['setTimeout', 'setInterval', 'queueMicrotask', 'Intl'],
  ),
  'The core is arithmetic: no DOM, no platform, no clock, no chance.',
);

const tests = ['**/*.test.ts', 'tests/**'];

const houseSyntax = [
  {
    selector: [
      'FunctionDeclaration[id.name=/^(calc(ulate)?|process|getData)([A-Z]|$)/]',
      'VariableDeclarator[init.type=/Function/][id.name=/^(calc(ulate)?|process|getData)([A-Z]|$)/]',
      ':matches(MethodDefinition, PropertyDefinition)[key.name=/^(calc(ulate)?|process|getData)([A-Z]|$)/]',
    ].join(', '),
    message: 'Name a function for what it returns: effectiveFNumber, hyperfocalDistance.',
  },
  { selector: 'ExportDefaultDeclaration', message: 'Named exports only, so that a thing has one name everywhere.' },
];

const barrel = {
  selector: 'ExportAllDeclaration, ExportNamedDeclaration[source.type="Literal"]',
  message: 'No barrels below core/index.ts: import from the file that holds the thing.',
};

/** What Svelte has for these is in a file that all pages share: one place that uses it is 0.3 to 1 KB for every reader. */
const heavySvelte = [
  {
    selector: 'SvelteSpreadAttribute',
    message: 'Every page would carry what spreads are for: name what is handed on, or hand on one object.',
  },
  {
    selector:
      'VariableDeclarator[init.callee.name="$props"] > :matches(Identifier, ObjectPattern:has(> RestElement)).id',
    message: 'Every page would carry what gathers the rest: name the props, or take them as one.',
  },
  {
    selector: 'SvelteDirective[kind=/^(Binding)$/][key.name.name=/^(value|checked|group|open|files)$/]',
    message: 'Every page would carry bindings of fields: set the value and listen.',
  },
  { selector: 'SvelteDirective[kind="Action"]', message: 'Every page would carry actions: attach a function.' },
  { selector: 'SvelteDirective[kind="Class"]', message: 'Write the class as a value.' },
  {
    selector: 'SvelteStyleDirective, SvelteAttribute[key.name="style"]:has(SvelteMustacheTag)',
    message: 'Every page would carry styles with values: attach `styled(…)`.',
  },
  {
    selector: 'SvelteElement[name.name="select"] > SvelteStartTag > SvelteAttribute[key.name="value"]',
    message: 'Every page would carry what keeps a list at a value: say `selected` on its options.',
  },
];

const skippedTest = {
  selector: 'MemberExpression[object.name=/^(it|test|describe)$/][property.name=/^(only|skip|todo|fixme|fails)$/]',
  message: 'A test that does not run cannot fail.',
};

const buildKnowledge = { selector: 'MetaProperty', message: 'The core knows no build: it runs as it stands.' };

export default defineConfig([
  {
    ignores: [
      'dist/',
      '.astro/',
      'node_modules/',
      'test-results/',
      'playwright-report/',
      'coverage/',
      '.mutation/',
      '.svelte-check/',
    ],
  },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  js.configs.recommended,
  tseslint.configs.recommended,
  svelte.configs.recommended,
  astro.configs['flat/recommended'],
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: tseslint.parser, extraFileExtensions: ['.svelte'] } },
  },
  {
    rules: {
      // The types say what is defined, and in templates they know more than the linter.
      'no-undef': 'off',
      eqeqeq: 'error',
      'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx'], location: 'anywhere' }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-import-type-side-effects': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_$' }],
    },
  },
  {
    files: ['**/*.svelte'],
    rules: {
      // What is derived reads its sources later than where it stands.
      'no-useless-assignment': 'off',
      // A space between two pieces of text has to be written as one.
      'svelte/no-useless-mustaches': 'off',
    },
  },
  {
    files: ['{core,site,lessons}/**/*.{ts,svelte,astro}'],
    rules: { 'no-restricted-syntax': ['error', ...houseSyntax, barrel] },
  },
  {
    files: ['{site,lessons}/**/*.svelte'],
    rules: { 'no-restricted-syntax': ['error', ...houseSyntax, barrel, ...heavySvelte] },
  },
  {
    files: tests,
    rules: { 'no-restricted-syntax': ['error', ...houseSyntax, skippedTest] },
  },
  {
    files: ['{site,lessons}/**/*.{ts,svelte,astro}'],
    rules: {
      'no-restricted-globals': ['error', ...outsideWorld],
      'no-restricted-properties': ['error', clockAndChance],
    },
  },
  {
    files: ['{lessons,site/figures,site/controls}/**/*.{ts,svelte}'],
    rules: {
      'no-restricted-globals': [
        'error',
        ...outsideWorld,
        ...globals(['Date', 'performance'], 'A figure shows its inputs, not the hour.'),
      ],
    },
  },
  {
    files: ['core/**/*.ts'],
    ignores: tests,
    rules: {
      'no-restricted-globals': ['error', ...outsideWorld, ...platform],
      'no-restricted-properties': ['error', clockAndChance],
      'no-restricted-syntax': ['error', ...houseSyntax, barrel, buildKnowledge],
    },
  },
  {
    files: ['core/index.ts'],
    rules: { 'no-restricted-syntax': ['error', ...houseSyntax, buildKnowledge] },
  },
  {
    files: ['tests/{browser,bench}/**/*.ts'],
    // What was linted is kept by the name and version of a rule's plugin: the version says what the rule says.
    plugins: { house: { meta: { name: 'house', version: awaitedAsWritten }, rules: { awaited } } },
    rules: { 'house/awaited': 'error' },
  },
  {
    files: ['tests/**/*.config.ts'],
    rules: { 'no-restricted-syntax': 'off' },
  },
  importRules,
]);

import js from '@eslint/js'
import prettier from 'eslint-config-prettier'
import svelte from 'eslint-plugin-svelte'
import globals from 'globals'
import ts from 'typescript-eslint'
import { borders } from './tests/unit/house/borders.js'
import svelteConfig from './svelte.config.js'

export default ts.config(
  { ignores: ['build/', '.svelte-kit/', 'test-results/', 'playwright-report/'] },
  js.configs.recommended,
  ...ts.configs.recommended,
  ...svelte.configs.recommended,
  prettier,
  ...svelte.configs.prettier,
  {
    languageOptions: {
      globals: { ...globals.browser, ...globals.node },
      parserOptions: {
        projectService: {
          allowDefaultProject: ['eslint.config.js', 'playwright.config.ts', 'svelte.config.js'],
        },
        tsconfigRootDir: import.meta.dirname,
        extraFileExtensions: ['.svelte'],
      },
    },
    rules: {
      // TypeScript knows which names exist, and svelte-check runs it on every file.
      'no-undef': 'off',
      eqeqeq: 'error',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_' },
      ],
      // A declaration file would be a module if it had an import of its own.
      '@typescript-eslint/consistent-type-imports': ['error', { disallowTypeAnnotations: false }],
      // A write that nobody waits for is a write that can be lost unseen.
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: false }],
      '@typescript-eslint/await-thenable': 'error',
      // A new outcome, status or kind must not fall through in silence.
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts', '**/*.svelte.js'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
    rules: {
      // What a dump or a syllabus holds is shown as text, always.
      'svelte/no-at-html-tags': 'error',
      'svelte/no-target-blank': 'error',
      // Addresses are made with `base`; the app has no typed routes to resolve.
      'svelte/no-navigation-without-resolve': 'off',
      // {' '} keeps a space where a line breaks.
      'svelte/no-useless-mustaches': 'off',
      // Blocked by the content security policy in every prerendered page.
      'svelte/no-inline-styles': 'error',
    },
  },
  { files: ['src/lib/**', 'src/routes/**', 'src/workers/**'], rules: { 'no-console': 'error' } },
  ...borders,
)

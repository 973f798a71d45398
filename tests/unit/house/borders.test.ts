import { Linter } from 'eslint'
import ts from 'typescript-eslint'
import { expect, test } from 'vitest'
import { borders } from './borders.js'

const linter = new Linter({ configType: 'flat' })
const config = [
  {
    files: ['**/*.ts'],
    languageOptions: { parser: ts.parser },
    plugins: { '@typescript-eslint': ts.plugin },
  },
  ...borders,
] as Linter.Config[]

const lint = (file: string, code: string) =>
  linter.verify(code, config, file).map(({ ruleId }) => ruleId)

const IMPORTS = '@typescript-eslint/no-restricted-imports'
const SYNTAX = 'no-restricted-syntax'

test.each([
  {
    file: 'src/lib/marking/2-ideas/a.ts',
    code: "import { readIdea } from '../../syllabus/notation'",
  },
  {
    file: 'src/lib/marking/quantities/a.ts',
    code: "import { readValue } from '../../syllabus/value'",
  },
  { file: 'src/lib/marking/a.ts', code: "import type { Topic } from '../syllabus/types'" },
  { file: 'src/lib/marking/2-ideas/a.ts', code: "import { readPage } from '../1-statements/page'" },
  { file: 'src/lib/recall/a.ts', code: "import type { Outcome } from '../marking/types'" },
  { file: 'src/lib/recall/a.ts', code: 'export const at = (ms: number) => new Date(ms)' },
  { file: 'src/lib/store/a.ts', code: "import { sessionsOf } from '../recall'" },
  { file: 'src/lib/store/schemas/a.ts', code: "import { marks } from './marking'" },
  { file: 'src/lib/store/a.ts', code: 'export const now = () => Date.now()' },
  { file: 'src/lib/view/a.ts', code: "import { recallOf } from '../recall'" },
  {
    file: 'src/lib/view/a.ts',
    code: "export const count = (n: number) => n.toLocaleString('en-GB')",
  },
  { file: 'src/lib/components/a.ts', code: "import { saveDraft } from '$lib/store'" },
  { file: 'src/lib/components/a.ts', code: "import { segments } from '$lib/view/segments'" },
  { file: 'src/routes/check/a.ts', code: "import { mark } from '$lib/marking'" },
  { file: 'src/workers/a.ts', code: "import { mark } from '../lib/marking'" },
  { file: 'src/cli/a.ts', code: "import { mark } from '../lib/marking'" },
])('allowed in $file: $code', ({ file, code }) => {
  expect(lint(file, code)).toEqual([])
})

test.each([
  {
    file: 'src/lib/syllabus/a.ts',
    code: "import type { Outcome } from '../marking/types'",
    rule: IMPORTS,
  },
  { file: 'src/lib/syllabus/a.ts', code: "import { mark } from '$lib/marking'", rule: IMPORTS },
  {
    file: 'src/lib/marking/a.ts',
    code: "import { readSyllabus } from '../syllabus/read'",
    rule: IMPORTS,
  },
  { file: 'src/lib/marking/a.ts', code: "import type { Check } from '../recall'", rule: IMPORTS },
  { file: 'src/lib/marking/a.ts', code: "import { base } from '$app/paths'", rule: IMPORTS },
  { file: 'src/lib/marking/a.ts', code: "import { readFileSync } from 'node:fs'", rule: IMPORTS },
  { file: 'src/lib/recall/a.ts', code: "import { mark } from '../marking'", rule: IMPORTS },
  { file: 'src/lib/recall/a.ts', code: "import { get } from 'idb-keyval'", rule: IMPORTS },
  { file: 'src/lib/view/a.ts', code: "import { getCheck } from '../store'", rule: IMPORTS },
  { file: 'src/lib/view/a.ts', code: "import { tick } from 'svelte'", rule: IMPORTS },
  { file: 'src/lib/view/a.ts', code: "export { runOf } from '../recall/status'", rule: IMPORTS },
  {
    file: 'src/lib/store/a.ts',
    code: "import Page from '../components/Page.svelte'",
    rule: IMPORTS,
  },
  {
    file: 'src/lib/store/a.ts',
    code: "import { segments } from '../view/segments'",
    rule: IMPORTS,
  },
  {
    file: 'src/lib/components/a.ts',
    code: "import { load } from '../../routes/check/load'",
    rule: IMPORTS,
  },
  {
    file: 'src/lib/components/a.ts',
    code: "import { runOf } from '$lib/recall/status'",
    rule: IMPORTS,
  },
  {
    file: 'src/routes/check/a.ts',
    code: "import { judge } from '$lib/marking/3-outcomes/judge'",
    rule: IMPORTS,
  },
  { file: 'src/workers/a.ts', code: "import { getCheck } from '../lib/store'", rule: IMPORTS },
  { file: 'src/lib/marking/a.ts', code: 'export const now = () => Date.now()', rule: SYNTAX },
  { file: 'src/lib/recall/a.ts', code: 'export const now = () => new Date()', rule: SYNTAX },
  { file: 'src/lib/recall/a.ts', code: 'export const dice = () => Math.random()', rule: SYNTAX },
  {
    file: 'src/lib/view/a.ts',
    code: 'export const day = (d: Date) => d.toLocaleDateString()',
    rule: SYNTAX,
  },
  {
    file: 'src/lib/view/a.ts',
    code: 'export const day = (d: Date) => d?.toLocaleDateString()',
    rule: SYNTAX,
  },
])('refused in $file: $code', ({ file, code, rule }) => {
  expect(lint(file, code)).toEqual([rule])
})

/** Formulas brought in by every path that takes text: none begins a cell of a table that leaves, and each comes back as it was. */
import Papa from 'papaparse'
import { describe, expect, test } from 'vitest'
import { readFileSync, readdirSync } from 'node:fs'
import { csvOf } from '../../../src/lib/components/csv'
import { casePackage, readSyllabus, tableRows, type Syllabus } from '../../../src/lib/syllabus'
import {
  caseTree,
  finishDraft,
  readTable,
  syllabusTree,
  tableTree,
  textBlocks,
  treeOf,
  type DraftRead,
} from '../../../src/lib/syllabus/import'
import { csvRows } from '../../../src/lib/view/papers'
import { FORMULAS, HTML, URLS } from '../../attacks/payloads'
import { paper } from '../store/records'
import { treeIn } from '../syllabus/import/files'

/** OWASP, "CSV Injection": a cell that begins with one of these is a formula. A blank before it is no help everywhere. */
const BEGINS_FORMULA = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/

const ALL = [...FORMULAS, ...HTML, ...URLS]

function syllabusOf(read: DraftRead): Syllabus {
  const done = finishDraft(treeIn(read))
  if (!done.ok) throw new Error(JSON.stringify(done.problems))
  const back = readSyllabus(done.source)
  if (!back.ok) throw new Error(JSON.stringify(back.mistakes))
  return back.syllabus
}

const fromTable = (text: string): DraftRead => {
  const read = readTable(text)
  if (!read.ok) throw new Error(read.fault)
  return tableTree(read.table, read.table.uses, 'Attack')
}

/** A syllabus whose every text is a payload. */
const attacking: Syllabus = {
  format: 1,
  id: 'attack',
  title: '=1+1',
  topics: [
    {
      id: 'one',
      title: '@SUM(1+1)',
      caution: '+1+1',
      points: ALL.map((text, i) => ({ ref: `=${i + 1}`, text: text.trim(), ideas: [] })),
    },
  ],
}
// What cannot be printed stays behind: see the round trips of any syllabus.
const printed = (text: string) => text.replaceAll('\u0001', '')
const texts = attacking.topics[0]!.points.map(({ text }) => text)

const WAYS: Readonly<Record<string, () => DraftRead>> = {
  'a table with commas': () =>
    fromTable(Papa.unparse([['ref', 'text'], ...texts.map((text, i) => [`${i + 1}`, text])])),
  'a table with tabs': () =>
    fromTable(
      Papa.unparse([['ref', 'text'], ...texts.map((text, i) => [`${i + 1}`, text])], {
        delimiter: '\t',
      }),
    ),
  'a package of CASE': () => caseTree(JSON.stringify(casePackage(attacking, 0))),
  'a syllabus of our own': () => ({ ok: true, tree: syllabusTree(attacking) }),
  'pasted text': () => treeOf(textBlocks(texts.map((text) => `- x ${text}`).join('\n')), 'Attack'),
  'a list of Markdown': () =>
    treeOf(textBlocks(`# =1+1\n${texts.map((text, i) => `1.${i + 1} ${text}`).join('\n')}`), '@A'),
}

const cellsOf = async (rows: readonly (readonly string[])[]): Promise<string[]> =>
  Papa.parse<string[]>((await csvOf(rows)).slice(1), { delimiter: ',' }).data.flat()

describe('brought as', () => {
  test.each(Object.keys(WAYS))('%s, no formula leaves in its table', async (way) => {
    const syllabus = syllabusOf(WAYS[way]!())
    const points = syllabus.topics.flatMap((topic) => topic.points)
    expect(points.length).toBeGreaterThan(texts.length / 2)
    expect(
      (await cellsOf(tableRows(syllabus))).filter((cell) => BEGINS_FORMULA.test(cell)),
    ).toEqual([])
  })
})

test('our own table comes back as it went, formulas and all', async () => {
  const back = syllabusOf(fromTable(await csvOf(tableRows(attacking))))
  expect(back.topics.map(({ title, caution }) => ({ title, caution }))).toEqual([
    { title: '@SUM(1+1)', caution: '+1+1' },
  ])
  expect(back.topics[0]!.points.map(({ ref, text }) => ({ ref, text }))).toEqual(
    attacking.topics[0]!.points.map(({ ref, text }) => ({ ref, text: printed(text) })),
  )
})

test('the log of papers holds none either', async () => {
  const rows = csvRows(
    ALL.map((text, i) => ({ ...paper(`${i}`), source: text, question: text, note: text })),
    () => ({ syllabus: '=1', topic: '+1' }),
  )
  expect((await cellsOf(rows)).filter((cell) => BEGINS_FORMULA.test(cell))).toEqual([])
})

test('every table of the app is written in the one place that guards it', () => {
  const writers = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.(?:ts|js|svelte)$/.test(path))
    .filter((path) => /\bunparse\(/.test(readFileSync(`src/${path}`, 'utf8')))
  expect(writers).toEqual(['lib/components/csv.ts'])
})

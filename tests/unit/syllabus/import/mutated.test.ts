/**
 * Real files, each changed in many ways, 2,000 in all: bytes turned, cut, doubled, swapped. What comes back is a draft
 * that holds together, or one sentence; never a throw, and never a draft that cannot become a syllabus by its own rules.
 */
import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { decodeText } from '../../../../src/lib/components/import/what-file'
import {
  casePackage,
  readSyllabus,
  writeSyllabus,
  type Syllabus,
} from '../../../../src/lib/syllabus'
import {
  caseTree,
  finishDraft,
  MOST_LINES,
  readTable,
  renumber,
  setTitle,
  syllabusTree,
  tableTree,
  textBlocks,
  treeOf,
  type DraftRead,
} from '../../../../src/lib/syllabus/import'
import { answerDocx } from '../../../../src/workers/answer-import'
import { fixture, pdfDraft } from './files'

const shipped = new URL('../../../../syllabi/', import.meta.url)
const [first] = readdirSync(shipped).filter((name) => name.endsWith('.yaml'))
// A few points of it are enough, and quick: what is damaged is the same.
const syllabus = (() => {
  const read = readSyllabus(readFileSync(new URL(first!, shipped), 'utf8'))
  if (!read.ok) throw new Error('A shipped syllabus cannot be read.')
  const topics = read.syllabus.topics.slice(0, 2)
  return {
    ...read.syllabus,
    topics: topics.map((one) => ({ ...one, points: one.points.slice(0, 3) })),
  }
})()

const utf8 = (text: string) => new TextEncoder().encode(text)
const rows = (one: Syllabus) =>
  one.topics.flatMap(({ title, points }) =>
    points.map(({ ref, text }) => `"${title}";${ref};"${text.replaceAll('"', '""')}"`),
  )
const table = utf8(`topic;ref;text\n${rows(syllabus).join('\n')}\n`)
const prose = utf8(
  syllabus.topics
    .map(
      ({ title, points }) =>
        `## ${title}\n${points.map(({ ref, text }) => `${ref} ${text}`).join('\n')}`,
    )
    .join('\n\n'),
)
const pack = utf8(JSON.stringify(casePackage(syllabus, 0)))

/** The same changes in every run: a linear congruential generator (Numerical Recipes, 2nd ed., 7.1). */
function dice(seed: number) {
  let state = seed >>> 0
  return (below: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return Math.floor((state / 2 ** 32) * below)
  }
}

function mutated(bytes: Uint8Array, seed: number): Uint8Array<ArrayBuffer> {
  const roll = dice(seed)
  const at = roll(bytes.length)
  const part = bytes.subarray(at, at + 1 + roll(200))
  const join = (...parts: Uint8Array[]) => new Uint8Array(Buffer.concat(parts))
  switch (seed % 6) {
    case 0: {
      const turned = new Uint8Array(bytes)
      for (let n = 1 + roll(30); n > 0; n -= 1) turned[roll(bytes.length)] = roll(256)
      return turned
    }
    case 1:
      return join(bytes.subarray(0, at))
    case 2:
      return join(bytes.subarray(0, at), part, part, bytes.subarray(at))
    case 3:
      return join(bytes.subarray(0, at), bytes.subarray(at + part.length))
    case 4:
      return join(bytes.subarray(at), bytes.subarray(0, at))
    default: {
      const signs = [
        '"',
        '\n',
        '{',
        '[',
        '\0',
        '|',
        '\t',
        '- ',
        ': ',
        '&a *a ',
        '\ufeff',
        '<script>',
        '\u202e',
        '🌊',
      ]
      return join(
        bytes.subarray(0, at),
        utf8(signs[roll(signs.length)]!.repeat(1 + roll(50))),
        bytes.subarray(at),
      )
    }
  }
}

const read = (bytes: Uint8Array, how: (text: string) => DraftRead): DraftRead => {
  const decoded = decodeText(bytes)
  return decoded ? how(decoded.text) : { ok: false, fault: 'no text' }
}
const fromTable = (text: string): DraftRead => {
  const tried = readTable(text)
  return tried.ok ? tableTree(tried.table, tried.table.uses, 'Table') : tried
}
const fromYaml = (text: string): DraftRead => {
  const tried = readSyllabus(text)
  return tried.ok
    ? { ok: true, tree: syllabusTree(tried.syllabus) }
    : { ok: false, fault: `${tried.mistakes[0]!.line}: ${tried.mistakes[0]!.message}` }
}

function holdsTogether(result: DraftRead): void {
  if (!result.ok) return void expect(result.fault).toMatch(/\S/)
  const { lines } = result.tree
  expect(lines.length).toBeLessThanOrEqual(MOST_LINES)
  expect(new Set(lines.map(({ key }) => key)).size).toBe(lines.length)
  expect(lines.some(({ role }) => role === 'point')).toBe(true)
  const done = finishDraft(renumber(setTitle(result.tree, 'Mine')))
  if (!done.ok)
    return void expect(
      done.problems.every(({ key, message }) => key !== undefined && message !== ''),
    ).toBe(true)
  expect(readSyllabus(done.source)).toEqual({ ok: true, syllabus: done.syllabus })
}

describe('files that were damaged', () => {
  test.each([
    {
      what: 'text',
      bytes: prose,
      times: 500,
      how: (bytes: Uint8Array) => read(bytes, (text) => treeOf(textBlocks(text), 'Text')),
    },
    {
      what: 'a table',
      bytes: table,
      times: 450,
      how: (bytes: Uint8Array) => read(bytes, fromTable),
    },
    {
      what: 'a CASE package',
      bytes: pack,
      times: 400,
      how: (bytes: Uint8Array) => read(bytes, caseTree),
    },
    {
      what: 'a syllabus file',
      bytes: utf8(writeSyllabus(syllabus)),
      times: 250,
      how: (bytes: Uint8Array) => read(bytes, fromYaml),
    },
    {
      what: 'a Word file',
      bytes: fixture('coast-libreoffice.docx'),
      times: 250,
      how: (bytes: Uint8Array) => answerDocx(bytes, 'Word'),
    },
    {
      what: 'a PDF',
      bytes: fixture('coast.pdf'),
      times: 150,
      // The page tells what failed; here it is enough that it failed whole.
      how: (bytes: Uint8Array) =>
        pdfDraft(bytes).catch((error: unknown): DraftRead => {
          expect(error).toBeInstanceOf(Error)
          return { ok: false, fault: 'refused' }
        }),
    },
  ])('$what, in $times ways', async ({ bytes, times, how }) => {
    const counts = { read: 0, refused: 0 }
    for (let seed = 1; seed <= times; seed += 1) {
      const result = await how(mutated(bytes, seed))
      counts[result.ok ? 'read' : 'refused'] += 1
      holdsTogether(result)
    }
    expect(counts.read + counts.refused).toBe(times)
    // Both happen: some damage leaves a file that can be read, some does not.
    expect(counts.read).toBeGreaterThan(0)
    expect(counts.refused).toBeGreaterThan(0)
  })
})

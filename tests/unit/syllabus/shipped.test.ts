/** The syllabi that ship: a second reader's table names where each point comes from, and a student's words reach each. */
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { mark } from '../../../src/lib/marking'
import { shippedTopics } from '../marking/shipped'
import { studentWords } from './student-words'

const files = [...new Set(shippedTopics.map(({ file }) => file))]
const topicsOf = (name: string) =>
  shippedTopics.flatMap(({ file, topic }) => (file === name ? [topic] : []))
const refsOf = (name: string) =>
  topicsOf(name).flatMap(({ points }) => points.map(({ ref }) => ref))

test('five subjects and more than 200 points, each kind of point in use', () => {
  expect(files).toHaveLength(5)
  const points = shippedTopics.flatMap(({ topic }) => topic.points)
  expect(points.length).toBeGreaterThanOrEqual(200)
  for (const uses of [
    points.filter(({ any }) => any !== undefined),
    points.filter(({ steps }) => steps),
    points.filter(({ equation }) => equation),
    points.filter(({ value }) => value),
    points.filter(({ reject }) => reject?.length),
    points.filter(({ ideas, steps, equation }) => ideas.length === 0 && !steps && !equation),
  ])
    expect(uses.length).toBeGreaterThanOrEqual(5)
})

test('topics in which something is done by hand carry a caution that defers to the local rules', () => {
  const practical =
    /\b(?:to (?:measure|test|get|find|tie|calibrate|make fast|take stock|cash up)|acid|distress|temperature)\b/i
  const wanting = shippedTopics.filter(
    ({ topic: { points, caution } }) =>
      points.some(({ text, steps }) => steps && practical.test(text)) && !caution,
  )
  expect(wanting.map(({ file, topic }) => `${file}: ${topic.title}`)).toEqual([])
})

const sources = readFileSync(new URL('../../../syllabi/SOURCES.md', import.meta.url), 'utf8')

/** `1.1–1.3, 1.7` -> 1.1, 1.2, 1.3, 1.7. */
function spread(cell: string): string[] {
  return cell.split(',').flatMap((part) => {
    const [from = '', to = from] = part.trim().split('–')
    const [topic, first] = from.split('.').map(Number)
    const last = Number(to.split('.')[1])
    return Array.from({ length: last - first! + 1 }, (_, i) => `${topic}.${first! + i}`)
  })
}

describe.each(files)('%s', (file) => {
  test('every point stands once in the table of sources', () => {
    const section = sources.split(/^## /m).find((part) => part.startsWith(`${file}\n`)) ?? ''
    const cells = [...section.matchAll(/^\| *(\d[^|]*?) *\|/gm)].map(([, cell]) => cell!)
    expect(cells.flatMap(spread).sort()).toEqual(refsOf(file).sort())
  })

  const rows = studentWords[file] ?? []
  test('every point is said by a student at least once', () => {
    const said = new Set(rows.map(({ ref }) => ref))
    expect(refsOf(file).filter((ref) => !said.has(ref))).toEqual([])
  })

  for (const { ref, says, missed } of rows)
    (missed ? test.fails : test)(`${ref}: ${says}${missed ? ` (${missed})` : ''}`, () => {
      const topic = topicsOf(file).find(({ points }) => points.some((point) => point.ref === ref))!
      const marked = mark(topic, says).points.find((point) => point.ref === ref)!
      expect(marked.outcome).toBe('full')
    })
})

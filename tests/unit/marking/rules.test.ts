/**
 * The tables of the marking rules, and every shipped point in its own words, against the marker. What the marker cannot do yet
 * is listed in known-misses.ts: such a row has to fail, so that one that starts to pass is taken off the list. After work on
 * the marker, `KNOWN_MISSES=write npx vitest run tests/unit/marking/rules.test.ts` writes the list anew; read what changed.
 */
import { writeFileSync } from 'node:fs'
import { afterAll, describe, expect, test } from 'vitest'
import { mark, type Report, type Span } from '../../../src/lib/marking'
import { knownMisses } from './known-misses'
import { beyondTables, exampleTables, pairTables } from './rules/tables'
import { shippedTopics } from './shipped'
import { topicFrom, topicOf } from './topic'

const rewriting = process.env.KNOWN_MISSES === 'write' && !process.env.CI
const known = new Set(knownMisses)
const rows = new Set<string>()
const missed: string[] = []

/** One row of a table, under a name that no other row has. */
function row(name: string, check: () => void): void {
  if (rows.has(name)) throw new Error(`two rows are called "${name}"`)
  rows.add(name)
  if (!rewriting && !known.has(name)) return test(name, check)
  if (!rewriting) {
    // A known miss is a wrong mark. A crash is not: it does not fail as expected here, and so is told.
    return test.fails(name, () => {
      try {
        check()
      } catch (error) {
        if (error instanceof Error && error.name === 'AssertionError') throw error
      }
    })
  }
  test(name, () => {
    try {
      check()
    } catch {
      missed.push(name)
    }
  })
}

describe.each(exampleTables)('$rule', ({ rule, examples }) => {
  for (const example of examples) {
    const { says, outcome, quotes, offered, why } = example
    const first = () => mark(topicOf(example), says).points[0]!
    row(`${rule}: ${why}`, () => expect(first().outcome).toBe(outcome))
    if (quotes !== undefined) {
      row(`${rule}: ${why} [words]`, () => {
        const { clash, ideas } = first()
        const spans =
          outcome === 'contradicted'
            ? clash
              ? [clash.words]
              : []
            : ideas.flatMap((idea) => idea.spans)
        expect(spans.some((span) => touches(span, placeOf(quotes, says)))).toBe(true)
      })
    }
    if (offered !== undefined)
      row(`${rule}: ${why} [offered]`, () => expect(first().offered).toBe(offered))
  }
})

describe.each(beyondTables)('$rule', ({ rule, beyond }) => {
  for (const { subject, points, says, beyond: extras, why } of beyond) {
    row(`${rule}: ${why}`, () => {
      const report = mark(topicFrom(`${subject} topic`, points), says)
      const shown = report.beyond.map(({ start, end }) =>
        says.slice(start, end).replace(/[\s.]+$/, ''),
      )
      expect(shown).toEqual(extras)
    })
  }
})

describe.each(pairTables)('$rule', ({ rule, pairs }) => {
  for (const { one, two, outcome, why, ...example } of pairs) {
    row(`${rule}: ${why}`, () => {
      const outcomes = [one, two].map((says) => mark(topicOf(example), says).points[0]!.outcome)
      expect(outcomes).toEqual([outcome, outcome])
    })
  }
})

describe('every shipped point in its own words', () => {
  for (const { file, topic } of shippedTopics) {
    const whole = topic.points.map(({ text }) => text).join('\n')
    for (const { ref, text } of topic.points) {
      row(`${file} ${ref} alone`, () => expect(outcomeIn(mark(topic, text), ref)).toBe('full'))
      row(`${file} ${ref} among the others`, () =>
        expect(outcomeIn(mark(topic, whole), ref)).toBe('full'),
      )
    }
  }
})

test('the known misses are rows of the tables', () => {
  expect(knownMisses.filter((name) => !rows.has(name))).toEqual([])
})

afterAll(async () => {
  const count = rewriting ? missed.length : knownMisses.length
  console.log(`Known misses of the marker: ${count} of ${rows.size} rows`)
  if (!rewriting) return
  const { format, resolveConfig } = await import('prettier')
  const path = new URL('known-misses.ts', import.meta.url)
  const source = `/** What the marker cannot do yet, row by row; rules.test.ts says how to write this list anew. */
export const knownMisses: readonly string[] = ${JSON.stringify(missed.sort(), null, 1)}`
  writeFileSync(
    path,
    await format(source, { ...(await resolveConfig(path)), parser: 'typescript' }),
  )
})

const outcomeIn = ({ points }: Report, ref: string) =>
  points.find((point) => point.ref === ref)!.outcome

function placeOf(words: string, text: string): Span {
  const start = text.indexOf(words)
  if (start < 0) throw new Error(`"${words}" is not in "${text}"`)
  return { start, end: start + words.length }
}

function touches(one: Span, other: Span): boolean {
  return one.start < other.end && other.start < one.end
}

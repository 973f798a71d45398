/** What holds for the marker whatever anyone types: no fault, no span outside the page, same in same out. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mark, type Report, type Span } from '../../../src/lib/marking'
import type { Topic } from '../../../src/lib/syllabus'
import { shippedTopics } from './shipped'
import { topicFrom } from './topic'

/** One point of every kind that the format has. */
const everyKind = topicFrom('Water in motion', [
  {
    text: 'Speed is distance over time.',
    equation: 'v = d / t',
    where: { v: 'speed', d: 'distance', t: 'time' },
  },
  { text: 'Hydrogen burns to water.', equation: '2H2 + O2 -> 2H2O' },
  { text: 'A wave here has a period of 8 s.', ideas: ['period'], value: '8 s ± 1' },
  { text: 'A stream erodes, carries, then deposits.', steps: ['erodes', 'carries', 'deposits'] },
  {
    text: 'Loads are solution, suspension, saltation.',
    ideas: ['solution', 'suspension', 'saltation'],
    any: 2,
  },
  {
    text: 'Swash is oblique.',
    ideas: ['"swash" + oblique(ly) / at an angle'],
    reject: ['swash is straight'],
  },
  { text: 'Deposition happens where the water slows.' },
])
const topics = [everyKind, ...shippedTopics.map(({ topic }) => topic)]
/** By title: a counterexample then shows the title, not the whole topic. */
const called = new Map(topics.map((topic) => [topic.title, topic]))
const markOn = (title: string, page: string) => mark(called.get(title)!, page)

/** What students and keyboards put between words; split at the double bars. */
const GLUE =
  ' || || ||. ||, ||: ||\n||\n- || → || ↑ || = || & || / || × || not || no wait || because || 12.4 h ||(||)||“||"||\'||½||10^||⁻¹||3e'
const ODD = ['\u200f', '\u202e', '\u0301', '🌊', '👩‍👩‍👧', '\ud83c', '\udf0a', '\0']
const glue = fc.constantFrom(...GLUE.split('||'), ...ODD)

/** A stretch of one of the points, of one word or of all. */
const stretchOf = ({ points }: Topic) =>
  fc
    .tuple(fc.constantFrom(...points), fc.nat(30), fc.integer({ min: 1, max: 30 }))
    .map(([{ text }, from, count]) => {
      const words = text.split(/\s+/)
      const start = from % words.length
      return words.slice(start, start + count).join(' ')
    })

const anyCodeUnits = fc
  .array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 200 })
  .map((units) => String.fromCharCode(...units))
const anyText = fc.oneof(
  fc.string({ unit: 'grapheme' }),
  fc.string({ unit: 'binary' }),
  anyCodeUnits,
)

const pageOn = (topic: Topic) =>
  fc.oneof(
    anyText,
    fc
      .array(fc.tuple(fc.oneof({ weight: 6, arbitrary: stretchOf(topic) }, anyText), glue), {
        minLength: 2,
        maxLength: 25,
        size: 'max',
      })
      .map((parts) => parts.flat().join('')),
    fc
      .array(fc.tuple(stretchOf(topic), glue), { minLength: 2, maxLength: 25, size: 'max' })
      .map((parts) => parts.flat().join('')),
  )

const marking = fc
  .constantFrom(...called.keys())
  .chain((title) => fc.tuple(fc.constant(title), pageOn(called.get(title)!)))

function spansIn({ points, statements, beyond }: Report): Span[] {
  return [
    ...statements,
    ...beyond,
    ...points.flatMap(({ ideas, nearest, clash }) => [
      ...ideas.flatMap(({ spans }) => spans),
      ...(nearest ? [nearest] : []),
      ...(clash ? [clash.statement, clash.words] : []),
    ]),
  ]
}

const runs = { numRuns: 300 }
const minutes = 120_000

test('every span lies inside the page and holds something', { timeout: minutes }, () => {
  fc.assert(
    fc.property(marking, ([title, page]) => {
      const empty = spansIn(markOn(title, page)).filter(
        ({ start, end }) =>
          !Number.isInteger(start) ||
          !Number.isInteger(end) ||
          start < 0 ||
          end > page.length ||
          page.slice(start, end).trim() === '',
      )
      expect(empty).toEqual([])
    }),
    runs,
  )
})

test(
  'the statements come in order and do not overlap; what is beyond or nearest is one of them',
  { timeout: minutes },
  () => {
    fc.assert(
      fc.property(marking, ([title, page]) => {
        const { statements, beyond, points } = markOn(title, page)
        statements
          .slice(1)
          .forEach(({ start }, i) => expect(start).toBeGreaterThanOrEqual(statements[i]!.end))
        const kept = beyond.map(({ start }) => start)
        expect(kept).toEqual([...kept].sort((a, b) => a - b))
        for (const span of beyond) expect(statements).toContainEqual(span)
        for (const { nearest, clash } of points) {
          if (nearest) expect(statements).toContainEqual(nearest)
          if (!clash) continue
          expect(statements).toContainEqual(clash.statement)
          expect(clash.words.start).toBeGreaterThanOrEqual(clash.statement.start)
          expect(clash.words.end).toBeLessThanOrEqual(clash.statement.end)
        }
      }),
      runs,
    )
  },
)

test('one mark for each point, and what it says of itself agrees', { timeout: minutes }, () => {
  fc.assert(
    fc.property(marking, ([title, page]) => {
      const { points } = markOn(title, page)
      const topic = called.get(title)!
      expect(points.map(({ ref }) => ref)).toEqual(topic.points.map(({ ref }) => ref))
      for (const { outcome, ideas, clash, offered, nearest, sureness, why } of points) {
        for (const { found, spans } of ideas) expect(spans.length > 0).toBe(found)
        expect(clash !== undefined).toBe(outcome === 'contradicted')
        if (offered) expect(nearest).toBeDefined()
        expect(sureness).toBeGreaterThanOrEqual(0)
        expect(sureness).toBeLessThanOrEqual(1)
        expect(why).not.toBe('')
      }
    }),
    runs,
  )
})

test('same in, same out, whatever was marked between', { timeout: minutes }, () => {
  fc.assert(
    fc.property(marking, marking, ([title, page], [other, between]) => {
      const first = structuredClone(markOn(title, page))
      markOn(other, between)
      expect(markOn(title, page)).toEqual(first)
    }),
    { numRuns: 100 },
  )
})

describe('an empty page misses everything', () => {
  test.each([
    ['nothing'],
    ['spaces', ' \t \u00a0'],
    ['empty lines', '\n\r\n\n'],
    ['a byte order mark', '\ufeff'],
  ])('%s', (_, page = '') => {
    for (const topic of topics) {
      const { points, statements, beyond } = mark(topic, page)
      expect([statements, beyond]).toEqual([[], []])
      for (const point of points) expect(point).toMatchObject({ outcome: 'missed', offered: false })
    }
  })
})

describe('50,000 characters of one thing', () => {
  const whole = everyKind.points.map(({ text }) => text).join(' ')
  test.each([
    ['a letter', 'a'],
    ['a word', 'swash '],
    ['a line', 'waves\n'],
    ['an opening bracket', '('],
    ['a quotation mark', '"'],
    ['a figure', '7'],
    ['a power', '10^'],
    ['an operator', '× '],
    ['an arrow', '→'],
    ['a bullet', '\n- '],
    ['a negation', 'not '],
    ['a comma', 'a, '],
    ['an emoji', '🌊'],
    ['a joined emoji', '👩‍👩‍👧'],
    ['half an emoji', '\ud83c'],
    ['a word from right to left', 'גלים '],
    ['a combining mark', '\u0301'],
    ['the points, with full stops', `${whole} `],
    ['the points, without an end', `${whole.replaceAll('.', '')} `],
  ])('%s', { timeout: minutes }, (_, piece) => {
    const page = piece.repeat(Math.ceil(50_000 / piece.length)).slice(0, 50_000)
    const report = mark(everyKind, page)
    expect(report.points).toHaveLength(everyKind.points.length)
    expect(
      spansIn(report).filter(({ start, end }) => start < 0 || start >= end || end > page.length),
    ).toEqual([])
  })
})

/** What is weighed after the rules: the weights fit the evidence, an exact term is never weighed away, and what is full says where. */
import { describe, expect, test } from 'vitest'
import { DRAFT_EVIDENCE, EVIDENCE, mark, WEIGHED } from '$lib/marking'
import {
  AUTHORED_CLASSES,
  AUTHORED_SURE,
  DRAFT_CLASSES,
  DRAFT_SURE,
} from '$lib/marking/3-outcomes/draft-weights'
import { readSyllabus, type Idea } from '$lib/syllabus'
import { shippedTopics } from './shipped'

function topic(points: readonly { text: string; ideas?: readonly string[] }[]) {
  const read = readSyllabus(
    JSON.stringify({
      format: 1,
      title: 'T',
      topics: [{ title: 'Harbours', points: points.map((p, i) => ({ ref: String(i + 1), ...p })) }],
    }),
  )
  if (!read.ok) throw new Error(JSON.stringify(read.mistakes))
  return read.syllabus.topics[0]!
}

/** So long that a page is no single answer. */
const REST =
  'Gulls nest on the wall. The ferry runs at ten. There is a fish market. The crew mends nets. Boats are painted in spring. '

describe('the weights', () => {
  test.each([
    ['drafted', DRAFT_CLASSES],
    ['authored', AUTHORED_CLASSES],
  ])('%s: one for every number of the evidence, one row for every outcome', (_, classes) => {
    expect(classes).toHaveLength(WEIGHED.length)
    for (const { weights } of classes)
      expect(weights).toHaveLength(EVIDENCE.length + DRAFT_EVIDENCE.length)
  })
  test('the borders are probabilities that are more likely than not', () => {
    for (const border of [DRAFT_SURE, AUTHORED_SURE]) {
      expect(border).toBeGreaterThan(0.5)
      expect(border).toBeLessThan(1)
    }
  })
})

test('an exact term that is not there is not said in other words', () => {
  const asked = topic([
    {
      text: 'A breakwater shelters the basin, so boats lie still behind it.',
      ideas: ['"breakwater"', 'shelters + basin', 'boats lie still'],
    },
  ])
  const page = `${REST}A long wall of stone shelters the basin, so boats lie still behind it.`
  expect(mark(asked, page).points[0]!.outcome).toBe('partial')
})

test('a drafted point in its own words is full on a long page, and every idea says where', () => {
  const text = 'A breakwater shelters the basin, so boats lie still behind it.'
  const page = `${REST}${text} ${REST}`
  const [point] = mark(topic([{ text }]), page).points
  expect(point!.outcome).toBe('full')
  const from = page.indexOf(text)
  for (const { found, spans } of point!.ideas) {
    expect(found).toBe(true)
    expect(spans.length).toBeGreaterThan(0)
    for (const { start, end } of spans) {
      expect(start).toBeGreaterThanOrEqual(from)
      expect(end).toBeLessThanOrEqual(from + text.length)
    }
  }
})

test('a drafted point of which the page says nothing is missed, and surely so', () => {
  const [point] = mark(topic([{ text: 'A breakwater shelters the basin.' }]), REST).points
  expect(point!.outcome).toBe('missed')
  expect(point!.sureness).toBeLessThan(0.2)
})

/**
 * Rule 1 on a page of the shipped syllabi's own words: each point with one of its ideas left out. What is left of a few points says the
 * idea too (what drains into a river is an area), so not every one can be partial; more than one in thirty would be generous.
 */
test('a point without one of its ideas is not full', () => {
  const marks = shippedTopics.flatMap(({ topic }) =>
    [0, 1, 2].flatMap((turn) => {
      const left = topic.points.map((point) => {
        const plain = !point.any && !point.steps && !point.equation && point.ideas.length >= 2
        if (!plain) return { plain, says: point.text }
        const kept = point.ideas.filter((_, i) => i !== turn % point.ideas.length)
        return { plain, says: `${kept.map(firstWords).join(' is ')}.` }
      })
      const { points } = mark(topic, left.map(({ says }) => says).join('\n'))
      return points.filter((_, i) => left[i]!.plain)
    }),
  )
  const full = marks.filter(({ outcome }) => outcome === 'full')
  expect(marks.length).toBeGreaterThan(400)
  expect(full.length / marks.length).toBeLessThan(1 / 30)
})

/** The first wording of each part. */
const firstWords = ({ parts }: Idea): string =>
  parts.map(({ wordings }) => wordings[0]!.words.map(({ text }) => text).join(' ')).join(' ')

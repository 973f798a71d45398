/** The marking job as the worker answers it, without a worker. */
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkTimeMs } from '../../../src/lib/recall'
import { readSyllabus, type Topic } from '../../../src/lib/syllabus'
import { newCheck } from '../../../src/lib/components/new-check'
import { answerMark } from '../../../src/workers/answer-mark'

const read = readSyllabus(readFileSync('syllabi/shoreline-science-2.yaml', 'utf8'))
if (!read.ok) throw new Error('The shipped syllabus has a mistake.')
const topic: Topic = read.syllabus.topics[1]!

test('a page comes back marked, and the answer crosses to the page unchanged', () => {
  const answer = answerMark({ topic, text: topic.points[0]!.text })
  expect(answer.ok).toBe(true)
  expect(structuredClone(answer)).toEqual(answer)
})

test('a topic that cannot be read is a fault in words, not a throw', () => {
  const broken = { ...topic, points: undefined } as unknown as Topic
  expect(answerMark({ topic: broken, text: 'waves' })).toEqual({
    ok: false,
    fault: expect.stringMatching(/^The marker could not read this topic \(.+\)\.$/) as string,
  })
})

test('a copy of the topic is marked as the topic, and one with another text as it says', () => {
  const text = topic.points[0]!.text
  const first = answerMark({ topic, text })
  expect(answerMark({ topic: structuredClone(topic), text })).toEqual(first)
  const points = topic.points.map((point) => ({ ...point, ref: `${point.ref}.0` }))
  const other = answerMark({ topic: { ...topic, points }, text })
  expect(other.ok && other.report.points.map(({ ref }) => ref)).toEqual(
    points.map(({ ref }) => ref),
  )
  expect(answerMark({ topic: structuredClone(topic), text })).toEqual(first)
})

test('a marked page makes a check and a page of one id, with the marks in the order of the points', () => {
  const text = topic.points[0]!.text
  const answer = answerMark({ topic, text })
  if (!answer.ok) throw new Error(answer.fault)
  const draft = {
    schema: 1 as const,
    syllabusId: 'shores',
    topicId: topic.id,
    text,
    startedAtMs: 1,
    savedAtMs: 2,
    writingMs: 300_000,
    pastes: [{ atMs: 2, length: 5 }],
  }
  const now = { nowMs: Date.parse('2027-03-10T12:00:00Z'), zone: 'Europe/London' }
  const { check, page } = newCheck({ draft, topic, report: answer.report, earlier: [], now })
  expect(check.id).toMatch(/^[0-9a-f]{32}$/)
  expect(page).toMatchObject({ id: check.id, text, topic, report: answer.report })
  expect(check.marks.map(({ ref }) => ref)).toEqual(topic.points.map(({ ref }) => ref))
  expect(check).toMatchObject({ atMs: now.nowMs, writingMs: 300_000, pastes: draft.pastes })

  const again = newCheck({ draft, topic, report: answer.report, earlier: [check], now })
  expect(again.check.id).not.toBe(check.id)
  expect(again.check.atMs).toBe(checkTimeMs([check], now))
})

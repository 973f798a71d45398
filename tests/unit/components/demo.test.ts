/** The invented pupil's pages, marked by the real marker: every status is to be seen, and nothing is of the future. */
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { demoHistory } from '../../../src/lib/components/demo/history'
import { demoJobs, demoRecords } from '../../../src/lib/components/demo/records'
import { mark } from '../../../src/lib/marking'
import {
  dayAt,
  dayOf,
  daysBetween,
  defaultSettings,
  isDemoId,
  whatFirst,
  type Now,
} from '../../../src/lib/recall'
import { readSyllabus } from '../../../src/lib/syllabus'

const read = readSyllabus(readFileSync('syllabi/shoreline-science-2.yaml', 'utf8'))
if (!read.ok) throw new Error('The shipped syllabus cannot be read.')
const { syllabus } = read
const marked = demoJobs(demoHistory, syllabus).map((job) => ({
  job,
  report: mark(job.topic, job.text),
}))
const at = (instant: string, zone: string): Now => ({ nowMs: Date.parse(instant), zone })
const records = (now: Now) => demoRecords(demoHistory, syllabus, marked, now)

describe.each([
  at('2027-03-10T16:00:00Z', 'Europe/London'),
  // Just after midnight, on the other side of a change to summer time.
  at('2027-04-01T00:05:00Z', 'Europe/London'),
  at('2027-11-10T09:30:00Z', 'America/New_York'),
])('loaded at $nowMs in $zone', (now) => {
  const demo = records(now)
  const checks = demo.checks.map(({ check }) => check)

  test('every id is marked as the demo’s, and none comes twice', () => {
    const ids = checks.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    const all = [
      ...ids,
      demo.syllabus.id,
      ...[...checks, ...demo.papers, ...demo.exams, ...demo.ratings].map(
        ({ syllabusId }) => syllabusId,
      ),
      ...demo.papers.map(({ id }) => id),
    ]
    expect(all.filter((id) => !isDemoId(id))).toEqual([])
  })

  test('about three months, on the days that were meant, never after now', () => {
    const today = dayAt(now.nowMs, now.zone)
    expect(checks.map((check) => daysBetween(dayOf(check), today))).toEqual(
      marked.map(({ job }) => job.page.daysAgo),
    )
    expect(Math.max(...marked.map(({ job }) => job.page.daysAgo))).toBeGreaterThan(80)
    expect(Math.max(...checks.map(({ atMs }) => atMs))).toBeLessThanOrEqual(now.nowMs)
    expect(demo.exams.every(({ day }) => day > today)).toBe(true)
  })

  test('every status is to be seen', () => {
    const settings = { ...defaultSettings, exams: demo.exams, ratings: demo.ratings }
    const topics = syllabus.topics.map(({ id }) => ({
      syllabusId: demo.syllabus.id,
      topicId: id,
    }))
    const plans = whatFirst(topics, checks, settings, now)
    const statusOf = Object.fromEntries(
      plans.map(({ topic, status }) => [topic.topicId, status.status]),
    )
    expect(statusOf).toEqual({
      'waves-and-tides': 'finished',
      'longshore-drift': 'reopened',
      'rocks-of-the-shore': 'full',
      'weathering-and-cliffs': 'gaps',
      'sea-water-and-salt': 'full',
      'life-between-the-tides': 'gaps',
      'measuring-the-shore': 'gaps',
      'water-on-the-move-rivers-to-the-sea': 'not checked',
    })
    expect(plans.some(({ gapsToday }) => gapsToday.length > 0)).toBe(true)
  })
})

test('every kind of mark and of record is there', () => {
  const { checks, papers } = records(at('2027-03-10T16:00:00Z', 'UTC'))
  const outcomes = new Set(checks.flatMap(({ check }) => check.marks.map((m) => m.outcome)))
  expect([...outcomes].sort()).toEqual(['contradicted', 'full', 'missed', 'partial'])
  expect(checks.length).toBeGreaterThanOrEqual(25)
  expect(checks.some(({ check }) => check.kind === 'gap')).toBe(true)
  expect(checks.some(({ check }) => check.changes.length > 0)).toBe(true)
  expect(checks.some(({ check }) => check.pastes.length > 0)).toBe(true)
  expect(papers.length).toBeGreaterThan(1)
})

test('the points that papers, changes and gap checks name are in the syllabus', () => {
  const refs = new Map(
    syllabus.topics.map(({ id, points }) => [id, new Set(points.map(({ ref }) => ref))]),
  )
  const named = [
    ...demoHistory.papers.flatMap(({ topicId, points }) => points.map(({ ref }) => [topicId, ref])),
    ...demoHistory.topics.flatMap(({ topicId, pages }) =>
      pages
        .flatMap(({ gapsOf = [], changed = {} }) => [...gapsOf, ...Object.keys(changed)])
        .map((ref) => [topicId, ref]),
    ),
    ...[...demoHistory.exams.flatMap(({ topicIds }) => topicIds)].map((id) => [id, undefined]),
    ...demoHistory.ratings.map(({ topicId }) => [topicId, undefined]),
  ]
  for (const [topicId = '', ref] of named) {
    expect(refs.has(topicId), topicId).toBe(true)
    if (ref !== undefined) expect(refs.get(topicId)?.has(ref), ref).toBe(true)
  }
})

import { describe, expect, test } from 'vitest'
import { defaultSettings, whatFirst, type Check, type Settings } from '../../../src/lib/recall'
import { firstReason, inUse, standingRow } from '../../../src/lib/view/today'

const topic = { syllabusId: 'shores', topicId: 'drift' }
const today = '2027-03-10'
const now = { nowMs: Date.parse(`${today}T16:00:00Z`), zone: 'UTC' }

/** A check of two points on a day, of which so many were full. */
const check = (day: string, full: 0 | 1 | 2): Check => ({
  schema: 1,
  id: day,
  kind: 'check',
  ...topic,
  topicTitle: 'Longshore drift',
  atMs: Date.parse(`${day}T12:00:00Z`),
  zone: 'UTC',
  marks: [
    { ref: '1', outcome: full > 0 ? 'full' : 'missed' },
    { ref: '2', outcome: full > 1 ? 'full' : 'missed' },
  ],
  changes: [],
  marker: '1',
  writingMs: 0,
  words: 0,
  pastes: [],
})

const first = (checks: Check[], settings: Partial<Settings> = {}) =>
  whatFirst([topic], checks, { ...defaultSettings, ...settings }, now)[0]!

const exam = (day: string): Partial<Settings> => ({ exams: [{ syllabusId: 'shores', day }] })

describe('why a topic comes first', () => {
  test.each([
    { why: 'never checked', checks: [], says: 'Not checked yet.' },
    {
      why: 'never checked, rated',
      checks: [],
      settings: { ratings: [{ ...topic, rating: 'hard' as const }] },
      says: 'Not checked yet. You find it hard.',
    },
    {
      why: 'an exam ahead',
      checks: [],
      settings: exam('2027-03-22'),
      says: 'Not checked yet. The exam is in 12 days.',
    },
    {
      why: 'the exam tomorrow',
      checks: [],
      settings: exam('2027-03-11'),
      says: 'Not checked yet. The exam is tomorrow.',
    },
    {
      why: 'due the day after gaps',
      checks: [check('2027-03-09', 1)],
      says: 'Due today. The last check had 1 of 2 points full.',
    },
    {
      why: 'due yesterday',
      checks: [check('2027-03-08', 0)],
      says: 'Due since yesterday. The last check had 0 of 2 points full.',
    },
    {
      why: 'long overdue',
      checks: [check('2027-03-01', 0)],
      says: 'Due for 8 days. The last check had 0 of 2 points full.',
    },
    {
      why: 'checked today: nothing is due',
      checks: [check(today, 1)],
      says: 'Nothing is due today. The next is this, tomorrow. The last check had 1 of 2 points full.',
    },
    {
      why: 'finished once, and not full since',
      checks: [
        check('2027-02-01', 2),
        check('2027-02-05', 2),
        check('2027-02-09', 2),
        check('2027-03-09', 1),
      ],
      says: 'Due today. It was finished once; the last check had 1 of 2 points full.',
    },
    {
      why: 'no day left before the exam',
      checks: [check(today, 1)],
      settings: exam('2027-03-11'),
      says: 'The exam is tomorrow: no day is left for a check. The last check had 1 of 2 points full.',
    },
  ])('$why', ({ checks, settings, says }) => {
    expect(firstReason(first(checks, settings), today)).toBe(says)
  })
})

describe('how a topic stands in the list', () => {
  test('not checked: nothing is said of a recall or a date', () => {
    expect(standingRow(first([]), today)).toEqual({ status: 'Not checked yet', next: '' })
  })

  test('with gaps: the latest recall and the next date', () => {
    const row = standingRow(first([check('2027-03-08', 2), check('2027-03-09', 1)]), today)
    expect(row).toMatchObject({ status: 'Gaps', latest: '1 of 2 points' })
    expect(row.next).toMatch(/today/)
  })
})

describe('the syllabi that somebody works with', () => {
  const example = { id: 'example', shipped: true }
  const other = { id: 'other', shipped: true }
  const own = { id: 'own', shipped: false }
  test.each([
    {
      why: 'a first visit: all',
      syllabi: [example, other],
      checked: [],
      used: ['example', 'other'],
    },
    { why: 'an own one: no examples', syllabi: [example, own], checked: [], used: ['own'] },
    {
      why: 'an example that was checked stays',
      syllabi: [example, other, own],
      checked: ['other'],
      used: ['other', 'own'],
    },
    {
      why: 'checks of a syllabus that was removed change nothing',
      syllabi: [example, other],
      checked: ['gone'],
      used: ['example', 'other'],
    },
  ])('$why', ({ syllabi, checked, used }) => {
    const checks = checked.map((syllabusId) => ({ syllabusId }))
    expect(inUse(syllabi, checks).map(({ id }) => id)).toEqual(used)
  })
})

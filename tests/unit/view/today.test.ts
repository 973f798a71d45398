import { describe, expect, test } from 'vitest'
import { defaultSettings, whatFirst, type Check, type Settings } from '../../../src/lib/recall'
import {
  firstReason,
  loadSentence,
  rowReason,
  standingRow,
  todayParts,
} from '../../../src/lib/view/today'

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

test('in a list what comes later has its day in front', () => {
  const plan = first([check(today, 1)])
  expect(rowReason(plan, today)).toBe('Tomorrow. The last check had 1 of 2 points full.')
  const due = first([check('2027-03-09', 1)])
  expect(rowReason(due, today)).toBe(firstReason(due, today))
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

describe('the parts of the day', () => {
  const names = ['late', 'due', 'new', 'other-new', 'later', 'soon']
  const topics = names.map((topicId) => ({ syllabusId: 'shores', topicId }))
  const on = (topicId: string, day: string, full: 0 | 1 | 2) => ({
    ...check(day, full),
    id: `${topicId} ${day}`,
    topicId,
  })
  const history = [
    on('late', '2027-03-02', 1),
    on('due', '2027-03-09', 1),
    on('soon', today, 1),
    on('later', '2027-03-05', 2),
    on('later', today, 2),
  ]
  const parts = (checks: Check[], some = topics, settings: Partial<Settings> = {}) =>
    todayParts(whatFirst(some, checks, { ...defaultSettings, ...settings }, now))
  const ids = (plans: readonly { topic: { topicId: string } }[]) =>
    plans.map(({ topic: { topicId } }) => topicId)

  test('due before not checked before later; the first stands apart', () => {
    const { first: top, due, fresh, later, noDayLeft, allFinished } = parts(history)
    expect(top?.topic.topicId).toBe('late')
    expect(ids(due)).toEqual(['due'])
    expect(ids(fresh)).toEqual(['new', 'other-new'])
    expect(ids(later)).toEqual(['soon', 'later'])
    expect([noDayLeft, allFinished]).toEqual([[], false])
  })

  test('nothing due: the first not checked leads, and none stands twice', () => {
    const some = topics.filter(({ topicId }) => !['late', 'due'].includes(topicId))
    const { first: top, due, fresh } = parts(history, some)
    expect(top?.topic.topicId).toBe('new')
    expect([ids(due), ids(fresh)]).toEqual([[], ['other-new']])
  })

  test('nothing due and everything checked: nothing leads', () => {
    const some = topics.filter(({ topicId }) => ['later', 'soon'].includes(topicId))
    expect(parts(history, some)).toMatchObject({ first: undefined, allFinished: false })
  })

  test('all finished, nothing due', () => {
    const done = ['2027-02-20', '2027-02-27', '2027-03-09'].map((day) => on('late', day, 2))
    const some = [topics[0]!]
    expect(parts(done, some)).toMatchObject({ first: undefined, allFinished: true })
  })

  test('no topics at all are not finished', () => {
    expect(parts([], [])).toMatchObject({ first: undefined, allFinished: false })
  })

  test('the exam is tomorrow: what was checked today has no day left', () => {
    const { noDayLeft } = parts(history, topics, exam('2027-03-11'))
    expect(ids(noDayLeft)).toEqual(expect.arrayContaining(['soon', 'later']))
  })
})

describe('how much is due', () => {
  test.each([
    { due: [], minutes: 30, says: '' },
    { due: [12], minutes: 30, says: '1 topic is due: about 12 minutes in all.' },
    { due: [12, 18], minutes: 30, says: '2 topics are due: about 30 minutes in all.' },
    {
      due: [50, 40],
      minutes: 30,
      says: '2 topics are due: about 1 hour 30 minutes in all. You give 30 minutes a day, so take them in this order; the rest keeps its place.',
    },
  ])('$due', ({ due, minutes, says }) => expect(loadSentence(due, minutes)).toBe(says))
})

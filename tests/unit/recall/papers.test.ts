/** Exam questions: what may be logged, and what the log adds up to. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  byPaper,
  emptyEntry,
  emptyRow,
  entryOf,
  lossesOf,
  marksOf,
  marksOverTime,
  pointsLost,
  readEntry,
  tonight,
  topicMarks,
  WAYS_WRONG,
  type PaperQuestion,
  type PaperRow,
} from '../../../src/lib/recall'

const TODAY = '2027-03-10'

const question = (more: Partial<PaperQuestion> = {}): PaperQuestion => ({
  schema: 1,
  id: 'a',
  syllabusId: 'shores',
  topicId: 'drift',
  day: '2027-03-05',
  source: 'Harbour mock',
  marksWon: 2,
  marksOutOf: 4,
  points: [{ ref: '2.3', lost: true }],
  ...more,
})

const row = (more: Partial<PaperRow> = {}): PaperRow => ({
  ...emptyRow('k', { syllabusId: 'shores', topicId: 'drift' }),
  won: '2',
  outOf: '4',
  ...more,
})

const read = (rows: PaperRow[], more: { day?: string; source?: string } = {}) =>
  readEntry({ ...emptyEntry(TODAY, 'k'), source: 'Harbour mock', ...more, rows }, TODAY)

describe('an entry', () => {
  test.each([
    { won: '3', outOf: '5', gives: [3, 5], why: 'whole marks' },
    { won: '2.5', outOf: '4', gives: [2.5, 4], why: 'half marks' },
    { won: '2,5', outOf: '4', gives: [2.5, 4], why: 'a comma is a point' },
    { won: '2½', outOf: '4', gives: [2.5, 4], why: 'the sign for a half' },
    { won: ' 0 ', outOf: '4', gives: [0, 4], why: 'nothing won, blanks around' },
    { won: '0.50', outOf: '1', gives: [0.5, 1], why: 'a zero too many' },
  ])('$why: $won of $outOf', ({ won, outOf, gives }) => {
    const result = read([row({ won, outOf })])
    expect(result.ok && result.papers.map((p) => [p.marksWon, p.marksOutOf])).toEqual([gives])
  })

  test.each([
    { change: { won: '5' }, field: 'won', why: 'more won than there are' },
    { change: { won: '' }, field: 'won', why: 'no marks won' },
    { change: { won: 'three' }, field: 'won', why: 'a word' },
    { change: { won: '-1' }, field: 'won', why: 'below nothing' },
    { change: { won: '2.3' }, field: 'won', why: 'neither whole nor half' },
    { change: { won: '1e2', outOf: '400' }, field: 'won', why: 'a power of ten' },
    { change: { outOf: '' }, field: 'outOf', why: 'no marks to win' },
    { change: { outOf: '501' }, field: 'outOf', why: 'a slip of the finger' },
    { change: { won: '0', outOf: '0' }, field: 'outOf', why: 'nothing to win' },
    { change: { topicId: '' }, field: 'topic', why: 'no topic' },
    {
      change: { won: '4', points: [{ ref: '2.3', lost: true }] },
      field: 'points',
      why: 'every mark won and a point that lost one',
    },
  ])('is told at $field: $why', ({ change, field }) => {
    const result = read([row(change)])
    expect(result.ok ? [] : result.faults.map((fault) => [fault.row, fault.field])).toEqual([
      ['k', field],
    ])
  })

  test.each([
    { more: { day: '' }, field: 'day' },
    { more: { day: '2027-02-30' }, field: 'day' },
    { more: { day: '2027-03-11' }, field: 'day' },
    { more: { source: '  ' }, field: 'source' },
  ])('what all its questions share is told once: $more', ({ more, field }) => {
    const result = read([row(), row({ key: 'm' })], more)
    expect(result.ok ? [] : result.faults.map((fault) => fault.field)).toEqual([field])
  })

  test('a question with nothing in it is passed over; an entry with nothing at all is told', () => {
    const result = read([row(), emptyRow('m', { syllabusId: 'shores', topicId: 'drift' })])
    expect(result.ok && result.papers.map(({ id }) => id)).toEqual(['k'])
    expect(readEntry(emptyEntry(TODAY, 'k'), TODAY).ok).toBe(false)
  })

  test('what went wrong is dropped where every mark was won', () => {
    const result = read([row({ won: '4', wentWrong: ['misread'], note: 'Read it twice.' })])
    expect(result.ok && result.papers[0]).toMatchObject({ note: 'Read it twice.' })
    expect(result.ok && result.papers[0]).not.toHaveProperty('wentWrong')
  })

  test('a logged question that is opened and kept unchanged is the same', () => {
    const logged = question({ question: '3 (b)', wentWrong: ['left-out'], note: 'I knew it.' })
    expect(readEntry(entryOf(logged), TODAY)).toEqual({ ok: true, papers: [logged] })
  })
})

test('a point that was edited since is told by its ref of today, or not at all', () => {
  const logged = question({
    points: [
      { ref: '2.3', lost: true },
      { ref: '2.4', lost: true },
    ],
    edited: [
      { ref: '2.3', now: '2.9' },
      { ref: '2.4', now: null },
    ],
  })
  expect(pointsLost([logged]).map(({ ref }) => ref)).toEqual(['2.9'])
  const again = readEntry(entryOf(logged), TODAY)
  expect(again.ok && again.papers[0]).toMatchObject({ points: [{ ref: '2.9', lost: true }] })
  expect(again.ok && again.papers[0]).not.toHaveProperty('edited')
})

const questions = fc.array(
  fc
    .record({
      id: fc.uuid(),
      topicId: fc.constantFrom('drift', 'rocks', 'tides'),
      syllabusId: fc.constantFrom('shores', 'trade'),
      day: fc.constantFrom('2026-12-31', '2027-01-01', '2027-02-14', '2027-03-05'),
      halves: fc.tuple(fc.nat(40), fc.integer({ min: 1, max: 40 })),
      points: fc.array(fc.record({ ref: fc.constantFrom('1', '2', '10'), lost: fc.boolean() }), {
        maxLength: 3,
      }),
      wentWrong: fc.uniqueArray(fc.constantFrom(...WAYS_WRONG)),
    })
    .map(({ halves: [a, b], ...rest }) =>
      question({ ...rest, marksWon: Math.min(a, b) / 2, marksOutOf: b / 2 }),
    ),
  { maxLength: 60 },
)

const total = (marks: readonly number[]) => marks.reduce((sum, mark) => sum + mark, 0)

describe('totals', () => {
  test('by topic they add up to the whole, and each loss is what was not won', () => {
    fc.assert(
      fc.property(questions, (papers) => {
        const topics = topicMarks(papers)
        const all = marksOf(papers)
        for (const part of ['won', 'outOf', 'lost', 'questions'] as const)
          expect(total(topics.map((topic) => topic[part]))).toBe(all[part])
        expect(all.won + all.lost).toBe(all.outOf)
      }),
    )
  })

  test('over time they add up to those of the topic', () => {
    fc.assert(
      fc.property(questions, fc.constantFrom(4, 7, 10), (papers, length) => {
        const { stretches, topics } = marksOverTime(papers, (day) => day.slice(0, length))
        const byTopic = topicMarks(papers)
        expect(topics.map(({ topicId, syllabusId }) => [syllabusId, topicId])).toEqual(
          byTopic.map(({ topicId, syllabusId }) => [syllabusId, topicId]),
        )
        topics.forEach(({ marks }, i) => {
          expect(marks).toHaveLength(stretches.length)
          expect(total(marks.map((one) => one?.lost ?? 0))).toBe(byTopic[i]!.lost)
        })
      }),
    )
  })

  test('do not depend on the order of the log', () => {
    fc.assert(
      fc.property(questions, (papers) => {
        const other = [...papers].reverse()
        expect(topicMarks(other)).toEqual(topicMarks(papers))
        expect(pointsLost(other)).toEqual(pointsLost(papers))
        expect([...other].sort(byPaper).map(({ id }) => id)).toEqual(
          [...papers].sort(byPaper).map(({ id }) => id),
        )
      }),
    )
  })

  test('the topic that lost most comes first; of equals the one that won the smaller share', () => {
    const papers = [
      question({ topicId: 'tides', marksWon: 8, marksOutOf: 10 }),
      question({ topicId: 'rocks', marksWon: 1, marksOutOf: 3 }),
      question({ topicId: 'drift', marksWon: 0, marksOutOf: 3 }),
    ]
    expect(topicMarks(papers).map(({ topicId }) => topicId)).toEqual(['drift', 'rocks', 'tides'])
  })

  test('ways of going wrong are counted where a mark was lost, two of one question in both', () => {
    const papers = [
      question({ wentWrong: ['misread', 'working'] }),
      question({ wentWrong: ['misread'] }),
      question(),
      question({ marksWon: 4, wentWrong: ['not-known'], points: [] }),
    ]
    const { ways, unsaid, questions: losing } = lossesOf(papers)
    expect(Object.fromEntries(ways.map(({ way, questions: n }) => [way, n]))).toEqual({
      'not-known': 0,
      'left-out': 0,
      misread: 2,
      working: 1,
    })
    expect([unsaid, losing]).toEqual([1, 3])
  })

  test('an empty log has nothing in it', () => {
    expect(marksOf([])).toEqual({ won: 0, outOf: 0, lost: 0, questions: 0 })
    expect(topicMarks([])).toEqual([])
    expect(marksOverTime([], (day) => day)).toEqual({ stretches: [], topics: [] })
    expect(pointsLost([])).toEqual([])
  })
})

test('question 2 stands before question 10, the latest paper first', () => {
  const papers = [
    question({ id: 'x', question: '10' }),
    question({ id: 'y', question: '2' }),
    question({ id: 'z', day: '2027-03-06', question: '1' }),
  ]
  expect(papers.sort(byPaper).map(({ id }) => id)).toEqual(['z', 'y', 'x'])
})

test('what is logged with a lost point is on tonight’s list, before what was never seen', () => {
  const result = read([
    row({
      points: [
        { ref: '2.3', lost: true },
        { ref: '2.2', lost: false },
      ],
    }),
  ])
  const papers = result.ok ? result.papers : []
  const list = tonight({
    topics: [{ syllabusId: 'shores', topicId: 'drift', refs: ['2.1', '2.2', '2.3'] }],
    checks: [],
    papers,
    minutes: 60,
    secondsPerPoint: 90,
    now: { nowMs: Date.parse('2027-03-10T20:00:00Z'), zone: 'UTC' },
  })
  expect(list.points.map(({ ref, why }) => [ref, why.rule])).toEqual([
    ['2.3', 'not-full'],
    ['2.1', 'never-seen'],
    ['2.2', 'never-seen'],
  ])
})

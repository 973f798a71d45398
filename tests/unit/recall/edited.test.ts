import { describe, expect, test } from 'vitest'
import { openGaps, pointHistories, sessionsOf, recallOf } from '../../../src/lib/recall'
import { gridOf } from '../../../src/lib/view/history'
import { check } from './histories'

const MARCH_1 = '2027-03-01T12:00:00Z'
const MARCH_5 = '2027-03-05T12:00:00Z'
const outcomes = (histories: ReturnType<typeof pointHistories>) =>
  Object.fromEntries([...histories].map(([ref, seen]) => [ref, seen.map((one) => one.outcome)]))

describe('the history of a point that was edited', () => {
  const rows = [
    {
      why: 'nothing was edited',
      edited: undefined,
      is: { '1.1': ['full', 'full'], '1.2': ['missed', 'full'] },
    },
    {
      why: 'one means something else: it begins anew',
      edited: [{ ref: '1.2', now: null }],
      is: { '1.1': ['full', 'full'], '1.2': ['full'] },
    },
    {
      why: 'one was renumbered: it goes on',
      edited: [{ ref: '1.2', now: '1.7' }],
      is: { '1.1': ['full', 'full'], '1.7': ['missed'], '1.2': ['full'] },
    },
    {
      why: 'two exchanged their numbers',
      edited: [
        { ref: '1.1', now: '1.2' },
        { ref: '1.2', now: '1.1' },
      ],
      is: { '1.2': ['full', 'full'], '1.1': ['missed', 'full'] },
    },
  ]
  test.each(rows)('$why', ({ edited, is }) => {
    const old = check(MARCH_1, 'fm', edited ? { edited } : {})
    expect(outcomes(pointHistories([old, check(MARCH_5, 'ff')]))).toEqual(is)
  })

  test('a gap of a point that begins anew is no gap any more', () => {
    expect(openGaps([check(MARCH_1, 'fm')])).toEqual(['1.2'])
    expect(openGaps([check(MARCH_1, 'fm', { edited: [{ ref: '1.2', now: null }] })])).toEqual([])
  })
})

describe('a mark lost on a paper', () => {
  const paper = {
    schema: 1 as const,
    id: 'p',
    syllabusId: 'shores',
    topicId: 'drift',
    day: '2027-03-02',
    source: 'Summer paper, question 3',
    marksWon: 1,
    marksOutOf: 2,
    points: [{ ref: '1.2', lost: true }],
  }
  test.each([
    { why: 'goes with its point to its new number', now: '1.7', refs: ['1.7'] },
    { why: 'is left out once the point means something else', now: null, refs: [] },
  ])('$why', ({ now, refs }) => {
    const edited = [{ ref: '1.2', now }]
    expect([...pointHistories([], [{ ...paper, edited }]).keys()]).toEqual(refs)
  })
})

test('the check itself stays as it was marked: its recall counts what was asked then', () => {
  const old = check(MARCH_1, 'fm', { edited: [{ ref: '1.1', now: null }] })
  expect(recallOf(old)).toEqual(recallOf(check(MARCH_1, 'fm')))
})

test('in the grid a session has no mark of a point that meant something else then', () => {
  const old = check(MARCH_1, 'fm', { edited: [{ ref: '1.2', now: null }] })
  expect(gridOf(sessionsOf([old, check(MARCH_5, 'ff')])).rows).toEqual([
    { ref: '1.1', cells: ['full', 'full'] },
    { ref: '1.2', cells: [undefined, 'full'] },
  ])
})

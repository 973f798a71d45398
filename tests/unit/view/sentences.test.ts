import { describe, expect, test } from 'vitest'
import { explainStatus, nextDate, recallOf, sessionsOf } from '../../../src/lib/recall'
import { dayFrom, shortDay, timeWords } from '../../../src/lib/view/dates'
import {
  changesLine,
  nextReason,
  nextSentence,
  scoreLine,
  statusSentence,
  writingFacts,
} from '../../../src/lib/view/sentences'
import { durationWords, listed } from '../../../src/lib/view/words'
import { check, history, settings } from '../recall/histories'

describe('scoreLine', () => {
  test.each([
    {
      marks: 'fffffffffppmmc',
      says: '9 of 14 points full; 2 part said; 2 missed; 1 says the opposite.',
    },
    { marks: 'fcc', says: '1 of 3 points full; 2 say the opposite.' },
    { marks: 'fff', says: '3 of 3 points full.' },
    { marks: 'm', says: '0 of 1 point full; 1 missed.' },
    { marks: '', says: 'No points were checked.' },
  ])('$marks: $says', ({ marks, says }) => {
    expect(scoreLine(recallOf(check('2027-03-02T12:00:00Z', marks)))).toBe(says)
  })
})

describe('what is said of the writing', () => {
  test.each([
    { pastes: [], says: '80 words in 5 minutes. Nothing was pasted.' },
    { pastes: [{ atMs: 1, length: 1 }], says: '80 words in 5 minutes. 1 paste, 1 character.' },
    {
      pastes: [
        { atMs: 1, length: 900 },
        { atMs: 2, length: 340 },
      ],
      says: '80 words in 5 minutes. 2 pastes, 1,240 characters.',
    },
  ])('$says', ({ pastes, says }) => {
    expect(writingFacts(check('2027-03-02T12:00:00Z', 'f', { pastes }))).toBe(says)
  })

  test.each([
    [0, 'less than a minute'],
    [60_000, '1 minute'],
    [3_600_000, '1 hour'],
    [7_500_000, '2 hours 5 minutes'],
  ])('%i ms is %s', (ms, says) => expect(durationWords(ms)).toBe(says))
})

describe('changed marks', () => {
  const changed = (outcome: 'full' | 'missed' | null) =>
    check('2027-03-02T12:00:00Z', 'fm', {
      changes: [{ ref: '1.2', outcome, by: 'student', atMs: 1 }],
    })
  test.each([
    { outcome: 'full', says: 'With 1 mark changed. The marker alone gave 1 of 2 points.' },
    { outcome: 'missed', says: '', why: 'the same mark is no change' },
    { outcome: null, says: '' },
  ] as const)('$outcome: $says', ({ outcome, says }) => {
    expect(changesLine(changed(outcome))).toBe(says)
  })
})

describe('days', () => {
  test.each([
    ['2027-03-02', 'today'],
    ['2027-03-03', 'tomorrow'],
    ['2027-03-01', 'yesterday'],
    ['2027-03-09', 'Tuesday 9 March, in 7 days'],
    ['2027-03-31', 'Wednesday 31 March, in 29 days'],
    ['2026-12-31', 'Thursday 31 December 2026, 61 days ago'],
  ])('%s seen from 2 March 2027 is %s', (day, says) => {
    expect(dayFrom(day, '2027-03-02')).toBe(says)
  })
  test('the year only where it is another', () => {
    expect([shortDay('2027-05-01', '2027-03-02'), shortDay('2028-05-01', '2027-03-02')]).toEqual([
      '1 May',
      '1 May 2028',
    ])
  })
  test.each([
    ['Asia/Tokyo', '01:40'],
    ['UTC', '16:40'],
    ['Not/AZone', '16:40'],
  ])('16:40 UTC in %s is %s', (zone, says) => {
    expect(timeWords(Date.parse('2027-03-02T16:40:00Z'), zone)).toBe(says)
  })
})

describe('status and the next date, with the rule that gave them', () => {
  const today = '2027-03-20'
  test.each([
    { line: '', status: 'There is no check', next: 'Check it once', rule: 'A date follows' },
    {
      line: '03-20 gaps',
      status: 'The latest check, today, had 1 of 2 points full.',
      next: 'The gaps again today. The next check is tomorrow.',
      rule: 'After a check with gaps',
    },
    {
      line: '03-12 gaps',
      status: 'had 1 of 2 points full',
      next: 'The next check was due Saturday 13 March, 7 days ago.',
      rule: 'After a check with gaps',
    },
    {
      line: '03-19 full',
      status: '2 more full days, the last on 26 March at the earliest',
      next: 'The next check is today.',
      rule: '1, 3, 7, 16, then 35',
    },
    {
      line: '03-01 full, 03-05 full, 03-19 full',
      status: 'Every point on 3 days in a row, from 1 March to 19 March.',
      next: 'The next check is Friday 26 March, in 6 days.',
      rule: 'After 3 full days in a row the next check comes after 7 days',
    },
    {
      line: '03-01 full, 03-05 full, 03-09 full, 03-20 gaps',
      status: 'It was finished on 9 March; the check of 20 March had 1 of 2 points full.',
      next: 'The gaps again today.',
      rule: 'After a check with gaps',
    },
  ])('$line', ({ line, status, next, rule }) => {
    const sessions = sessionsOf(history(line))
    expect(statusSentence(explainStatus(sessions, settings()), today)).toContain(status)
    expect(nextSentence(nextDate(sessions), today)).toContain(next)
    expect(nextReason(nextDate(sessions), today)).toContain(rule)
  })

  test('before an exam the share of the days left is told', () => {
    const next = nextDate(sessionsOf(history('03-20 full')), '2027-03-27')
    expect(nextReason(next, today)).toContain('27 March, 7 days after the last check')
    expect(nextReason(next, today)).toContain('about 30 % of those days: 2 days')
  })
  test('no date where the exam is the next day', () => {
    const next = nextDate(sessionsOf(history('03-20 full')), '2027-03-21')
    expect(nextSentence(next, today)).toBe('No day is left before the exam.')
  })
})

test.each([
  [[], ''],
  [['a'], 'a'],
  [['a', 'b', 'c'], 'a, b and c'],
])('%j listed', (items, says) => expect(listed(items)).toBe(says))

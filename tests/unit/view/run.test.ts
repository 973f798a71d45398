import { describe, expect, test } from 'vitest'
import { explainStatus, sessionsOf } from '../../../src/lib/recall'
import { daysWords, runSentence } from '../../../src/lib/view/run'
import { history, settings } from '../recall/histories'

const today = '2027-05-20'
const said = (line: string, more: Parameters<typeof settings>[0] = {}) => {
  const sessions = sessionsOf(history(line))
  const rule = settings(more)
  return runSentence(sessions, explainStatus(sessions, rule), rule, today)
}

const RULE =
  'It is finished by 3 full checks in a row on different days, the last at least 7 days after the first.'

describe('the run towards finished in plain words', () => {
  test.each([
    { line: '', says: RULE },
    { line: '03-03 gaps', says: RULE },
    {
      line: '03-03 full, 03-06 full',
      says: 'Full on 3 and 6 March; once more on or after the 10th and it is finished.',
    },
    {
      line: '03-03 gaps, 03-04 full',
      says: 'Full on 4 March; twice more, the last on or after the 11th, and it is finished.',
    },
    {
      line: '03-29 full, 03-31 full',
      says: 'Full on 29 and 31 March; once more on or after 5 April and it is finished.',
    },
    {
      line: '03-01 full, 03-02 full, 03-03 full',
      says: 'Full on 1, 2 and 3 March; once more on or after the 8th and it is finished.',
    },
    {
      line: '02-27 full, 03-03 full, 03-09 full',
      says: 'Full on 27 February, 3 and 9 March: that finished it.',
    },
    {
      line: '03-03 full, 03-06 full, 03-08 gaps',
      says: `Full on 3 and 6 March, then not on 8 March: the run starts again. ${RULE}`,
    },
    { line: '03-08 gaps, 03-09 gaps', says: RULE },
    {
      line: '03-01 full, 03-05 full, 03-09 full, 03-20 gaps',
      says: `Full on 1, 5 and 9 March, then not on 20 March: the run starts again. ${RULE}`,
    },
    {
      line: '03-01 full, 03-05 full, 03-09 full, 03-20 full, 04-20 full',
      says: 'Full on 5 days in a row, from 1 March to 20 April: that finished it.',
    },
  ])('$line', ({ line, says }) => expect(said(line)).toBe(says))

  test('follows the student’s own rule', () => {
    expect(said('03-03 full', { sessionsNeeded: 5, daysApart: 0 })).toBe(
      'Full on 3 March; 4 times more, the last on or after the 7th, and it is finished.',
    )
    expect(said('', { sessionsNeeded: 1, daysApart: 0 })).toBe(
      'It is finished by one check with every point.',
    )
    expect(said('', { sessionsNeeded: 2, daysApart: 0 })).toBe(
      'It is finished by 2 full checks in a row on different days.',
    )
  })
})

describe('days in a row of words', () => {
  test.each([
    { days: ['2027-03-22'], says: '22 March' },
    { days: ['2026-12-31', '2027-01-02'], says: '31 December 2026 and 2 January' },
  ])('$says', ({ days, says }) => expect(daysWords(days, today)).toBe(says))

  test.each([
    ['03-14 full, 03-15 full', '21st'],
    ['03-15 full, 03-16 full', '22nd'],
    ['03-16 full, 03-17 full', '23rd'],
    ['03-05 full, 03-06 full', '12th'],
    ['03-04 full, 03-05 full', '11th'],
    ['03-06 full, 03-07 full', '13th'],
    ['03-24 full, 03-25 full', '31st'],
  ])('%s: the %s', (line, ordinal) => expect(said(line)).toContain(`on or after the ${ordinal} `))
})

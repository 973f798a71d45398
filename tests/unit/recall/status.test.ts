import { describe, expect, test } from 'vitest'
import { explainStatus, runOf, sessionsOf, statusOf } from '../../../src/lib/recall'
import { check, history, settings } from './histories'

const GAPS = '03-20 gaps'
const FINISHED = '03-01 full, 03-04 full, 03-08 full'

describe('the status, transition by transition', () => {
  test.each([
    { sessions: '', status: 'not checked' },
    { sessions: '03-01 gaps', status: 'gaps' },
    { sessions: '03-01 full', status: 'full' },
    // from gaps
    { sessions: '03-01 gaps, 03-02 gaps', status: 'gaps' },
    { sessions: '03-01 gaps, 03-02 full', status: 'full' },
    // from full
    { sessions: '03-01 full, 03-02 gaps', status: 'gaps' },
    { sessions: '03-01 full, 03-02 full', status: 'full' },
    { sessions: '03-01 full, 03-02 full, 03-07 full', status: 'full', why: 'three, but 6 days' },
    { sessions: '03-01 full, 03-08 full', status: 'full', why: '7 days, but two' },
    { sessions: FINISHED, status: 'finished', why: 'three, 7 days' },
    { sessions: '03-01 full, 03-02 full, 03-03 full, 03-08 full', status: 'finished', why: 'four' },
    {
      sessions: '03-01 full, 03-02 gaps, 03-05 full, 03-08 full',
      status: 'full',
      why: 'gaps begin the run anew',
    },
    {
      sessions: '03-01 full, 03-02 gaps, 03-05 full, 03-08 full, 03-12 full',
      status: 'finished',
      why: 'a run after gaps',
    },
    // from finished
    { sessions: `${FINISHED}, 03-20 full`, status: 'finished' },
    { sessions: `${FINISHED}, ${GAPS}`, status: 'reopened' },
    // from reopened
    { sessions: `${FINISHED}, ${GAPS}, 03-21 gaps`, status: 'reopened' },
    { sessions: `${FINISHED}, ${GAPS}, 03-21 full`, status: 'full' },
    { sessions: `${FINISHED}, ${GAPS}, 03-21 full, 03-22 gaps`, status: 'reopened' },
    { sessions: `${FINISHED}, ${GAPS}, 03-21 full, 03-24 full, 03-28 full`, status: 'finished' },
  ])('$sessions -> $status $why', ({ sessions, status }) => {
    expect(statusOf(sessionsOf(history(sessions)), settings())).toBe(status)
  })

  test('checks of no points are never full', () => {
    expect(statusOf(sessionsOf([check('2027-03-01T12:00:00Z', '')]), settings())).toBe('gaps')
  })

  test.each([
    { sessionsNeeded: 1, daysApart: 0, sessions: '03-01 full', status: 'finished' },
    { sessionsNeeded: 2, daysApart: 0, sessions: '03-01 full, 03-02 full', status: 'finished' },
    { sessionsNeeded: 4, daysApart: 7, sessions: FINISHED, status: 'full' },
    { sessionsNeeded: 3, daysApart: 8, sessions: FINISHED, status: 'full' },
    { sessionsNeeded: 1, daysApart: 3, sessions: '03-01 full', status: 'full' },
  ])(
    'with $sessionsNeeded sessions and $daysApart days: $status',
    ({ sessions, status, ...rule }) => {
      expect(statusOf(sessionsOf(history(sessions)), rule)).toBe(status)
    },
  )
})

describe('practice on the same day', () => {
  const morning = (day: string, marks: string) => check(`2027-03-${day}T08:00:00Z`, marks)
  const evening = (day: string, marks: string) => check(`2027-03-${day}T20:00:00Z`, marks)

  test('does not mend a session with gaps', () => {
    expect(statusOf(sessionsOf([morning('01', 'fm'), evening('01', 'ff')]), settings())).toBe(
      'gaps',
    )
  })

  test('does not spoil a full one', () => {
    expect(statusOf(sessionsOf([morning('01', 'ff'), evening('01', 'fm')]), settings())).toBe(
      'full',
    )
  })

  test('does not lengthen the run', () => {
    const checks = ['01', '08'].flatMap((day) => [morning(day, 'ff'), evening(day, 'ff')])
    expect(runOf(sessionsOf(checks))).toHaveLength(2)
    expect(statusOf(sessionsOf(checks), settings())).toBe('full')
  })
})

describe('the run', () => {
  test.each([
    { sessions: '', run: [] },
    { sessions: '03-01 gaps', run: [] },
    { sessions: '03-01 full, 03-02 gaps', run: [] },
    {
      sessions: '03-01 full, 03-02 gaps, 03-03 full, 03-05 full',
      run: ['2027-03-03', '2027-03-05'],
    },
    { sessions: '03-01 full, 03-02 full', run: ['2027-03-01', '2027-03-02'] },
  ])('of $sessions', ({ sessions, run }) => {
    expect(runOf(sessionsOf(history(sessions))).map(({ day }) => day)).toEqual(run)
  })
})

describe('the reason for a status', () => {
  const explain = (sessions: string) => explainStatus(sessionsOf(history(sessions)), settings())

  test('no check', () => {
    expect(explain('')).toEqual({ status: 'not checked', rule: 'no-check' })
  })

  test('gaps: when, and how much was recalled', () => {
    expect(explain('03-01 gaps')).toEqual({
      status: 'gaps',
      rule: 'latest-not-full',
      day: '2027-03-01',
      recall: { full: 1, partial: 0, missed: 1, contradicted: 0, points: 2 },
    })
  })

  test.each([
    { sessions: '03-01 full', sessionsLeft: 2, finishableFrom: '2027-03-08', why: 'days decide' },
    {
      sessions: '03-01 full, 03-07 full',
      sessionsLeft: 1,
      finishableFrom: '2027-03-08',
      why: 'both',
    },
    {
      sessions: '03-01 full, 03-20 full',
      sessionsLeft: 1,
      finishableFrom: '2027-03-21',
      why: 'sessions decide',
    },
    {
      sessions: '03-01 full, 03-02 full, 03-03 full',
      sessionsLeft: 1,
      finishableFrom: '2027-03-08',
      why: 'enough sessions, too close together',
    },
  ])('full: what is left to finish ($why)', ({ sessions, sessionsLeft, finishableFrom }) => {
    expect(explain(sessions)).toMatchObject({
      status: 'full',
      rule: 'latest-full',
      sessionsLeft,
      finishableFrom,
      sessionsNeeded: 3,
      daysApart: 7,
    })
  })

  test('finished: the run that did it', () => {
    expect(explain(FINISHED)).toEqual({
      status: 'finished',
      rule: 'run-long-enough',
      run: 3,
      firstDay: '2027-03-01',
      lastDay: '2027-03-08',
      sessionsNeeded: 3,
      daysApart: 7,
    })
  })

  test('reopened: when it was finished last, and what came back since', () => {
    const twice = `${FINISHED}, ${GAPS}, 03-21 full, 03-24 full, 03-28 full, 03-30 full, 04-10 gaps`
    expect(explain(twice)).toMatchObject({
      status: 'reopened',
      rule: 'not-full-after-finished',
      finishedOn: '2027-03-28',
      day: '2027-04-10',
      recall: { full: 1, points: 2 },
    })
  })
})

import { describe, expect, test } from 'vitest'
import { addDays, gapShare, nextDate, sessionsOf } from '../../../src/lib/recall'
import { history } from './histories'

const next = (sessions: string, exam?: string) => nextDate(sessionsOf(history(sessions)), exam)

describe('the next date', () => {
  test('nothing checked: none', () => {
    expect(next('', '2027-06-01')).toEqual({
      day: null,
      gapsOn: null,
      why: { rule: 'not-checked' },
    })
  })

  test.each([undefined, '2027-06-01'])(
    'after gaps: the gaps the same day, the topic the next (exam %s)',
    (exam) => {
      expect(next('03-01 full, 03-31 gaps', exam)).toEqual({
        day: '2027-04-01',
        gapsOn: '2027-03-31',
        why: { rule: 'after-gaps', from: '2027-03-31', gapDays: 1 },
      })
    },
  )

  test.each([
    { sessions: '03-01 full', day: '2027-03-02', run: 1, gapDays: 1 },
    { sessions: '03-01 full, 03-02 full', day: '2027-03-05', run: 2, gapDays: 3 },
    { sessions: '03-01 full, 03-02 full, 03-05 full', day: '2027-03-12', run: 3, gapDays: 7 },
    {
      sessions: '03-01 full, 03-02 full, 03-05 full, 03-12 full',
      day: '2027-03-28',
      run: 4,
      gapDays: 16,
    },
    {
      sessions: '03-01 full, 03-02 full, 03-03 full, 03-04 full, 03-05 full',
      day: '2027-04-09',
      run: 5,
      gapDays: 35,
    },
    {
      sessions: '03-01 full, 03-02 full, 03-03 full, 03-04 full, 03-05 full, 03-06 full',
      day: '2027-04-10',
      run: 6,
      gapDays: 35,
    },
    {
      sessions: '03-01 full, 03-02 full, 03-03 gaps, 03-04 full',
      day: '2027-03-05',
      run: 1,
      gapDays: 1,
    },
  ])('no exam, $run full in a row: $gapDays days', ({ sessions, day, run, gapDays }) => {
    const from = `2027-${sessions.slice(-10, -5)}`
    expect(next(sessions)).toEqual({
      day,
      gapsOn: null,
      why: { rule: 'by-run', from, run, gapDays },
    })
  })

  test.each([
    // Worked by hand: share = 0.3 - 0.225 × ln(days ÷ 7) ÷ ln(365 ÷ 7), gap = share × days, rounded.
    { daysLeft: 2, gapDays: 1, why: '0.6 days, at least one' },
    { daysLeft: 3, gapDays: 1, why: '0.9 days' },
    { daysLeft: 5, gapDays: 2, why: '30 % of 5 is 1.5' },
    { daysLeft: 7, gapDays: 2, why: '30 % of 7 is 2.1' },
    { daysLeft: 14, gapDays: 4, why: '26.06 % of 14 is 3.65' },
    { daysLeft: 30, gapDays: 7, why: '21.72 % of 30 is 6.52' },
    { daysLeft: 90, gapDays: 14, why: '15.47 % of 90 is 13.92' },
    { daysLeft: 365, gapDays: 27, why: '7.5 % of 365 is 27.4' },
    { daysLeft: 730, gapDays: 55, why: 'never under 7.5 %' },
  ])('$daysLeft days before the exam: $gapDays days ($why)', ({ daysLeft, gapDays }) => {
    const examDay = addDays('2027-03-01', daysLeft)
    expect(next('03-01 full', examDay)).toMatchObject({
      day: addDays('2027-03-01', gapDays),
      why: { rule: 'share-of-days-left', from: '2027-03-01', examDay, daysLeft, gapDays },
    })
  })

  test.each([
    { exam: '2027-03-02', result: 'full', gapsOn: null, why: 'tomorrow' },
    {
      exam: '2027-03-02',
      result: 'gaps',
      gapsOn: '2027-03-01',
      why: 'tomorrow, with gaps: only those',
    },
    { exam: '2027-03-01', result: 'full', gapsOn: null, why: 'today' },
  ])('no day is left: the exam is $why', ({ exam, result, gapsOn }) => {
    expect(next(`03-01 ${result}`, exam)).toEqual({
      day: null,
      gapsOn,
      why: { rule: 'no-day-before-exam', from: '2027-03-01', examDay: exam },
    })
  })

  test('an exam that was over before the session counts for nothing', () => {
    expect(next('03-01 full', '2027-02-28')).toEqual(next('03-01 full'))
    expect(next('03-01 gaps', '2027-02-28')).toEqual(next('03-01 gaps'))
  })

  test('for every number of days left the date lies after the session and before the exam', () => {
    for (let daysLeft = 2; daysLeft <= 800; daysLeft++) {
      const exam = addDays('2027-03-01', daysLeft)
      const { day } = next('03-01 full', exam)
      expect(day !== null && day > '2027-03-01' && day < exam, `${daysLeft} days left`).toBe(true)
    }
  })

  test('the share never rises and the gap never shrinks by more than rounding as the exam is farther off', () => {
    for (let days = 1; days < 800; days++) {
      expect(gapShare(days + 1), `${days}`).toBeLessThanOrEqual(gapShare(days))
      expect(gapShare(days + 1) * (days + 1), `${days}`).toBeGreaterThan(gapShare(days) * days)
    }
  })
})

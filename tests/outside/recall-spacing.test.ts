/**
 * The recall rules against the two studies that they rest on. The figures are those of the papers' abstracts:
 *
 * - Rawson, K. A. and Dunlosky, J. (2011). Optimizing schedules of retrieval practice for durable and efficient
 *   learning: How much is enough? Journal of Experimental Psychology: General 140(3), 283–302. Its conclusion for
 *   students: recall concepts to an initial criterion of three correct recalls, then relearn them three times at
 *   widely spaced intervals.
 * - Cepeda, N. J., Vul, E., Rohrer, D., Wixted, J. T. and Pashler, H. (2008). Spacing effects in learning: A temporal
 *   ridgeline of optimal retention. Psychological Science 19(11), 1095–1102. As a share of the test delay, the best
 *   gap declined from about 20 to 40 % of a one-week delay to about 5 to 10 % of a one-year delay.
 */
import { describe, expect, test } from 'vitest'
import {
  addDays,
  courseOf,
  daysBetween,
  defaultSettings,
  forecast,
  gapShare,
  nextDate,
  planTopic,
  sessionsOf,
  statusOf,
} from '../../src/lib/recall'
import { history } from '../unit/recall/histories'

describe('Rawson and Dunlosky 2011: three spaced sessions', () => {
  test('a topic is finished by its third full session, not by its second', () => {
    const at = (line: string) => statusOf(sessionsOf(history(line)), defaultSettings)
    expect(at('03-01 full, 03-15 full')).toBe('full')
    expect(at('03-01 full, 03-15 full, 03-29 full')).toBe('finished')
    expect(defaultSettings.sessionsNeeded).toBe(3)
  })

  test('three sessions on three days running are not widely spaced', () => {
    const sessions = sessionsOf(history('03-01 full, 03-02 full, 03-03 full'))
    expect(statusOf(sessions, defaultSettings)).toBe('full')
  })
})

describe('Cepeda et al. 2008: the best gap as a share of the delay', () => {
  test.each([
    { delay: 'one week', days: 7, least: 0.2, most: 0.4 },
    { delay: 'one year', days: 365, least: 0.05, most: 0.1 },
  ])(
    '$delay: $least to $most, before and after rounding to whole days',
    ({ days, least, most }) => {
      const share = gapShare(days)
      expect(share).toBeGreaterThanOrEqual(least)
      expect(share).toBeLessThanOrEqual(most)

      const { day } = nextDate(sessionsOf(history('03-01 full')), addDays('2027-03-01', days))
      const rounded = daysBetween('2027-03-01', day ?? '') / days
      expect(rounded).toBeGreaterThanOrEqual(least)
      expect(rounded).toBeLessThanOrEqual(most)
    },
  )

  test('the plan to an exam a year off begins with gaps of 5 to 10 % of what is left, and a week off of 20 to 40 %', () => {
    const today = '2027-03-01'
    const topic = { syllabusId: 'shores', topicId: 'drift' }
    const gapsTo = (days: number) => {
      const exams = [{ syllabusId: 'shores', day: addDays(today, days) }]
      const plan = planTopic(topic, history('03-01 full'), { ...defaultSettings, exams }, today)
      const planned = [0, ...forecast(courseOf(plan, today), days)]
      return planned.slice(1).map((day, i) => ({
        left: days - (planned[i] ?? 0),
        share: (day - (planned[i] ?? 0)) / (days - (planned[i] ?? 0)),
      }))
    }
    const [first] = gapsTo(365)
    expect(first?.share).toBeGreaterThanOrEqual(0.05)
    expect(first?.share).toBeLessThanOrEqual(0.1)
    const week = gapsTo(365).find(({ left }) => left <= 8 && left >= 6) ?? gapsTo(7)[0]
    expect(week?.share).toBeGreaterThanOrEqual(0.2)
    expect(week?.share).toBeLessThanOrEqual(0.4)
  })

  test('the share falls and the gap grows as the delay grows', () => {
    const delays = [7, 14, 35, 70, 140, 365]
    for (const [i, days] of delays.slice(1).entries()) {
      const shorter = delays[i] ?? 0
      expect(gapShare(days), `${days} days`).toBeLessThan(gapShare(shorter))
      expect(gapShare(days) * days, `${days} days`).toBeGreaterThan(gapShare(shorter) * shorter)
    }
  })
})

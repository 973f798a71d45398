import { describe, expect, test } from 'vitest'
import type { PlannedCheck, PlanWarning, TopicPlace } from '../../../src/lib/recall'
import { fullDaysOf, monthsBetween, monthWords, weeksOf } from '../../../src/lib/view/month'
import { dayLoad, movedWords, warningSentence } from '../../../src/lib/view/plan-sentences'

describe('the weeks of a month', () => {
  test.each([
    // Weekdays of the calendar: 1 March 2027 is a Monday, 1 August 2027 a Sunday, 29 February 2028 a Tuesday.
    { month: '2027-03', weeks: 5, first: 0, last: '2027-03-31' },
    { month: '2027-08', weeks: 6, first: 6, last: '2027-08-31' },
    { month: '2027-02', weeks: 4, first: 0, last: '2027-02-28' },
    { month: '2028-02', weeks: 5, first: 1, last: '2028-02-29' },
    { month: '2027-12', weeks: 5, first: 2, last: '2027-12-31' },
  ])('$month: $weeks weeks, its first day in column $first', ({ month, weeks, first, last }) => {
    const made = weeksOf(month, [], [])
    expect(made).toHaveLength(weeks)
    expect(made.every((week) => week.length === 7)).toBe(true)
    expect(made[0]?.findIndex((day) => day !== null)).toBe(first)
    const days = made.flat().flatMap((day) => (day ? [day.day] : []))
    expect(days[0]).toBe(`${month}-01`)
    expect(days.at(-1)).toBe(last)
    expect(days).toHaveLength(Number(last.slice(8)))
  })

  test('only days with a check or an exam are in the list', () => {
    const planned = { day: '2027-03-04', checks: [], minutes: 0 }
    const weeks = weeksOf('2027-03', [planned], [{ syllabusId: 's', day: '2027-03-20' }])
    expect(fullDaysOf(weeks).map(({ day }) => day)).toEqual(['2027-03-04', '2027-03-20'])
  })

  test.each([
    { from: '2027-03-31', days: ['2027-03-31'], months: ['2027-03'] },
    {
      from: '2027-11-30',
      days: ['2028-01-31', '2027-12-01'],
      months: ['2027-11', '2027-12', '2028-01'],
    },
    { from: '2027-03-10', days: [], months: ['2027-03'] },
  ])('months from $from', ({ from, days, months }) => {
    expect(monthsBetween(from, days)).toEqual(months)
  })

  test('a month in words', () => {
    expect(monthWords('2027-03')).toBe('March 2027')
  })
})

describe('what the plan says', () => {
  const at = { today: '2027-03-10', minutesADay: 30 }
  const topics: TopicPlace[] = Array.from({ length: 8 }, (_, i) => ({
    syllabusId: 's',
    topicId: `topic ${i + 1}`,
  }))
  const say = (warning: PlanWarning) =>
    warningSentence(warning, ({ topicId }) => topicId, at, { sessionsNeeded: 3, daysApart: 7 })

  test.each<{ warning: PlanWarning; says: RegExp }>([
    {
      warning: {
        rule: 'too-little-time',
        examDay: '2027-04-14',
        topics: topics.slice(0, 2),
        minutesMissing: 90,
        minutesADayNeeded: 45,
        unchecked: [],
      },
      says: /^Before the exam on 14 April 1 hour 30 minutes of checks have no room: topic 1 and topic 2\. With 45 minutes a day instead of 30 it all fits\./,
    },
    {
      warning: {
        rule: 'too-little-time',
        examDay: '2027-03-11',
        topics,
        minutesMissing: 9000,
        minutesADayNeeded: null,
        unchecked: topics.slice(7),
      },
      says: /^Before the exam tomorrow .*topic 6 and 2 others\. No check at all: topic 8\. .*decide which topics to leave out\.$/,
    },
    {
      warning: { rule: 'too-few-days', examDay: '2027-03-14', topics: topics.slice(0, 1) },
      says: /too few to finish topic 1: it takes 3 full days, the last at least 7 days after/,
    },
    {
      warning: { rule: 'no-day-left', examDay: '2027-03-10', topics: topics.slice(0, 1) },
      says: /before the exam today: topic 1\./,
    },
    {
      warning: { rule: 'longer-than-a-day', topics: topics.slice(0, 1), minutes: 40 },
      says: /up to 40 minutes, more than your 30 a day: topic 1\./,
    },
    {
      warning: { rule: 'later-than-planned', topics: topics.slice(0, 1), until: '2027-04-20' },
      says: /^Until 20 April there is no room for all checks of topic 1\./,
    },
  ])('$warning.rule', ({ warning, says }) => {
    expect(say(warning)).toMatch(says)
  })

  test.each([
    { day: '2027-03-12', due: '2027-03-12', says: '' },
    { day: '2027-03-12', due: '2027-03-11', says: 'instead of 11 March' },
    { day: '2027-03-11', due: '2027-03-12', says: 'instead of 12 March' },
  ])('a check due on $due, on $day', ({ day, due, says }) => {
    const check: PlannedCheck = {
      topic: topics[0]!,
      day,
      due,
      minutes: 9,
      session: 1,
      needed: true,
    }
    expect(movedWords(check, at.today)).toBe(says)
  })

  test('the load of a day', () => {
    expect(dayLoad(1, 18)).toBe('1 check, 18 minutes')
    expect(dayLoad(3, 75)).toBe('3 checks, 1 hour 15 minutes')
  })
})

/** The plan to the exam: tables for what moves where, and what holds for every set of topics. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addDays,
  courseOf,
  daysBetween,
  forecast,
  nextDate,
  planToExam,
  PLANNED_WITHOUT_EXAM,
  planTopic,
  sessionsOf,
  statusOf,
  whatFirst,
  type Check,
  type Exam,
  type ExamPlan,
  type Settings,
} from '../../../src/lib/recall'
import { check, history, noon, settings } from './histories'

const TODAY = '2027-03-10'
const place = (topicId: string) => ({ syllabusId: 'shores', topicId })
const of = (topicId: string, day: string, marks: string) =>
  check(`${day}T12:00:00Z`, marks, { topicId, id: `${topicId} ${day}` })
const exam = (day: string, ...topicIds: string[]): Exam => ({
  syllabusId: 'shores',
  day,
  ...(topicIds.length > 0 ? { topicIds } : {}),
})

function plan(
  topicIds: string,
  checks: readonly Check[],
  more: Partial<Settings>,
  minutes: number | ((topicId: string) => number) = 15,
): ExamPlan {
  const asked = settings(more)
  const now = noon(TODAY)
  const plans = whatFirst([...topicIds].map(place), checks, asked, now)
  return planToExam({
    plans,
    minutesOf: ({ topic }) => (typeof minutes === 'number' ? minutes : minutes(topic.topicId)),
    settings: asked,
    now,
  })
}

/** '03-10 ab, 03-12 c'. */
const lineOf = ({ days }: ExamPlan) =>
  days.map(({ day, checks }) => `${day.slice(5)} ${checks.map((c) => c.topic.topicId).join('')}`)

describe('the dates of one topic, as if every coming session were full', () => {
  const dates = (line: string, examDay: string | undefined, until: number) => {
    const topic = planTopic(
      place('drift'),
      history(line),
      settings({ exams: examDay === undefined ? [] : [exam(examDay)] }),
      TODAY,
    )
    return forecast(courseOf(topic, TODAY), until).map((day) => addDays(TODAY, day).slice(5))
  }

  test.each([
    // 1, 3, 7, 16, 35 days by the length of the run.
    {
      why: 'never checked, no exam',
      line: '',
      exam: undefined,
      days: ['03-10', '03-11', '03-14', '03-21', '04-06'],
    },
    {
      why: 'full once yesterday',
      line: '03-09 full',
      exam: undefined,
      days: ['03-10', '03-13', '03-20', '04-05'],
    },
    {
      why: 'gaps today: tomorrow, then the run begins',
      line: '03-10 gaps',
      exam: undefined,
      days: ['03-11', '03-12', '03-15', '03-22', '04-07'],
    },
    {
      why: 'overdue: today, not in the past',
      line: '03-01 gaps',
      exam: undefined,
      days: ['03-10', '03-11', '03-14', '03-21', '04-06'],
    },
    // Of 7 days 30 % is 2; of 5, 1.5, rounded up; of 3 and of 2 less than a day, so one.
    {
      why: 'a week to the exam',
      line: '03-10 full',
      exam: '2027-03-17',
      days: ['03-12', '03-14', '03-15', '03-16'],
    },
    { why: 'the exam is tomorrow', line: '', exam: '2027-03-11', days: ['03-10'] },
    {
      why: 'the exam is tomorrow and today is done',
      line: '03-10 full',
      exam: '2027-03-11',
      days: [],
    },
    { why: 'the exam is today', line: '', exam: '2027-03-10', days: [] },
  ])('$why', ({ line, exam: examDay, days }) => {
    expect(dates(line, examDay, PLANNED_WITHOUT_EXAM)).toEqual(days)
  })

  test('are those that the rules give once each session is made', () => {
    const examDay = '2027-05-01'
    const made = history('03-01 gaps, 03-05 full')
    const days = dates('03-01 gaps, 03-05 full', examDay, 400)
    for (const day of days) {
      const { day: next } = nextDate(sessionsOf(made), examDay)
      expect((next ?? '') < TODAY ? TODAY.slice(5) : next?.slice(5)).toBe(day)
      made.push(...history(`${day} full`))
    }
    expect(nextDate(sessionsOf(made), examDay).day).toBeNull()
  })
})

describe('levelling', () => {
  const rule = { sessionsNeeded: 1, daysApart: 0 }

  test.each([
    {
      why: 'room for both: both keep their date',
      ids: 'ab',
      checks: [],
      more: { ...rule, minutesADay: 30, exams: [exam('2027-03-12')] },
      days: ['03-10 ab', '03-11 ab'],
    },
    {
      why: 'one fits: the harder keeps its date, the other moves later',
      ids: 'ab',
      checks: [of('a', '2027-03-09', 'fm'), of('b', '2027-03-09', 'mm')],
      more: { ...rule, minutesADay: 15, exams: [exam('2027-03-12')] },
      days: ['03-10 b', '03-11 a'],
    },
    {
      // All are due on the 11th: full on the 9th, 30 % of 5 days is 1.5, rounded up.
      why: 'later would hit the exam: the last comes earlier',
      ids: 'abcd',
      checks: ['a', 'b', 'c', 'd'].map((id) => of(id, '2027-03-09', 'ff')),
      more: { ...rule, sessionsNeeded: 2, minutesADay: 15, exams: [exam('2027-03-14')] },
      days: ['03-10 d', '03-11 a', '03-12 b', '03-13 c'],
    },
    {
      why: 'the nearer exam of an easier topic is not missed for a harder one',
      ids: 'ab',
      checks: [of('a', '2027-03-09', 'mm'), of('b', '2027-03-09', 'fm')],
      more: { ...rule, minutesADay: 15, exams: [exam('2027-03-30', 'a'), exam('2027-03-11', 'b')] },
      days: undefined,
    },
    {
      why: 'what was done today counts as used',
      ids: 'ab',
      checks: [of('a', TODAY, 'fm')],
      more: { ...rule, minutesADay: 15, exams: [exam('2027-03-13')] },
      days: ['03-11 b', '03-12 a'],
    },
  ])('$why', ({ ids, checks, more, days }) => {
    const made = plan(ids, checks, more)
    expect(made.warnings).toEqual([])
    if (days) expect(lineOf(made)).toEqual(days)
  })

  test('a check that is moved says from when', () => {
    const made = plan('ab', [of('a', '2027-03-09', 'fm'), of('b', '2027-03-09', 'mm')], {
      ...rule,
      minutesADay: 15,
      exams: [exam('2027-03-12')],
    })
    expect(made.days[1]?.checks).toMatchObject([{ day: '2027-03-11', due: TODAY, session: 2 }])
  })

  test('the hardest topic has the dates that the rules give it, however full the days are', () => {
    const exams = [exam('2027-04-20')]
    const made = plan('abcdef', [of('f', '2027-03-01', 'mm')], { exams, minutesADay: 15 })
    const needed = made.days
      .flatMap(({ checks }) => checks)
      .filter(({ topic, needed: asked }) => topic.topicId === 'f' && asked)
    expect(needed.length).toBeGreaterThan(1)
    expect(needed.map(({ day }) => day)).toEqual(needed.map(({ due }) => due))
  })
})

describe('what the days left cannot hold', () => {
  test('the minutes that are missing, of which topics, and how many a day would do', () => {
    // Three days are left, and three sessions of four topics are twelve checks; 35 minutes hold two a day.
    const rule = { sessionsNeeded: 3, daysApart: 2 }
    const made = plan('abcd', [], { ...rule, minutesADay: 35, exams: [exam('2027-03-13')] })
    expect(made.warnings).toMatchObject([
      { rule: 'too-little-time', minutesMissing: 6 * 15, minutesADayNeeded: 60, unchecked: [] },
    ])
  })

  test('far too little time: each topic once before one twice, the hardest first; those without any are named', () => {
    const more = { minutesADay: 15, exams: [exam('2027-03-14')] }
    // Four days, a check a day.
    expect(lineOf(plan('abcdef', [], more)).map((line) => line.slice(6))).toEqual([...'abcd'])
    expect(plan('abcdef', [], more).warnings[0]).toMatchObject({
      rule: 'too-little-time',
      unchecked: [place('e'), place('f')],
    })
    const three = plan('abc', [], more)
    expect(
      three.days.flatMap(({ checks }) => checks.map((one) => one.topic.topicId)).sort(),
    ).toEqual([...'aabc'])
    expect(three.warnings[0]).toMatchObject({ rule: 'too-little-time', unchecked: [] })
  })

  test.each([
    {
      why: 'too few days to finish',
      ids: 'a',
      checks: [],
      more: { exams: [exam('2027-03-14')] },
      rules: ['too-few-days'],
    },
    {
      why: 'the exam is today',
      ids: 'a',
      checks: [],
      more: { exams: [exam(TODAY)] },
      rules: ['no-day-left'],
    },
    {
      why: 'the exam was yesterday: as without',
      ids: 'a',
      checks: [],
      more: { exams: [exam('2027-03-09')] },
      rules: [],
    },
    { why: 'no exam', ids: 'ab', checks: [], more: {}, rules: [] },
    { why: 'no topics', ids: '', checks: [], more: { exams: [exam('2027-04-14')] }, rules: [] },
    {
      why: 'a check longer than a day’s minutes',
      ids: 'a',
      checks: [],
      more: { minutesADay: 10 },
      rules: ['longer-than-a-day'],
    },
  ])('$why', ({ ids, checks, more, rules }) => {
    expect(plan(ids, checks, more).warnings.map(({ rule }) => rule)).toEqual(rules)
  })

  test('sixty topics without an exam: those that six weeks have no room for are named', () => {
    const ids = Array.from({ length: 60 }, (_, i) => String.fromCodePoint(0x3b1 + i)).join('')
    const made = plan(ids, [], { minutesADay: 15 })
    expect(made.warnings).toMatchObject([{ rule: 'later-than-planned', until: '2027-04-20' }])
    expect(made.days).toHaveLength(PLANNED_WITHOUT_EXAM)
  })
})

test('two thousand checks over sixty topics: every topic planned, none twice on a day', () => {
  const ids = Array.from({ length: 60 }, (_, i) => String.fromCodePoint(0x3b1 + i))
  const checks = ids.flatMap((id, i) =>
    Array.from({ length: 34 }, (_, n) =>
      of(id, addDays(TODAY, -2 * n - (i % 5)), (n + i) % 3 === 0 ? 'fm' : 'ff'),
    ),
  )
  const made = plan(ids.join(''), checks, { exams: [exam('2027-09-01')], minutesADay: 60 }, 12)
  expect(made.warnings).toEqual([])
  const planned = made.days.flatMap(({ day, checks: each }) =>
    each.map(({ topic }) => `${day} ${topic.topicId}`),
  )
  expect(new Set(planned).size).toBe(planned.length)
  expect(new Set(planned.map((one) => one.slice(11))).size).toBe(60)
})

const anyTopic = fc.record({
  last: fc.option(fc.record({ daysAgo: fc.nat(40), marks: fc.constantFrom('ff', 'fm', 'mm') }), {
    nil: undefined,
  }),
  minutes: fc.integer({ min: 1, max: 50 }),
  exam: fc.option(fc.integer({ min: -5, max: 70 }), { nil: undefined }),
})
const anyQuestion = fc.record({
  topics: fc.array(anyTopic, { maxLength: 24 }),
  minutesADay: fc.integer({ min: 5, max: 90 }),
})

describe('for every set of topics', () => {
  test('no day over the minutes, every topic planned or warned, nothing on or after the exam', () => {
    fc.assert(
      fc.property(anyQuestion, ({ topics, minutesADay }) => {
        const id = (i: number) => `t${i}`
        const asked = settings({
          minutesADay,
          exams: topics.flatMap(({ exam: days }, i) =>
            days === undefined ? [] : [exam(addDays(TODAY, days), id(i))],
          ),
        })
        const checks = topics.flatMap(({ last }, i) =>
          last ? [of(id(i), addDays(TODAY, -last.daysAgo), last.marks)] : [],
        )
        const places = topics.map((_, i) => place(id(i)))
        const minutesOf = ({ topic }: { topic: { topicId: string } }) =>
          topics[Number(topic.topicId.slice(1))]!.minutes
        const planned = (stored: readonly Check[]) =>
          planToExam({
            plans: whatFirst(places, stored, asked, noon(TODAY)),
            minutesOf,
            settings: asked,
            now: noon(TODAY),
          })
        const made = planned(checks)
        const all = made.days.flatMap(({ checks: each }) => each)
        const warned = made.warnings.flatMap((warning) => warning.topics)
        const nothing = new Set(
          made.warnings.flatMap((warning) =>
            warning.rule === 'too-little-time' ? warning.unchecked.map((one) => one.topicId) : [],
          ),
        )

        for (const { day, minutes, checks: each } of made.days) {
          expect(day >= TODAY).toBe(true)
          const alone = each.length === 1 && minutes > minutesADay
          if (minutes > minutesADay) expect(alone).toBe(true)
          if (alone)
            expect(made.warnings).toContainEqual(
              expect.objectContaining({ rule: 'longer-than-a-day' }),
            )
          expect(new Set(each.map(({ topic }) => topic.topicId)).size).toBe(each.length)
        }
        for (const [i, { exam: days, last }] of topics.entries()) {
          const mine = all.filter(({ topic }) => topic.topicId === id(i))
          const isWarned = warned.some(({ topicId }) => topicId === id(i))
          expect(mine.length > 0 || isWarned, `${id(i)} is planned or warned`).toBe(true)
          if (nothing.has(id(i))) expect(mine).toEqual([])
          // Nothing on or after the exam, nothing twice on a day, nothing on the day of a session made.
          if (days !== undefined && days >= 0)
            for (const { day } of mine) expect(daysBetween(TODAY, day)).toBeLessThan(days)
          if (last?.daysAgo === 0) expect(mine.some(({ day }) => day === TODAY)).toBe(false)
          // Whoever has no warning for it is finished by what is planned.
          if (!isWarned) {
            const made2 = [
              ...checks.filter(({ topicId }) => topicId === id(i)),
              ...mine.map(({ day }) => of(id(i), day, 'ff')),
            ]
            expect(statusOf(sessionsOf(made2), asked)).toBe('finished')
          }
        }
        expect(planned([...checks].reverse())).toEqual(made)
      }),
      { numRuns: 150 },
    )
  })
})

import { describe, expect, test } from 'vitest'
import { tonight, topicsOfTomorrow, type Check, type PaperQuestion } from '../../../src/lib/recall'
import { check, noon, settings } from './histories'

const TODAY = '2027-03-20'
const drift = { syllabusId: 'shores', topicId: 'drift', refs: ['1.1', '1.2', '1.3', '1.4'] }

const ask = (
  checks: Check[],
  more: { minutes?: number; papers?: PaperQuestion[]; refs?: string[] } = {},
) =>
  tonight({
    topics: [{ ...drift, refs: more.refs ?? drift.refs }],
    checks,
    papers: more.papers ?? [],
    minutes: more.minutes ?? 60,
    secondsPerPoint: 90,
    now: noon(TODAY),
  })

const list = (...args: Parameters<typeof ask>) =>
  ask(...args).points.map(({ ref, why }) => `${ref} ${why.rule}`)

const paper = (day: string, ref: string, lost: boolean): PaperQuestion => ({
  schema: 1,
  id: `paper ${day} ${ref}`,
  syllabusId: 'shores',
  topicId: 'drift',
  day,
  source: 'Mock paper 1, question 3',
  marksWon: lost ? 1 : 4,
  marksOutOf: 4,
  points: [{ ref, lost }],
})

describe('tonight’s list', () => {
  test('not full, then full only once since, then the longest unseen', () => {
    const checks = [check('2027-03-01T12:00:00Z', 'mfff'), check('2027-03-10T12:00:00Z', 'ffmf')]
    expect(list(checks)).toEqual([
      '1.3 not-full',
      '1.1 full-once-since',
      '1.2 longest-unseen',
      '1.4 longest-unseen',
    ])
  })

  test('missed and contradicted before part said', () => {
    expect(list([check('2027-03-10T12:00:00Z', 'pmcf')])).toEqual([
      '1.2 not-full',
      '1.3 not-full',
      '1.1 not-full',
      '1.4 longest-unseen',
    ])
  })

  test('full twice since it was missed is safe', () => {
    const checks = ['mf', 'ff', 'ff'].map((marks, i) => check(`2027-03-0${i + 1}T12:00:00Z`, marks))
    expect(list(checks, { refs: ['1.1'] })).toEqual(['1.1 longest-unseen'])
  })

  test('full once, missed, full once: the last miss counts', () => {
    const checks = ['f', 'f', 'm', 'f'].map((marks, i) =>
      check(`2027-03-0${i + 1}T12:00:00Z`, marks),
    )
    expect(ask(checks, { refs: ['1.1'] }).points).toMatchObject([
      { why: { rule: 'full-once-since', missedOn: '2027-03-03', fullOn: '2027-03-04' } },
    ])
  })

  test('what a gap check brought back is full once since', () => {
    const gap = check('2027-03-10T13:00:00Z', 'f', { kind: 'gap' })
    expect(list([check('2027-03-10T12:00:00Z', 'm'), gap], { refs: ['1.1'] })).toEqual([
      '1.1 full-once-since',
    ])
  })

  test('a point never seen is unseen the longest', () => {
    const seen = check('2027-01-01T12:00:00Z', 'f')
    expect(list([seen], { refs: ['1.1', '1.2'] })).toEqual(['1.2 never-seen', '1.1 longest-unseen'])
  })

  test('inside a group the longest unseen comes first, over the topics', () => {
    const rocks = { syllabusId: 'shores', topicId: 'rocks', refs: ['2.1'] }
    const checks = [
      check('2027-03-09T12:00:00Z', 'f'),
      check('2027-03-02T12:00:00Z', '', {
        topicId: 'rocks',
        marks: [{ ref: '2.1', outcome: 'full' }],
      }),
    ]
    const { points } = tonight({
      topics: [{ ...drift, refs: ['1.1'] }, rocks],
      checks,
      minutes: 20,
      secondsPerPoint: 90,
      now: noon(TODAY),
    })
    expect(points).toEqual([
      expect.objectContaining({
        ref: '2.1',
        why: { rule: 'longest-unseen', day: '2027-03-02', days: 18 },
      }),
      expect.objectContaining({
        ref: '1.1',
        why: { rule: 'longest-unseen', day: '2027-03-09', days: 11 },
      }),
    ])
  })

  test('the student’s own change decides, not the marker', () => {
    const changes = [{ ref: '1.1', outcome: 'full', by: 'student', atMs: 0 }] as const
    expect(list([check('2027-03-10T12:00:00Z', 'm', { changes })], { refs: ['1.1'] })).toEqual([
      '1.1 longest-unseen',
    ])
  })

  test.each([
    {
      why: 'a lost mark after a full check',
      papers: [paper('2027-03-15', '1.1', true)],
      rule: 'not-full',
    },
    {
      why: 'a lost mark on the day of the check',
      papers: [paper('2027-03-10', '1.1', true)],
      rule: 'not-full',
    },
    {
      why: 'a lost mark before it',
      papers: [paper('2027-03-05', '1.1', true)],
      rule: 'full-once-since',
    },
    { why: 'a mark won', papers: [paper('2027-03-15', '1.1', false)], rule: 'longest-unseen' },
    {
      why: 'a mark lost on another point',
      papers: [paper('2027-03-15', '1.2', true)],
      rule: 'longest-unseen',
    },
  ])('papers: $why -> $rule', ({ papers, rule }) => {
    expect(list([check('2027-03-10T12:00:00Z', 'f')], { papers, refs: ['1.1'] })).toEqual([
      `1.1 ${rule}`,
    ])
  })

  test.each([
    { minutes: 0, points: 0 },
    { minutes: 1, points: 1 },
    { minutes: 1.5, points: 1 },
    { minutes: 4, points: 2 },
    { minutes: 4.5, points: 3 },
    { minutes: 20, points: 4 },
  ])('$minutes minutes hold $points of 4 points', ({ minutes, points }) => {
    const made = ask([check('2027-03-10T12:00:00Z', 'mmmm')], { minutes })
    expect(made.points).toHaveLength(points)
    expect(made.leftOut).toBe(4 - points)
  })
})

describe('the topics of tomorrow', () => {
  const topics = [drift, { syllabusId: 'shores', topicId: 'rocks' }]
  test.each([
    { why: 'no exam', exams: [], expected: [] },
    {
      why: 'tomorrow, all topics',
      exams: [{ syllabusId: 'shores', day: '2027-03-21' }],
      expected: ['drift', 'rocks'],
    },
    {
      why: 'tomorrow, one topic',
      exams: [{ syllabusId: 'shores', day: '2027-03-21', topicIds: ['rocks'] }],
      expected: ['rocks'],
    },
    { why: 'today', exams: [{ syllabusId: 'shores', day: TODAY }], expected: [] },
    {
      why: 'another syllabus',
      exams: [{ syllabusId: 'weather', day: '2027-03-21' }],
      expected: [],
    },
  ])('$why', ({ exams, expected }) => {
    const found = topicsOfTomorrow(topics, settings({ exams }), noon(TODAY))
    expect(found.map(({ topicId }) => topicId)).toEqual(expected)
  })
})

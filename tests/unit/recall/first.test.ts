import { describe, expect, test } from 'vitest'
import { planTopic, whatFirst, type Check, type Exam, type Rating } from '../../../src/lib/recall'
import { check, noon, settings } from './histories'

const TODAY = '2027-03-10'
const topics = ['a', 'b', 'c'].map((topicId) => ({ syllabusId: 'shores', topicId }))

const of = (topicId: string, day: string, marks: string, more: Partial<Check> = {}) =>
  check(`${day}T12:00:00Z`, marks, { topicId, id: `${topicId} ${day} ${marks}`, ...more })

const rated = (topicId: string, rating: Rating) => ({ syllabusId: 'shores', topicId, rating })
const exam = (day: string, ...topicIds: string[]): Exam => ({ syllabusId: 'shores', day, topicIds })

const order = (checks: Check[], more = {}) =>
  whatFirst(topics, checks, settings(more), noon(TODAY))
    .map(({ topic }) => topic.topicId)
    .join('')

describe('what to do first', () => {
  test.each([
    { why: 'nothing known: the syllabus’s order', checks: [], more: {}, expected: 'abc' },
    {
      why: 'due, then never checked, then not yet due',
      checks: [of('a', '2027-03-10', 'fm'), of('c', '2027-03-09', 'fm')],
      more: {},
      expected: 'cba',
    },
    {
      why: 'due today and overdue are one part: recall decides, not the delay',
      checks: [
        of('a', '2027-03-09', 'ffm'),
        of('b', '2027-03-01', 'ffm'),
        of('c', '2027-03-09', 'fmm'),
      ],
      more: {},
      expected: 'cab',
    },
    {
      why: 'lowest recall first; partial counts as not full',
      checks: [
        of('a', '2027-03-08', 'fffm'),
        of('b', '2027-03-08', 'ffpp'),
        of('c', '2027-03-08', 'mmmf'),
      ],
      more: {},
      expected: 'cba',
    },
    {
      why: 'recall is a share, not a count of gaps',
      checks: [
        of('a', '2027-03-08', 'ffffffmm'),
        of('b', '2027-03-08', 'fm'),
        of('c', '2027-03-08', 'fffm'),
      ],
      more: {},
      expected: 'bac',
    },
    {
      why: 'recall is the latest session’s',
      checks: [
        of('a', '2027-03-01', 'mm'),
        of('a', '2027-03-08', 'fm'),
        of('b', '2027-03-08', 'mm'),
      ],
      more: {},
      expected: 'bac',
    },
    {
      why: 'equal recall: hard, unrated as middling, easy',
      checks: topics.map(({ topicId }) => of(topicId, '2027-03-08', 'fm')),
      more: { ratings: [rated('a', 'easy'), rated('c', 'hard')] },
      expected: 'cba',
    },
    {
      why: 'never checked: the rating decides',
      checks: [],
      more: { ratings: [rated('a', 'easy'), rated('b', 'middling'), rated('c', 'hard')] },
      expected: 'cba',
    },
    {
      why: 'equal rating: the nearer exam, then those without one',
      checks: [],
      more: { exams: [exam('2027-06-20', 'b'), exam('2027-06-01', 'c')] },
      expected: 'cba',
    },
    {
      why: 'the rating goes before the exam',
      checks: [],
      more: { ratings: [rated('b', 'hard')], exams: [exam('2027-03-12', 'c')] },
      expected: 'bca',
    },
    {
      why: 'an exam that is over counts for nothing',
      checks: [],
      more: { exams: [exam('2027-03-09', 'c')] },
      expected: 'abc',
    },
    {
      why: 'not yet due: the nearer date first, whatever the recall',
      checks: [
        of('a', '2027-03-08', 'ff'),
        of('a', '2027-03-10', 'ff'),
        of('b', '2027-03-10', 'fm'),
        of('c', '2027-03-10', 'ff'),
      ],
      more: {},
      expected: 'bca',
    },
    {
      why: 'no day left before the exam: last',
      checks: [of('a', '2027-03-10', 'fm'), of('b', '2027-03-10', 'fm')],
      more: { exams: [exam('2027-03-11', 'a')] },
      expected: 'cba',
    },
    {
      why: 'a full gap check mends nothing here',
      checks: [of('b', '2027-03-08', 'fm'), of('b', '2027-03-09', 'ff', { kind: 'gap' })],
      more: {},
      expected: 'bac',
    },
    {
      why: 'another syllabus’s topic with the same id is another topic',
      checks: [of('c', '2027-03-08', 'mm', { syllabusId: 'rocks' })],
      more: {},
      expected: 'abc',
    },
  ])('$why', ({ checks, more, expected }) => {
    expect(order(checks, more)).toBe(expected)
  })

  test('each topic carries its reasons in the order in which they were weighed', () => {
    const checks = [of('a', '2027-03-01', 'fm')]
    const more = { ratings: [rated('a', 'hard')], exams: [exam('2027-04-01', 'a')] }
    const [first] = whatFirst(topics, checks, settings(more), noon(TODAY))
    expect(first).toMatchObject({
      part: { rule: 'overdue', day: '2027-03-02', days: 8 },
      weighed: [
        { rule: 'recall', full: 1, points: 2 },
        { rule: 'rating', rating: 'hard' },
        { rule: 'exam', day: '2027-04-01', days: 22 },
      ],
      status: { status: 'gaps' },
    })
  })

  test.each([
    { checks: [of('a', '2027-03-09', 'fm')], part: { rule: 'due', day: TODAY } },
    { checks: [of('a', '2027-03-10', 'fm')], part: { rule: 'later', day: '2027-03-11', days: 1 } },
    { checks: [], part: { rule: 'never-checked' } },
  ])('the part $part.rule', ({ checks, part }) => {
    const plan = whatFirst(topics.slice(0, 1), checks, settings(), noon(TODAY))
    expect(plan).toMatchObject([{ part }])
  })

  test('today is the student’s day, not UTC’s', () => {
    const checks = [of('a', '2027-03-10', 'fm')]
    const now = { nowMs: Date.parse('2027-03-10T23:30:00Z'), zone: 'Europe/Paris' }
    expect(whatFirst(topics, checks, settings(), now)[0]?.part.rule).toBe('due')
    expect(whatFirst(topics, checks, settings(), { ...now, zone: 'UTC' })[0]?.part.rule).toBe(
      'never-checked',
    )
  })

  test('no topics, no list', () => {
    expect(whatFirst([], [of('a', '2027-03-01', 'f')], settings(), noon(TODAY))).toEqual([])
  })
})

describe('the gaps of today', () => {
  const gaps = (...checks: Check[]) =>
    planTopic({ syllabusId: 'shores', topicId: 'a' }, checks, settings(), TODAY).gapsToday

  test('are the points not full in today’s session', () => {
    expect(gaps(of('a', TODAY, 'fpm'))).toEqual(['1.2', '1.3'])
  })

  test('go as a gap check gets them back', () => {
    const back = check(`${TODAY}T13:00:00Z`, '', {
      kind: 'gap',
      marks: [
        { ref: '1.2', outcome: 'full' },
        { ref: '1.3', outcome: 'partial' },
      ],
    })
    expect(gaps(of('a', TODAY, 'fpm'), back)).toEqual(['1.3'])
  })

  test('are none the day after: then it is the topic’s turn', () => {
    expect(gaps(of('a', '2027-03-09', 'fpm'))).toEqual([])
  })
})

describe('the exam of a topic', () => {
  const plan = (exams: Exam[]) =>
    planTopic({ syllabusId: 'shores', topicId: 'a' }, [], settings({ exams }), TODAY).exam?.day

  test.each([
    {
      why: 'the nearest',
      exams: [exam('2027-06-01', 'a'), exam('2027-05-01', 'a')],
      day: '2027-05-01',
    },
    { why: 'today’s counts', exams: [exam(TODAY, 'a')], day: TODAY },
    {
      why: 'one of the whole syllabus',
      exams: [{ syllabusId: 'shores', day: '2027-05-01' }],
      day: '2027-05-01',
    },
    { why: 'not another topic’s', exams: [exam('2027-05-01', 'b')], day: undefined },
    {
      why: 'not another syllabus’s',
      exams: [{ syllabusId: 'rocks', day: '2027-05-01' }],
      day: undefined,
    },
  ])('$why', ({ exams, day }) => {
    expect(plan(exams)).toBe(day)
  })
})

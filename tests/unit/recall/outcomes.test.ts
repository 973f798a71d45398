import { describe, expect, test } from 'vitest'
import { decidedOutcomes, isFull, outcomeOf, recallOf, recallShare } from '../../../src/lib/recall'
import type { MarkChange } from '../../../src/lib/recall'
import { check } from './histories'

const change = (
  by: MarkChange['by'],
  outcome: MarkChange['outcome'],
  atMs = 0,
  ref = '1.1',
): MarkChange => ({ by, outcome, atMs, ref })

describe('the outcome that stands', () => {
  test.each<{ why: string; changes: MarkChange[]; outcome: string; by: string }>([
    { why: 'nobody changed it', changes: [], outcome: 'missed', by: 'marker' },
    {
      why: 'the student changed it',
      changes: [change('student', 'full')],
      outcome: 'full',
      by: 'student',
    },
    {
      why: 'the latest of one decider',
      changes: [change('student', 'full'), change('student', 'partial')],
      outcome: 'partial',
      by: 'student',
    },
    {
      why: 'null takes it back',
      changes: [change('student', 'full'), change('student', null)],
      outcome: 'missed',
      by: 'marker',
    },
    {
      why: 'null takes back every earlier change of that decider, not only the last',
      changes: [change('student', 'partial'), change('student', 'full'), change('student', null)],
      outcome: 'missed',
      by: 'marker',
    },
    {
      why: 'the tutor after the student',
      changes: [change('student', 'full'), change('tutor', 'partial')],
      outcome: 'partial',
      by: 'tutor',
    },
    {
      why: 'the student after the tutor',
      changes: [change('tutor', 'partial'), change('student', 'full')],
      outcome: 'full',
      by: 'student',
    },
    {
      why: "the tutor takes theirs back: the student's stands again",
      changes: [change('student', 'full'), change('tutor', 'partial'), change('tutor', null)],
      outcome: 'full',
      by: 'student',
    },
    {
      why: "the student takes theirs back: the tutor's earlier one stands",
      changes: [change('tutor', 'partial'), change('student', 'full'), change('student', null)],
      outcome: 'partial',
      by: 'tutor',
    },
    {
      why: 'agreeing with the marker is a decision too',
      changes: [change('student', 'missed')],
      outcome: 'missed',
      by: 'student',
    },
    {
      why: 'the order made, not the clock: it was set back in between',
      changes: [change('student', 'full', 9000), change('student', 'partial', 10)],
      outcome: 'partial',
      by: 'student',
    },
    {
      why: 'a change of another point',
      changes: [change('student', 'full', 0, '1.2')],
      outcome: 'missed',
      by: 'marker',
    },
    {
      why: 'a change of a point that was not checked',
      changes: [change('student', 'full', 0, '9.9')],
      outcome: 'missed',
      by: 'marker',
    },
  ])('$why', ({ changes, outcome, by }) => {
    const [first] = decidedOutcomes(check('2027-03-01T12:00:00Z', 'mp', { changes }))
    expect(first).toEqual({ ref: '1.1', outcome, marker: 'missed', by })
  })

  test('points keep the order of the syllabus and nothing is added to them', () => {
    const changes = [change('student', 'full', 0, '9.9'), change('student', 'full', 0, '1.3')]
    const refs = decidedOutcomes(check('2027-03-01T12:00:00Z', 'mpc', { changes })).map(
      (d) => d.ref,
    )
    expect(refs).toEqual(['1.1', '1.2', '1.3'])
  })

  test('one point at a time; a point that the check does not have is an error that names it', () => {
    const marked = check('2027-03-01T12:00:00Z', 'mc')
    expect(outcomeOf(marked, '1.2')).toBe('contradicted')
    expect(() => outcomeOf(marked, '7.7')).toThrow(/Longshore drift has no point 7\.7/)
  })
})

describe('recall', () => {
  test.each([
    { marks: 'ffpmc', full: 2, partial: 1, missed: 1, contradicted: 1, share: 0.4, isFull: false },
    { marks: 'fff', full: 3, partial: 0, missed: 0, contradicted: 0, share: 1, isFull: true },
    { marks: 'ffp', full: 2, partial: 1, missed: 0, contradicted: 0, share: 2 / 3, isFull: false },
    { marks: '', full: 0, partial: 0, missed: 0, contradicted: 0, share: 0, isFull: false },
  ])('of $marks', ({ marks, share, isFull: whole, ...counts }) => {
    const recall = recallOf(check('2027-03-01T12:00:00Z', marks))
    expect(recall).toEqual({ ...counts, points: marks.length })
    expect(recallShare(recall)).toBeCloseTo(share, 12)
    expect(isFull(recall)).toBe(whole)
  })

  test("counts the student's decision", () => {
    const changes = [change('student', 'full')]
    expect(isFull(recallOf(check('2027-03-01T12:00:00Z', 'pf', { changes })))).toBe(true)
  })
})

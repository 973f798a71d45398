import { describe, expect, test } from 'vitest'
import { mark } from '../../../src/lib/marking'
import { markedSentence, tonightWhy, writtenOf } from '../../../src/lib/view/round'
import { shippedTopics } from '../marking/shipped'

test.each([
  { texts: ['one', ' ', 'two'], steps: false, written: 'one\ntwo' },
  {
    texts: ['Mark it', '2) then place it.', ''],
    steps: true,
    written: 'First mark it.\nThen place it.',
  },
  { texts: [''], steps: true, written: '' },
])('$texts is written as $written', ({ texts, steps, written }) => {
  expect(writtenOf(texts, steps)).toBe(written)
})

const drift = shippedTopics.find(({ topic }) => topic.id === 'longshore-drift')!.topic
const method = { ...drift, points: drift.points.filter(({ steps }) => steps) }
const STEPS = ['Mark a pebble', 'Place it at the waterline', 'Wait an hour', 'Measure the distance']

test('steps given one after another are marked in the order in which they were asked', () => {
  expect(mark(method, writtenOf(STEPS, true)).points[0]!.outcome).toBe('full')
  expect(mark(method, writtenOf([...STEPS].reverse(), true)).points[0]!.outcome).not.toBe('full')
  expect(mark(method, writtenOf(STEPS.slice(0, 3), true)).points[0]!.outcome).not.toBe('full')
})

describe('what is said', () => {
  test.each([
    { outcome: 'full', says: 'Point 2.1: full. It leaves the pile. 2 points left.' },
    { outcome: 'partial', says: 'Point 2.1: part said. It comes round again. 3 points left.' },
  ] as const)('of a mark: $says', ({ outcome, says }) => {
    expect(markedSentence('2.1', outcome, 3)).toBe(says)
  })

  test.each([
    { why: { rule: 'never-seen' }, says: 'Never checked.' },
    {
      why: { rule: 'not-full', outcome: 'missed', day: '2027-03-01', in: 'paper' },
      says: 'Missed on a paper, yesterday.',
    },
    {
      why: { rule: 'not-full', outcome: 'contradicted', day: '2027-03-01', in: 'check' },
      says: 'Said the opposite in the check, yesterday.',
    },
    {
      why: { rule: 'full-once-since', missedOn: '2027-03-01', fullOn: '2027-03-02' },
      says: 'Not full yesterday, full only once since.',
    },
    {
      why: { rule: 'longest-unseen', day: '2027-02-20', days: 10 },
      says: 'Full, and not seen for 10 days.',
    },
  ] as const)('of tonight’s reasons: $says', ({ why, says }) => {
    expect(tonightWhy(why, '2027-03-02')).toBe(says)
  })
})

import { expect, test } from 'vitest'
import {
  atCoverage,
  measure,
  twoWay,
  type Decided,
  type Marked,
} from '../../../src/cli/evaluation/measures'
import type { Outcome } from '../../../src/lib/marking'

const marked = (label: Outcome, outcome: Outcome, count: number, offered = false): Marked[] =>
  Array.from({ length: count }, () => ({ topic: 't', style: 's', label, outcome, offered }))

test('a confusion matrix worked by hand', () => {
  const m = measure([
    ...marked('full', 'full', 6),
    ...marked('full', 'missed', 2, true),
    ...marked('partial', 'full', 1),
    ...marked('partial', 'partial', 3),
    ...marked('missed', 'missed', 4),
    ...marked('missed', 'full', 1),
    ...marked('contradicted', 'contradicted', 2),
    ...marked('contradicted', 'missed', 1),
  ])
  expect(m.points).toBe(20)
  expect(m.confusion.full).toEqual({ full: 6, partial: 0, missed: 2, contradicted: 0 })
  expect(m.fullPrecision).toBeCloseTo(6 / 8)
  expect(m.fullRecall).toBeCloseTo(6 / 8)
  expect(m.falseCredit).toBeCloseTo(1 / 20)
  expect(m.contradictedRecall).toBeCloseTo(2 / 3)
  expect(m.offered).toBeCloseTo(2 / 20)
  // F1: full 12/16, partial 6/7, missed 8/12, contradicted 4/5
  expect(m.macroF1).toBeCloseTo((12 / 16 + 6 / 7 + 8 / 12 + 4 / 5) / 4)
})

test('nothing to divide by is 0, not NaN', () => {
  expect(measure([])).toMatchObject({
    points: 0,
    fullPrecision: 0,
    fullRecall: 0,
    macroF1: 0,
    offered: 0,
  })
})

test('two-way measures, and the surest share alone', () => {
  const decided: Decided[] = [
    { set: 'a', correct: true, called: true, margin: 0.9 },
    { set: 'a', correct: false, called: true, margin: 0.1 },
    { set: 'a', correct: true, called: false, margin: 0.2 },
    { set: 'a', correct: false, called: false, margin: 0.8 },
  ]
  expect(twoWay(decided)).toMatchObject({
    n: 4,
    accuracy: 0.5,
    macroF1: 0.5,
    correctPrecision: 0.5,
    correctRecall: 0.5,
  })
  expect(atCoverage(decided, 0.5)).toEqual({
    coverage: 0.5,
    accuracy: 1,
    correctPrecision: 1,
    correctShare: 0.5,
  })
})

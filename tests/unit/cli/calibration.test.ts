import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { calibrate, FOLDS, type Row } from '../../../src/cli/evaluation/calibration'
import { foldOf, seeded, shuffled } from '../../../src/cli/evaluation/folds'
import { fit, logitOf } from '../../../src/cli/evaluation/logistic'

describe('logistic regression', () => {
  // A model with one yes-or-no feature says exactly what its 2 × 2 table says: the weight is the logarithm of the odds ratio.
  // Source: Agresti, Categorical Data Analysis (2nd edition 2002), section 5.1.
  test.each([
    { yes: [30, 10], no: [20, 40], why: 'three to one against one to two' },
    { yes: [12, 12], no: [5, 45], why: 'even odds against one to nine' },
    { yes: [1, 9], no: [9, 1], why: 'the feature speaks against it' },
  ])('the log odds ratio of a 2 × 2 table: $why', ({ yes, no }) => {
    const rows = [
      { feature: 1, right: true, weight: yes[0]! },
      { feature: 1, right: false, weight: yes[1]! },
      { feature: 0, right: true, weight: no[0]! },
      { feature: 0, right: false, weight: no[1]! },
    ].map(({ feature, right, weight }) => ({ features: [feature], right, weight }))
    const model = fit(rows, 0)
    expect(logitOf(model, [1])).toBeCloseTo(Math.log(yes[0]! / yes[1]!), 6)
    expect(logitOf(model, [0])).toBeCloseTo(Math.log(no[0]! / no[1]!), 6)
  })

  test('a ridge draws the weights towards nothing and leaves the share of right answers as it is', () => {
    const rows = [...new Array<undefined>(40)].map((_, i) => ({
      features: [i % 4],
      right: i % 4 > 1,
      weight: 1,
    }))
    const [loose, tight] = [fit(rows, 1), fit(rows, 100)]
    expect(Math.abs(tight.weights[0]!)).toBeLessThan(Math.abs(loose.weights[0]!))
    expect(tight.bias).toBeCloseTo(0, 6)
  })
})

test('every name has one fold, whatever else there is', () => {
  fc.assert(
    fc.property(fc.string(), (name) => {
      const fold = foldOf(name, FOLDS)
      expect(fold).toBeGreaterThanOrEqual(0)
      expect(fold).toBeLessThan(FOLDS)
      expect(foldOf(name, FOLDS)).toBe(fold)
    }),
  )
})

test('shuffling keeps every item, and the seed decides the order', () => {
  const items = [...new Array<undefined>(50)].map((_, i) => i)
  const once = shuffled(items, seeded(3))
  expect([...once].sort((a, b) => a - b)).toEqual(items)
  expect(shuffled(items, seeded(3))).toEqual(once)
  expect(shuffled(items, seeded(4))).not.toEqual(once)
})

test('what is measured was decided by a model that had not seen the question', () => {
  // Within each question the first feature gives the answer away, but the other way round in the last fold: a model that had seen
  // those questions would get some of them right.
  const questions = [...new Array<undefined>(60)].map((_, i) => `question ${i}`)
  const rows: Row[] = questions.flatMap((question) =>
    [0, 1].flatMap((value) =>
      [...new Array<undefined>(4)].map(() => ({
        set: 'made up',
        question,
        correct: foldOf(question, FOLDS) === FOLDS - 1 ? value === 0 : value === 1,
        references: [[value]],
      })),
    ),
  )
  const { unseen } = calibrate(rows)
  const last = questions.filter((question) => foldOf(question, FOLDS) === FOLDS - 1).length * 8
  const wrong = unseen.filter(({ balance, correct }) => balance >= 0 !== correct).length
  expect(last).toBeGreaterThan(0)
  expect(wrong).toBe(last)
})

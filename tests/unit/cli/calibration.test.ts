import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fit, probability } from '../../../src/cli/calibration/logistic'
import { brierScore, logLoss, reliability } from '../../../src/cli/calibration/reliability'
import { foldsBy } from '../../../src/cli/calibration/short-answers'

// Source: Wikipedia, "Logistic regression", the example of hours studied and exams passed: intercept -4.0777, slope 1.5046.
const HOURS = [
  0.5, 0.75, 1, 1.25, 1.5, 1.75, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 4, 4.25, 4.5, 4.75, 5, 5.5,
]
const PASSED = [0, 0, 0, 0, 0, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 1, 1, 1, 1, 1]
const rows = HOURS.map((hours, i) => ({ x: [hours], y: PASSED[i] === 1 }))

describe('logistic regression', () => {
  test('gives the published coefficients', () => {
    const { bias, weights } = fit(rows, 0)
    expect(bias).toBeCloseTo(-4.0777, 3)
    expect(weights[0]).toBeCloseTo(1.5046, 3)
  })

  test('a penalty draws the slope towards nothing and leaves its sign', () => {
    const slopes = [0, 1, 10, 100].map((penalty) => fit(rows, penalty).weights[0]!)
    expect([...slopes].sort((a, b) => b - a)).toEqual(slopes)
    expect(slopes[3]).toBeGreaterThan(0)
  })

  test('the more hours the likelier, and twice the same', () => {
    const model = fit(rows, 1)
    const said = HOURS.map((hours) => probability(model, [hours]))
    expect([...said].sort((a, b) => a - b)).toEqual(said)
    expect(fit(rows, 1)).toEqual(model)
  })

  test('a feature that never varies gets no weight', () => {
    const { weights } = fit(
      rows.map(({ x, y }) => ({ x: [...x, 7], y })),
      1,
    )
    expect(weights[1]).toBeCloseTo(0, 10)
  })
})

describe('folds', () => {
  test('no question stands in two of them, and each answer in one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ maxLength: 2 }), { minLength: 1 }),
        fc.integer({ min: 2, max: 10 }),
        (questions, count) => {
          const folds = foldsBy(questions, (q) => q, count)
          expect(folds).toHaveLength(questions.length)
          questions.forEach((q, i) => expect(folds[i]).toBe(folds[questions.indexOf(q)]))
          expect(folds.every((f) => f >= 0 && f < count)).toBe(true)
        },
      ),
    )
  })
})

describe('how far a probability can be believed', () => {
  // Source: Wikipedia, "Brier score", the forecasts of rain: 100 % and rain 0, 100 % and none 1, 70 % and rain 0.09, 30 % and rain 0.49, 50 % 0.25.
  test.each([
    [1, true, 0],
    [1, false, 1],
    [0.7, true, 0.09],
    [0.3, true, 0.49],
    [0.5, true, 0.25],
    [0.5, false, 0.25],
  ])('%f foretold, rain %s: %f', (p, happened, score) => {
    expect(brierScore([{ p, happened }])).toBeCloseTo(score, 10)
  })

  test('a coin costs ln 2', () => {
    expect(
      logLoss([
        { p: 0.5, happened: true },
        { p: 0.5, happened: false },
      ]),
    ).toBeCloseTo(Math.LN2, 10)
  })

  test('every forecast stands in one bin of the curve', () => {
    const all = [0, 0.05, 0.1, 0.95, 1].map((p) => ({ p, happened: p > 0.5 }))
    const bins = reliability(all)
    expect(bins.reduce((sum, { count }) => sum + count, 0)).toBe(all.length)
    expect(bins.map(({ from, count }) => [from, count])).toEqual([
      [0, 2],
      [0.1, 1],
      [0.9, 2],
    ])
  })
})

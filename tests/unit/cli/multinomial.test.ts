/**
 * The multinomial logistic model against what is known of it: with one class for each of three well parted groups it finds them again,
 * and with two classes and no penalty it agrees with logistic regression (Hastie, Tibshirani and Friedman 2009, 4.4).
 */
import { expect, test } from 'vitest'
import { fit, probability } from '../../../src/cli/calibration/logistic'
import { fitClasses } from '../../../src/cli/calibration/multinomial'
import { probabilities } from '$lib/marking'

/** A line of values that overlap a little: the likelihood has its maximum at finite weights. */
const LINE = Array.from({ length: 60 }, (_, i) => ({ x: [i / 10], y: i > 30 !== (i % 7 === 0) }))

test('three groups are found again', () => {
  const centres = [
    [0, 0],
    [4, 0],
    [0, 4],
  ]
  const rows = centres.flatMap(([a, b], y) =>
    [-1, 0, 1].flatMap((p) => [-1, 0, 1].map((q) => ({ x: [a! + p * 0.5, b! + q * 0.5], y }))),
  )
  const model = fitClasses(rows, 3, 0.1)
  for (const { x, y } of rows) {
    const p = probabilities(model, x)
    expect(p.indexOf(Math.max(...p))).toBe(y)
    expect(p.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12)
  }
})

test('two classes agree with logistic regression', () => {
  const two = fitClasses(
    LINE.map(({ x, y }) => ({ x, y: y ? 1 : 0 })),
    2,
    1e-6,
  )
  const one = fit(LINE, 1e-6)
  for (const { x } of LINE) expect(probabilities(two, x)[1]).toBeCloseTo(probability(one, x), 2)
})

test('a feature that never varies weighs nothing', () => {
  const model = fitClasses(
    LINE.map(({ x, y }) => ({ x: [...x, 5], y: y ? 1 : 0 })),
    2,
    1,
  )
  for (const { weights } of model) expect(Math.abs(weights[1]!)).toBe(0)
})

/** Cohen's kappa, its standard error and its interval against published worked examples. */
import { describe, expect, test } from 'vitest'
import { agreementOf, kappaOf } from '../../src/lib/review'

const EXAMPLES = [
  {
    source:
      'SAS PROC FREQ printout in the tests of statsmodels (statsmodels/stats/tests/test_inter_rater.py, table10), BSD licence',
    table: [
      [0, 4, 1],
      [0, 8, 0],
      [0, 1, 5],
    ],
    value: 0.4842,
    error: 0.138,
    low: 0.2137,
    high: 0.7547,
    digits: 4,
  },
  {
    source:
      'statpsych, reference page of ci.kappa, Cohen’s kappa in the second row (formula of Fleiss and Paik 2003)',
    table: [
      [31, 12],
      [4, 58],
    ],
    value: 0.6756757,
    error: 0.07344761,
    low: 0.531721,
    high: 0.8196303,
    digits: 6,
  },
  {
    source:
      'SAS/STAT User’s Guide, PROC FREQ, “Agreement Study”: two dermatologists, 88 patients (table as published; results from memory)',
    table: [
      [10, 4, 1, 0],
      [5, 10, 12, 2],
      [2, 4, 12, 5],
      [0, 2, 6, 13],
    ],
    value: 0.3449,
    error: 0.0724,
    low: 0.203,
    high: 0.4868,
    digits: 4,
  },
]

describe('kappa', () => {
  test.each(EXAMPLES)('$source', ({ table, value, error, low, high, digits }) => {
    const kappa = kappaOf(table)
    expect(kappa?.value).toBeCloseTo(value, digits)
    expect(kappa?.error).toBeCloseTo(error, digits)
    expect(kappa?.low).toBeCloseTo(low, digits)
    expect(kappa?.high).toBeCloseTo(high, digits)
  })

  test('the counts of the dermatologists: 45 of 88 the same', () => {
    expect(agreementOf(EXAMPLES[2]!.table)).toMatchObject({ points: 88, same: 45 })
  })

  test('perfect agreement is 1 with no error; what chance alone would give is 0', () => {
    const perfect = kappaOf([
      [5, 0],
      [0, 7],
    ])
    expect(perfect?.value).toBe(1)
    expect(perfect?.error).toBeCloseTo(0, 6)
    expect(
      kappaOf([
        [4, 4],
        [4, 4],
      ])?.value,
    ).toBeCloseTo(0, 12)
  })

  test('it has no meaning where both gave every point the same mark, or where there are none', () => {
    expect(
      kappaOf([
        [9, 0],
        [0, 0],
      ]),
    ).toBeUndefined()
    expect(
      kappaOf([
        [0, 0],
        [0, 0],
      ]),
    ).toBeUndefined()
  })
})

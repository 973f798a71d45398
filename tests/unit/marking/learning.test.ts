import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  afterLearning,
  alike,
  SHIFT_BOUND,
  shiftOf,
  type MarkedAnswer,
} from '../../../src/lib/marking'

const answers = fc.record({
  text: fc.constantFrom(
    'the tide comes in twice a day',
    'sand is carried along by drift',
    'waves wear the cliff away',
    'groynes trap the sand',
  ),
  credited: fc.boolean(),
  sureness: fc.double({ min: 0, max: 1, noNaN: true }),
})
const unsure = fc.double({ min: 0.01, max: 0.99, noNaN: true })

describe('what one point learns from the marks that were changed', () => {
  test('nothing marked changes nothing', () => {
    fc.assert(
      fc.property(fc.string(), unsure, (text, p) => {
        expect(afterLearning(text, p, [])).toBe(p)
      }),
    )
  })

  test('a probability comes back, whatever was marked, and its own threshold keeps its bounds', () => {
    fc.assert(
      fc.property(fc.string(), unsure, fc.array(answers), (text, p, marked) => {
        const after = afterLearning(text, p, marked)
        expect(after >= 0 && after <= 1).toBe(true)
        expect(Math.abs(shiftOf(marked))).toBeLessThanOrEqual(SHIFT_BOUND)
      }),
    )
  })

  test('the words that were credited are never less sure for it, and those refused never more', () => {
    fc.assert(
      fc.property(unsure, answers, (p, one) => {
        const after = afterLearning(one.text, p, [one])
        if (one.credited) expect(after).toBeGreaterThanOrEqual(p)
        else expect(after).toBeLessThanOrEqual(p)
      }),
    )
  })

  test('the order of the marks makes no difference', () => {
    fc.assert(
      fc.property(unsure, fc.array(answers, { maxLength: 6 }), (p, marked) => {
        const said = 'drift carries the sand'
        expect(afterLearning(said, p, [...marked].reverse())).toBeCloseTo(
          afterLearning(said, p, marked),
          9,
        )
      }),
    )
  })

  test.each<{ marked: MarkedAnswer[]; why: string; sign: number }>([
    { marked: [], why: 'nothing marked', sign: 0 },
    { marked: [{ text: 'a', credited: true, sureness: 0.1 }], why: 'too strict', sign: 1 },
    { marked: [{ text: 'a', credited: false, sureness: 0.9 }], why: 'too generous', sign: -1 },
  ])('the threshold moves the right way: $why', ({ marked, sign }) => {
    expect(Math.sign(shiftOf(marked))).toBe(sign)
  })
})

describe('how alike two texts are', () => {
  test.each([
    ['waves wear the cliff away', 'waves wear the cliff away', 1, 1],
    ['the cliff is worn away by waves', 'waves wear the cliff away', 0.7, 1],
    ['groynes trap the sand', 'the tide comes in', 0, 0.2],
    ['', 'the tide comes in', 0, 0],
    ['the tide does not come in', 'the tide comes in', 0.3, 0.85],
  ])('%s | %s', (one, two, least, most) => {
    expect(alike(one, two)).toBeGreaterThanOrEqual(least - 1e-9)
    expect(alike(one, two)).toBeLessThanOrEqual(most + 1e-9)
    expect(alike(one, two)).toBeCloseTo(alike(two, one), 12)
  })
})

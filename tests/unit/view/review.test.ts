/** What the tutor's pages say, and what fits on the printed one. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { kappaOf } from '../../../src/lib/review'
import { kappaWords, onOnePage } from '../../../src/lib/view/review'

describe('kappa in words', () => {
  test.each([
    {
      why: 'the second example of tests/outside/kappa.test.ts, rounded',
      table: [
        [31, 12],
        [4, 58],
      ],
      says: /^Cohen’s kappa 0\.68, 95 % interval 0\.53 to 0\.82\.$/,
    },
    {
      why: 'all agree on marks of two kinds: an interval of no width would be a lie on three points',
      table: [
        [2, 0],
        [0, 1],
      ],
      says: /^Cohen’s kappa 1\.00; no interval can be given, because no mark differs\.$/,
    },
    { why: 'one kind of mark', table: [[3]], says: /has no value here/ },
    { why: 'no points', table: [[0]], says: /has no value here/ },
  ])('$why', ({ table, says }) => {
    expect(kappaWords(kappaOf(table))).toMatch(says)
  })
})

describe('one printed page', () => {
  const points = (letters: number, count: number) =>
    Array.from({ length: count }, () => ({ text: 'x'.repeat(letters) }))

  test('little is whole; of much it is the beginning', () => {
    const few = points(60, 5)
    expect(onOnePage(['a'], few)).toEqual({ topics: ['a'], points: few })
    const many = points(60, 500)
    const printed = onOnePage(Array<string>(30).fill('t'), many)
    expect(printed.topics).toHaveLength(14)
    expect(printed.points.length).toBeGreaterThan(5)
    expect(printed.points).toEqual(many.slice(0, printed.points.length))
  })

  test('longer points and more topics never leave room for more', () => {
    fc.assert(
      fc.property(fc.nat(400), fc.nat(400), fc.nat(20), (letters, more, topics) => {
        const room = (long: number, rows: number) =>
          onOnePage(Array<string>(rows).fill('t'), points(long, 100)).points.length
        expect(room(letters + more, topics)).toBeLessThanOrEqual(room(letters, topics))
        expect(room(letters, topics + 1)).toBeLessThanOrEqual(room(letters, topics))
      }),
    )
  })
})

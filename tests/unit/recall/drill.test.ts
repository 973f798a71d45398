import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { afterWriting, gapsOf, startPile } from '../../../src/lib/recall'
import { check } from './histories'

describe('the gap drill', () => {
  test('is made of everything not full, the student’s changes counted', () => {
    const changes = [{ ref: '1.2', outcome: 'full', by: 'student', atMs: 0 }] as const
    expect(gapsOf(check('2027-03-01T12:00:00Z', 'fpmc', { changes }))).toEqual(['1.3', '1.4'])
  })

  test.each([
    { outcome: 'full', pile: ['b', 'c'] },
    { outcome: 'partial', pile: ['b', 'c', 'a'] },
    { outcome: 'missed', pile: ['b', 'c', 'a'] },
    { outcome: 'contradicted', pile: ['b', 'c', 'a'] },
  ] as const)('$outcome -> $pile', ({ outcome, pile }) => {
    expect(afterWriting(['a', 'b', 'c'], outcome)).toEqual(pile)
  })

  test('an empty pile stays empty', () => {
    expect(afterWriting([], 'missed')).toEqual([])
  })

  test('the pile is the same points in another order, decided by the numbers given', () => {
    expect(startPile(['a', 'b', 'c'], () => 0)).toEqual(['b', 'c', 'a'])
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.string()),
        fc.infiniteStream(fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true })),
        (refs, numbers) => {
          const before = [...refs]
          const pile = startPile(refs, () => numbers.next().value as number)
          expect([...pile].sort()).toEqual([...before].sort())
          expect(refs).toEqual(before)
        },
      ),
    )
  })
})

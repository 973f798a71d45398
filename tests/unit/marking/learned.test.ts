import fc from 'fast-check'
import { expect, test } from 'vitest'
import { learnedFrom, learnt } from '../../../src/lib/marking'
import { LEARNT, MOST_MOVED } from '../../../src/lib/marking/3-outcomes/learned'

const answers = [
  { text: 'The pebbles are thrown against the cliff by the waves', credited: true },
  { text: 'Rocks bump into each other and get rounder', credited: false },
]

test.each([
  {
    says: 'waves throw pebbles against the cliff',
    than: 'rocks bump each other and are rounder',
    why: 'a credited one helps',
  },
  {
    says: 'waves throw pebbles against the cliff',
    than: 'waves never throw pebbles against the cliff',
    why: 'a denial is another answer',
  },
  {
    says: 'the tide goes out at noon',
    than: 'rocks bump into each other and get rounder',
    why: 'what is like neither is worth more than what was refused',
  },
])('$why', ({ says, than }) => {
  const learned = learnedFrom(answers)
  expect(learnt(says, learned)).toBeGreaterThan(learnt(than, learned))
})

test('without marked answers nothing moves', () => {
  expect(learnt('waves throw pebbles', learnedFrom([]))).toBe(0)
})

test('whatever was marked, no answer is moved further than the stated bounds', () => {
  const marked = fc.array(fc.record({ text: fc.string(), credited: fc.boolean() }))
  fc.assert(
    fc.property(marked, fc.string(), (list, says) => {
      expect(Math.abs(learnt(says, learnedFrom(list)))).toBeLessThanOrEqual(LEARNT + MOST_MOVED)
    }),
  )
})

test('the order in which answers were marked changes nothing', () => {
  const marked = fc.array(fc.record({ text: fc.lorem(), credited: fc.boolean() }), { maxLength: 8 })
  fc.assert(
    fc.property(marked, fc.lorem(), (list, says) => {
      expect(learnt(says, learnedFrom([...list].reverse()))).toBe(learnt(says, learnedFrom(list)))
    }),
  )
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { refsOf, segmentsOf, type Cover } from '../../../src/lib/view/segments'

const cover = (start: number, end: number, ref = '1.1'): Cover => ({
  span: { start, end },
  role: 'said',
  ref,
})

describe('segmentsOf', () => {
  test.each([
    { text: '', covers: [], parts: [], why: 'an empty page has none' },
    { text: 'swash', covers: [], parts: ['swash'], why: 'nothing found: one segment' },
    {
      text: 'up the beach',
      covers: [cover(3, 6)],
      parts: ['up ', 'the', ' beach'],
      why: 'one idea',
    },
    {
      text: 'abcdef',
      covers: [cover(0, 4, '1'), cover(2, 6, '2')],
      parts: ['ab', 'cd', 'ef'],
      why: 'overlap',
    },
    {
      text: 'abcdef',
      covers: [cover(0, 6, '1'), cover(2, 4, '2')],
      parts: ['ab', 'cd', 'ef'],
      why: 'nested',
    },
    {
      text: 'abc',
      covers: [cover(-5, 1), cover(2, 99)],
      parts: ['a', 'b', 'c'],
      why: 'beyond the page',
    },
    {
      text: 'abc',
      covers: [cover(2, 2), cover(3, 1)],
      parts: ['abc'],
      why: 'empty and turned round',
    },
  ])('$why', ({ text, covers, parts }) => {
    expect(segmentsOf(text, covers).map((segment) => segment.text)).toEqual(parts)
  })

  test('an overlap knows both points', () => {
    const segments = segmentsOf('abcdef', [cover(0, 4, '1'), cover(2, 6, '2')])
    expect(segments.map((segment) => refsOf(segment))).toEqual([['1'], ['1', '2'], ['2']])
  })

  test('a cut parts a segment and covers nothing', () => {
    const segments = segmentsOf('abcd', [cover(0, 4)], [2])
    expect(segments.map(({ text, covers }) => [text, covers.length])).toEqual([
      ['ab', 1],
      ['cd', 1],
    ])
  })
})

const pages = fc.string({ unit: 'grapheme', maxLength: 200 })
const offset = fc.integer({ min: -20, max: 420 })
const covers = fc.array(
  fc.record({
    span: fc.record({ start: offset, end: offset }),
    role: fc.constantFrom('said', 'clash', 'clash-words', 'nearest' as const),
    ref: fc.constantFrom('1.1', '1.2', '1.3'),
  }),
  { maxLength: 40 },
)

describe('for every page and every set of covers', () => {
  test('the segments put together are the page', () => {
    fc.assert(
      fc.property(pages, covers, fc.array(offset), (text, all, cuts) => {
        const segments = segmentsOf(text, all, cuts)
        expect(segments.map((segment) => segment.text).join('')).toBe(text)
        expect(segments.every(({ start, end }) => start < end)).toBe(true)
      }),
    )
  })

  test('each character is under exactly the covers that reach over it', () => {
    fc.assert(
      fc.property(pages, covers, (text, all) => {
        for (const { start, end, covers: found } of segmentsOf(text, all))
          for (let at = start; at < end; at++)
            expect(found).toEqual(all.filter(({ span }) => span.start <= at && at < span.end))
      }),
    )
  })
})

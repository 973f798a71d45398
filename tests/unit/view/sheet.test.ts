/** Where points and cards go on paper. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Point } from '../../../src/lib/syllabus'
import {
  cardGrids,
  cardLeaves,
  fillPages,
  oneLarger,
  PLAIN_LOOK,
  readLook,
} from '../../../src/lib/view/sheet-layout'
import { stepsOf, symbolRows } from '../../../src/lib/view/sheet-points'
import { shippedTopics } from '../marking/shipped'

describe('pages of a sheet', () => {
  const room = fc.record({
    height: fc.integer({ min: 50, max: 900 }),
    firstHeight: fc.integer({ min: 50, max: 900 }),
    columns: fc.integer({ min: 1, max: 2 }),
  })

  test('every block stands once, in order, and no column holds more than its room unless one block is all of it', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(1200), { maxLength: 60 }), room, (heights, given) => {
        const pages = fillPages(heights, given)
        expect(pages.flat(2)).toEqual(heights.map((_, i) => i))
        pages.forEach((columns, n) => {
          expect(columns.length).toBeLessThanOrEqual(given.columns)
          for (const column of columns) {
            const used = column.reduce((sum, i) => sum + heights[i]!, 0)
            const high = column.filter((i) => heights[i]! > 0)
            if (high.length > 1)
              expect(used).toBeLessThanOrEqual(n === 0 ? given.firstHeight : given.height)
          }
        })
      }),
    )
  })

  test('the first page has less room, a second column comes before a second page', () => {
    expect(fillPages([40, 40, 40, 40], { firstHeight: 50, height: 80, columns: 1 })).toEqual([
      [[0]],
      [[1, 2]],
      [[3]],
    ])
    expect(fillPages([40, 40, 40], { firstHeight: 50, height: 80, columns: 2 })).toEqual([
      [[0], [1]],
      [[2]],
    ])
    expect(fillPages([], { firstHeight: 50, height: 80, columns: 1 })).toEqual([[[]]])
  })
})

describe('cards for printing on both sides, turned over the long edge', () => {
  const grid = fc.record({
    columns: fc.integer({ min: 1, max: 3 }),
    rows: fc.integer({ min: 1, max: 7 }),
  })

  test('each card has one front, and its back is where its front is seen through the paper', () => {
    fc.assert(
      fc.property(fc.nat(80), grid, (count, { columns, rows }) => {
        const cards = Array.from({ length: count }, (_, i) => i)
        const leaves = cardLeaves(cards, { columns, rows })
        expect(leaves.flatMap(({ front }) => front).filter((card) => card !== undefined)).toEqual(
          cards,
        )
        for (const { front, back } of leaves) {
          expect(front).toHaveLength(columns * rows)
          front.forEach((card, i) => {
            const [row, column] = [Math.floor(i / columns), i % columns]
            expect(back[row * columns + (columns - 1 - column)]).toBe(card)
          })
        }
      }),
    )
  })

  test('a row that is not full has its backs at the other side', () => {
    const [leaf] = cardLeaves(['a', 'b', 'c'], { columns: 2, rows: 2 })
    expect(leaf?.front).toEqual(['a', 'b', 'c', undefined])
    expect(leaf?.back).toEqual(['b', 'a', undefined, 'c'])
  })

  test('grids get roomier down to one card a page', () => {
    for (const paper of ['a4', 'a3'] as const)
      for (const size of ['small', 'large', 'largest'] as const) {
        const cards = cardGrids({ ...PLAIN_LOOK, paper, size, columns: 2 }).map(
          ({ columns, rows }) => columns * rows,
        )
        expect([...cards].sort((a, b) => b - a)).toEqual(cards)
        expect(new Set(cards).size).toBe(cards.length)
        expect(cards.at(-1)).toBe(1)
      }
  })

  test('a card that does not fit goes up once a round, whichever of its sides is too long', () => {
    expect([...oneLarger(new Map([['a', 2]]), ['a', 'a', 'b'], 2)]).toEqual([
      ['a', 2],
      ['b', 1],
    ])
  })
})

test.each([
  { address: '', look: PLAIN_LOOK },
  {
    address: 'as=cards&paper=a3&size=small&columns=2',
    look: { as: 'cards', paper: 'a3', size: 'small', columns: 2 },
  },
  { address: 'as=poster&paper=a5&size=12&columns=9', look: PLAIN_LOOK },
])('the look that "$address" asks for', ({ address, look }) => {
  expect(readLook(new URLSearchParams(address))).toEqual(look)
})

const shipped: (Point & { topic: string })[] = shippedTopics.flatMap(({ topic }) =>
  topic.points.map((point) => ({ ...point, topic: topic.title })),
)
const withSteps = shipped.filter(({ steps }) => steps)
const words = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []

test.each(withSteps)('$ref of $topic: as many steps as its author noted', (point) => {
  const found = stepsOf(point)!
  expect(found.steps).toHaveLength(point.steps!.length)
  for (const step of found.steps) expect(step.trim()).not.toBe('')
  if (!found.wordForWord) return
  for (const piece of [found.lead, ...found.steps]) expect(point.text).toContain(piece)
  // Nothing of the text is lost but the words that only join.
  const kept = words([found.lead, ...found.steps].join(' '))
  const left = words(point.text).filter((word) => !['and', 'then'].includes(word))
  expect(kept.filter((word) => !['and', 'then'].includes(word))).toEqual(left)
})

test('most of the shipped procedures are told in their own words', () => {
  const own = withSteps.filter((point) => stepsOf(point)?.wordForWord)
  expect(own.length / withSteps.length).toBeGreaterThan(0.9)
})

test('symbols come with their first words', () => {
  const speed = shipped.find(({ equation }) => equation?.written === 'v = f × λ')!
  expect(symbolRows(speed)).toEqual([
    { symbol: 'v', words: 'wave speed' },
    { symbol: 'f', words: 'frequency' },
    { symbol: 'λ', words: 'wavelength' },
  ])
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { placePoints, type Anchor } from '../../../src/lib/view/placement'

const TEXT = 'Waves come in. Swash goes up.\n\nBackwash comes down. It goes on.\n'
const STATEMENTS = ['Waves come in.', 'Swash goes up.', 'Backwash comes down.', 'It goes on.']

/** An anchor at a word of the page, in the statement that it stands in. */
function at(word: string, firm = true): Anchor {
  const start = TEXT.indexOf(word)
  const statement = STATEMENTS.find((one) => one.includes(word))!
  const from = TEXT.indexOf(statement)
  return {
    words: { start, end: start + word.length },
    statement: { start: from, end: from + statement.length },
    firm,
  }
}

const shown = (anchors: (Anchor | undefined)[], arrangement: 'page' | 'syllabus') =>
  placePoints(TEXT, anchors, arrangement).map(({ index, at: offset }) => [
    index,
    TEXT.slice(offset, offset + 8),
  ])

describe('in one column', () => {
  test.each([
    { why: 'under its statement', anchors: [at('Waves')], places: [[0, 'Swash go']] },
    {
      why: 'after the line of its statement, before the blank line',
      anchors: [at('Swash')],
      places: [[0, '\nBackwas']],
    },
    {
      why: 'a missed point between its neighbours',
      anchors: [at('Waves'), undefined, at('Backwash')],
      places: [
        [0, 'Swash go'],
        [1, 'Swash go'],
        [2, 'It goes '],
      ],
    },
    {
      why: 'missed points before the first that is said',
      anchors: [undefined, at('Backwash')],
      places: [
        [0, 'Backwash'],
        [1, 'It goes '],
      ],
    },
    {
      why: 'a page written in another order: points follow the page',
      anchors: [at('Backwash'), at('Waves')],
      places: [
        [1, 'Swash go'],
        [0, 'It goes '],
      ],
    },
    {
      why: 'a missed point under the nearest statement, where the order allows it',
      anchors: [at('Waves'), at('Swash', false), at('Backwash')],
      places: [
        [0, 'Swash go'],
        [1, '\nBackwas'],
        [2, 'It goes '],
      ],
    },
    {
      why: 'the nearest statement out of order is no place',
      anchors: [at('Swash'), at('Waves', false)],
      places: [
        [0, '\nBackwas'],
        [1, '\nBackwas'],
      ],
    },
    { why: 'nothing said at all: after the page', anchors: [undefined], places: [[0, '']] },
  ])('$why', ({ anchors, places }) => {
    expect(shown(anchors, 'page')).toEqual(places)
  })
})

describe('in a margin', () => {
  test.each([
    {
      why: 'level with the words',
      anchors: [at('come'), at('up')],
      places: [
        [0, 'come in.'],
        [1, 'up.\n\nBac'],
      ],
    },
    {
      why: 'a missed point at the end of the statement before it',
      anchors: [at('come'), undefined, at('Backwash')],
      places: [
        [0, 'come in.'],
        [1, ' Swash g'],
        [2, 'Backwash'],
      ],
    },
    {
      why: 'the syllabus’s order is kept: what was said first but comes last is put in last',
      anchors: [at('Swash'), at('Backwash'), at('Waves')],
      places: [
        [0, 'Swash go'],
        [1, 'Backwash'],
        [2, ' It goes'],
      ],
    },
    { why: 'nothing said at all: after the page', anchors: [undefined], places: [[0, '']] },
  ])('$why', ({ anchors, places }) => {
    expect(shown(anchors, 'syllabus')).toEqual(places)
  })
})

const anchor = fc
  .tuple(fc.nat(60), fc.nat(60), fc.nat(60), fc.boolean())
  .map(([a, b, c, firm]): Anchor => {
    const [start, words, end] = [a, b, c].sort((x, y) => x - y) as [number, number, number]
    return { words: { start: words, end }, statement: { start, end }, firm }
  })
const anchors = fc.array(fc.option(anchor, { nil: undefined }), { maxLength: 20 })

test.each(['page', 'syllabus'] as const)(
  '%s: every point once, offsets never fall',
  (arrangement) => {
    fc.assert(
      fc.property(anchors, (all) => {
        const places = placePoints(TEXT, all, arrangement)
        expect(places.map(({ index }) => index).sort((a, b) => a - b)).toEqual(all.map((_, i) => i))
        const offsets = places.map(({ at: offset }) => offset)
        expect(offsets).toEqual([...offsets].sort((a, b) => a - b))
        expect(offsets.every((offset) => offset >= 0 && offset <= TEXT.length)).toBe(true)
      }),
    )
  },
)

test('in a margin the points keep the order of the syllabus', () => {
  fc.assert(
    fc.property(anchors, (all) => {
      const order = placePoints(TEXT, all, 'syllabus').map(({ index }) => index)
      expect(order).toEqual(all.map((_, i) => i))
    }),
  )
})

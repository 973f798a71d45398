import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pointList, readPointList, sheetOfPointsHref } from '../../../src/lib/view/addresses'

const place = fc.record({
  topicId: fc.string({ minLength: 1, unit: 'grapheme' }),
  ref: fc.string({ minLength: 1 }),
})

test('a list of points comes back from its address, whatever signs its refs have', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(place, { selector: (one) => pointList([one]) }),
      fc.string({ minLength: 1 }),
      (points, syllabusId) => {
        const { searchParams } = new URL(sheetOfPointsHref(syllabusId, points), 'https://here.test')
        expect(readPointList(searchParams.get('points') ?? '')).toEqual(points)
        expect(searchParams.get('syllabus')).toBe(syllabusId)
      },
    ),
  )
})

test.each([
  { list: '', gives: [], why: 'nothing' },
  { list: 'drift:2.1,dri', gives: ['2.1'], why: 'cut short' },
  { list: 'drift:2.1,drift:2.1', gives: ['2.1'], why: 'twice the same' },
  { list: 'drift:%E0%A4%A,drift:2.2', gives: ['2.2'], why: 'damaged escape' },
  { list: 'a:b:c', gives: [], why: 'a colon too many' },
])('$why: $list', ({ list, gives }) => {
  expect(readPointList(list).map(({ ref }) => ref)).toEqual(gives)
})

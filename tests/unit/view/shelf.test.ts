import { describe, expect, test } from 'vitest'
import type { Check } from '../../../src/lib/recall'
import { formerTopics, shelfOf, sizeOf } from '../../../src/lib/view/shelf'
import { takenIds } from '../../../src/lib/view/taken'
import { check } from '../store/records'

const own = { id: 'own', title: 'Own', shipped: false, topics: [{ id: 'a', points: 1 }] }
const shores = {
  id: 'shores',
  title: 'Shores',
  shipped: true,
  topics: [
    { id: 'drift', points: 12 },
    { id: 'tides', points: 9 },
  ],
}

describe('which shipped syllabi are taken', () => {
  test.each([
    { chosen: undefined, checked: [], taken: [], why: 'nothing chosen and nothing checked' },
    { chosen: undefined, checked: ['shores', 'shores'], taken: ['shores'], why: 'checked' },
    { chosen: [], checked: ['shores'], taken: [], why: 'taken off again, checks or not' },
    { chosen: ['shores'], checked: [], taken: ['shores'], why: 'chosen' },
  ])('$why', ({ chosen, checked, taken }) => {
    const settings = chosen === undefined ? {} : { syllabusIds: chosen }
    expect(
      takenIds(
        settings,
        checked.map((syllabusId) => ({ syllabusId })),
      ),
    ).toEqual(taken)
  })
})

test('what the user brought is in use, a shipped one only once it is taken', () => {
  expect(shelfOf([shores, own], [])).toEqual({ inUse: [own], toLookAt: [shores] })
  expect(shelfOf([shores, own], ['shores'])).toEqual({ inUse: [shores, own], toLookAt: [] })
})

test.each([
  { syllabus: shores, words: '2 topics, 21 points' },
  { syllabus: own, words: '1 topic, 1 point' },
  { syllabus: { topics: [] }, words: '0 topics, 0 points' },
])('the size in words: $words', ({ syllabus, words }) => {
  expect(sizeOf(syllabus)).toBe(words)
})

describe('topics that were checked and are no longer there', () => {
  const made = (id: string, topicId: string, day: number, topicTitle = topicId): Check =>
    check(id, { topicId, topicTitle, zone: 'UTC', atMs: Date.UTC(2026, 2, day, 12) })

  test('the latest first, each with its checks and its latest title', () => {
    const checks = [
      made('1', 'spits', 1, 'Spits'),
      made('2', 'pools', 9),
      made('3', 'spits', 4, 'Spits and bars'),
      made('4', 'drift', 20),
    ]
    expect(formerTopics(checks, [shores])).toEqual([
      { syllabusId: 'shores', topicId: 'pools', title: 'pools', checks: 1, latest: '2026-03-09' },
      {
        syllabusId: 'shores',
        topicId: 'spits',
        title: 'Spits and bars',
        checks: 2,
        latest: '2026-03-04',
      },
    ])
  })

  test('all of a syllabus that was removed; none where all are there', () => {
    const checks = [made('1', 'drift', 1), made('2', 'tides', 2)]
    expect(formerTopics(checks, [own]).map(({ topicId }) => topicId)).toEqual(['tides', 'drift'])
    expect(formerTopics(checks, [shores, own])).toEqual([])
  })
})

import { describe, expect, test } from 'vitest'
import { whatFirst, type Check, type Status } from '../../../src/lib/recall'
import {
  chosen,
  finishedSentence,
  mapOf,
  mapWords,
  statusCounts,
  type Wanted,
} from '../../../src/lib/view/syllabus-map'
import { history, noon, settings } from '../recall/histories'

const today = '2027-03-20'
const LINES: Readonly<Record<string, string>> = {
  Waves: '03-01 full, 03-05 full, 03-09 full',
  drift: '03-18 gaps',
  Rocks: '',
  cliffs: '03-01 full, 03-05 full, 03-09 full, 03-19 gaps',
  Salt: '03-20 full',
}
const topics = Object.keys(LINES).map((title) => ({ id: title, title, points: 2 }))
const checks: Check[] = Object.entries(LINES).flatMap(([topicId, line]) =>
  history(line).map((check) => ({ ...check, id: `${topicId} ${check.id}`, topicId })),
)
const plans = whatFirst(
  topics.map(({ id }) => ({ syllabusId: 'shores', topicId: id })),
  checks,
  settings(),
  noon(today),
)
const map = mapOf(topics, plans, today)
const titles = (wanted: Partial<Wanted>) =>
  chosen(map, { status: 'all', text: '', sort: 'syllabus', ...wanted }, plans).map(
    ({ title }) => title,
  )

describe('the map of a syllabus', () => {
  test('has every topic in the syllabus’s order with its status and how full it is', () => {
    expect(map.map(({ number, title, status, share }) => [number, title, status, share])).toEqual([
      [1, 'Waves', 'finished', 1],
      [2, 'drift', 'gaps', 0.5],
      [3, 'Rocks', 'not checked', 0],
      [4, 'cliffs', 'reopened', 0.5],
      [5, 'Salt', 'full', 1],
    ])
  })
  test.each([
    { at: 1, says: '2. drift: gaps, 1 of 2 points full' },
    { at: 2, says: '3. Rocks: not checked yet, 2 points' },
  ])('$says', ({ at, says }) => expect(mapWords(map[at]!)).toBe(says))

  test('counts each status that there is', () => {
    expect(statusCounts(map.slice(0, 3))).toEqual([
      { status: 'finished', count: 1 },
      { status: 'gaps', count: 1 },
      { status: 'not checked', count: 1 },
    ])
  })
})

describe('the share that is finished', () => {
  const of = (...statuses: Status[]) =>
    finishedSentence(statuses.map((status) => ({ ...map[0]!, status })))
  test.each([
    { statuses: [], says: 'It has no topics yet.' },
    { statuses: ['gaps', 'full'], says: 'None of its 2 topics is finished yet.' },
    { statuses: ['finished', 'gaps', 'gaps'], says: '1 of 3 topics is finished: 33 %.' },
    { statuses: ['finished', 'finished', 'full'], says: '2 of 3 topics are finished: 66 %.' },
    { statuses: ['finished'], says: 'Its one topic is finished.' },
    { statuses: ['finished', 'finished'], says: 'All 2 topics are finished.' },
  ] as { statuses: Status[]; says: string }[])('$says', ({ statuses, says }) =>
    expect(of(...statuses)).toBe(says),
  )
  test('reopened is not finished', () => {
    expect(of('reopened')).toBe('None of its 1 topic is finished yet.')
  })
  test('199 of 200 are never 100 %', () => {
    const many = [...Array<Status>(199).fill('finished'), 'gaps' as const]
    expect(of(...many)).toBe('199 of 200 topics are finished: 99 %.')
  })
})

describe('looking through', () => {
  test.each<{ wanted: Partial<Wanted>; finds: string[] }>([
    { wanted: {}, finds: ['Waves', 'drift', 'Rocks', 'cliffs', 'Salt'] },
    { wanted: { status: 'gaps' }, finds: ['drift'] },
    { wanted: { text: ' S ' }, finds: ['Waves', 'Rocks', 'cliffs', 'Salt'] },
    { wanted: { text: 's', status: 'finished' }, finds: ['Waves'] },
    { wanted: { text: 'lagoon' }, finds: [] },
    { wanted: { sort: 'title' }, finds: ['cliffs', 'drift', 'Rocks', 'Salt', 'Waves'] },
    { wanted: { sort: 'recall' }, finds: ['Rocks', 'drift', 'cliffs', 'Waves', 'Salt'] },
    { wanted: { sort: 'first' }, finds: ['drift', 'cliffs', 'Waves', 'Rocks', 'Salt'] },
    { wanted: { sort: 'next' }, finds: ['Waves', 'drift', 'cliffs', 'Salt', 'Rocks'] },
  ])('$wanted', ({ wanted, finds }) => expect(titles(wanted)).toEqual(finds))
})

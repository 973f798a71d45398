import { expect, test } from 'vitest'
import { syllabiInUse } from '../../../src/lib/components/library'

const example = { id: 'example', shipped: true, topics: [] }
const other = { id: 'other', shipped: true, topics: [] }
const own = { id: 'own', shipped: false, topics: [] }

test.each([
  { why: 'a first visit: none', syllabi: [example, other], worked: [], used: [] },
  { why: 'an own one, and no examples', syllabi: [example, own], worked: [], used: ['own'] },
  {
    why: 'an example with a check or a draft',
    syllabi: [example, other, own],
    worked: ['other'],
    used: ['other', 'own'],
  },
  {
    why: 'an example that was taken',
    syllabi: [example, other],
    taken: ['example'],
    worked: [],
    used: ['example'],
  },
  {
    why: 'an example that was taken off, its checks or not',
    syllabi: [example, own],
    taken: [],
    worked: ['example'],
    used: ['own'],
  },
  {
    why: 'checks of a syllabus that is gone bring nothing',
    syllabi: [example],
    worked: ['gone'],
    used: [],
  },
])('in use: $why', ({ syllabi, taken, worked, used }) => {
  const settings = taken ? { syllabusIds: taken } : {}
  const places = worked.map((syllabusId) => ({ syllabusId }))
  expect(syllabiInUse(syllabi, settings, places).map(({ id }) => id)).toEqual(used)
})

/** The demo beside what the user has: put in, taken out, left out of a backup; nothing of the user's is touched. */
import { beforeEach, expect, test } from 'vitest'
import * as store from '../../../src/lib/store'
import { check, draft, empty, page, paper, rawGet, rawSet, someSettings, syllabus } from './records'

beforeEach(empty)

const ID = 'demo:shores'
const demo = (): store.DemoRecords => ({
  syllabus: { ...syllabus(ID), id: ID },
  checks: ['demo:1', 'demo:2'].map((id) => ({
    check: check(id, { syllabusId: ID }),
    page: page(id),
  })),
  papers: [{ ...paper('demo:p'), syllabusId: ID }],
  exams: [{ syllabusId: ID, day: '2027-06-01', title: 'Paper 1' }],
  ratings: [{ syllabusId: ID, topicId: 'drift', rating: 'hard' }],
})

async function fill(): Promise<void> {
  await store.addCheck(check('a'), page('a'))
  await store.saveDraft(draft('drift'))
  await store.putSyllabus(syllabus('shores'))
  await store.putPaper(paper('p'))
  await store.saveSettings(someSettings)
}

test('in and out again leaves everything of the user as it was', async () => {
  await fill()
  await rawSet('check/broken', { schema: 1, id: 'broken' })
  const before = await store.exportAll(5)
  await store.addDemo(demo())
  expect((await store.listChecks()).checks).toHaveLength(3)
  expect(await store.demoState()).toEqual({ loaded: true, written: 0 })
  expect((await store.getSettings()).exams).toEqual([...someSettings.exams, ...demo().exams])
  expect(await store.exportAll(5)).toEqual(before)

  await store.removeDemo()
  expect(await store.exportAll(5)).toEqual(before)
  expect(await store.getSettings()).toEqual(someSettings)
  expect(await store.demoState()).toEqual({ loaded: false, written: 0 })
})

test('on an empty app nothing is left of it, not even settings', async () => {
  await store.addDemo(demo())
  await store.removeDemo()
  expect(await rawGet('settings')).toBeUndefined()
  expect((await store.listSyllabi()).syllabi).toEqual([])
})

test('loaded twice it is there once', async () => {
  await store.addDemo(demo())
  await store.addDemo(demo())
  expect((await store.listChecks()).checks).toHaveLength(2)
  expect((await store.getSettings()).exams).toHaveLength(1)
  expect((await store.getSettings()).ratings).toHaveLength(1)
})

test('settings that the user changed meanwhile stay', async () => {
  await store.addDemo(demo())
  await store.changeSettings((settings) => ({ ...settings, minutesADay: 45 }))
  await store.removeDemo()
  expect(await store.getSettings()).toMatchObject({ minutesADay: 45, exams: [], ratings: [] })
})

test('what the user writes on its topics is counted, left out of a backup, and goes with it', async () => {
  await fill()
  await store.addDemo(demo())
  await store.addCheck(check('mine', { syllabusId: ID }), page('mine'))
  await store.saveDraft({ ...draft('drift'), syllabusId: ID })
  expect(await store.demoState()).toEqual({ loaded: true, written: 2 })
  const { records } = await store.exportAll(5)
  expect(records.check.map(({ id }) => id)).toEqual(['a'])
  expect(records.page.map(({ id }) => id)).toEqual(['a'])
  expect(records.draft).toHaveLength(1)

  await store.removeDemo()
  expect((await store.listChecks()).checks.map(({ id }) => id)).toEqual(['a'])
  expect(await store.getPage('mine')).toBeUndefined()
  expect(await store.listDrafts()).toEqual([draft('drift')])
})

test('a record without the prefix is refused, and nothing is kept of the rest', async () => {
  const mixed = { ...demo(), papers: [paper('p')] }
  await expect(store.addDemo(mixed)).rejects.toThrow(store.StoreError)
  expect(await store.demoState()).toEqual({ loaded: false, written: 0 })
})

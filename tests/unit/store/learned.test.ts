/** What a point learnt is kept for it alone, comes back, and goes through a backup. */
import { beforeEach, expect, test } from 'vitest'
import { withPoint } from '../../../src/lib/review'
import * as store from '../../../src/lib/store'
import { change, check, empty, page, rawGet, rawSet } from './records'

beforeEach(empty)

const at = { syllabusId: 'shores', topicId: 'drift' }
const wording = (more: Partial<store.LearnedWording> = {}): store.LearnedWording => ({
  schema: 1,
  ...at,
  ref: '1.1',
  checkId: 'a',
  text: 'The waves come in askew.',
  credited: true,
  by: 'student',
  atMs: 5,
  pointText: 'Waves come in at an angle.',
  ...more,
})

test('it is kept by topic, whatever is in the ids, and removed by point and check', async () => {
  const one = wording({ ref: '1/1', checkId: 'x/y' })
  const other = wording({ topicId: 'drift/1', checkId: 'z' })
  await store.keepWording(one)
  await store.keepWording(other)
  expect(await store.listLearned(at)).toEqual([one])
  await store.forgetWording({ ...one, checkId: 'x' })
  expect(await store.listLearned(at)).toEqual([one])
  await store.forgetWording(one)
  expect(await store.listLearned(at)).toEqual([])
  expect(await store.listLearned(other)).toEqual([other])
})

test('a mark and what it teaches are kept together or not at all, the tutor’s and the student’s', async () => {
  const mark = (atMs: number) => (review: Parameters<typeof withPoint>[0]) =>
    withPoint(review, { ref: '1.1', outcome: 'full', comment: '', atMs })
  const taught = wording({ by: 'tutor', pupilId: 'ada' })
  await store.changeReview('ada', 'a', mark(1), { at: taught, wording: taught })
  expect(await rawGet('review/ada/a')).toBeDefined()
  expect(await store.listTaughtBy('ada')).toEqual([taught])
  // What cannot be kept takes its mark with it.
  const wrong = { at: taught, wording: { ...taught, text: 7 as unknown as string } }
  await expect(store.changeReview('ada', 'b', mark(2), wrong)).rejects.toThrow(/not kept/)
  expect(await rawGet('review/ada/b')).toBeUndefined()

  await store.addCheck(check('a'), page('a'))
  const learnt = wording({ atMs: 9 })
  await store.changeMark('a', change(1), { at: learnt, wording: learnt })
  expect(await store.listLearned(at)).toEqual([taught, learnt])
  const wrongToo = { at: learnt, wording: { ...learnt, text: 7 as unknown as string } }
  await expect(store.changeMark('a', change(2), wrongToo)).rejects.toThrow(/not kept/)
  expect((await store.getCheck('a'))?.changes).toEqual([change(1)])
  // A mark that teaches nothing any more takes its wording away.
  await store.changeMark('a', change(3), { at: learnt, wording: undefined })
  expect(await store.listLearned(at)).toEqual([taught])
})

test('a wording is withdrawn only as long as its mark has taught no other one', async () => {
  await store.keepWording(wording({ atMs: 6, credited: false }))
  await store.withdrawWording(wording({ atMs: 5 }))
  expect(await store.listLearned(at)).toHaveLength(1)
  await store.withdrawWording(wording({ atMs: 6 }))
  expect(await store.listLearned(at)).toEqual([])
})

test('the latest word on a wording stands; other points and other wordings stay', async () => {
  await store.keepWording(wording())
  await store.keepWording(wording({ ref: '1.2' }))
  await store.keepWording(wording({ checkId: 'b', text: 'They hit the beach at a slant.' }))
  const refused = wording({
    checkId: 'c',
    text: 'the waves  come in askew.',
    credited: false,
    atMs: 9,
  })
  await store.keepWording(refused)
  const kept = await store.listLearned(at)
  expect(kept.map(({ ref, checkId }) => `${ref} ${checkId}`).sort()).toEqual([
    '1.1 b',
    '1.1 c',
    '1.2 a',
  ])
})

test('one that cannot be read is left out, stays, and is listed', async () => {
  await rawSet('learned/shores/drift/1.1/bad', { schema: 1 })
  await store.keepWording(wording())
  expect(await store.listLearned(at)).toEqual([wording()])
  expect(await rawGet('learned/shores/drift/1.1/bad')).toEqual({ schema: 1 })
  expect(await store.unreadableRecords()).toHaveLength(1)
})

test('a backup brings it back, and an older backup without any is read', async () => {
  await store.keepWording(wording())
  const backup = await store.exportAll(1)
  await empty()
  expect(await store.importAll(JSON.stringify(backup))).toMatchObject({ added: 1 })
  expect(await store.listLearned(at)).toEqual([wording()])
  const later = wording({ credited: false, atMs: 8 })
  await store.keepWording(later)
  expect(await store.importAll(backup)).toMatchObject({ unchanged: 1 })
  expect(await store.listLearned(at)).toEqual([later])
  const { learned: _, ...records } = backup.records
  expect(await store.importAll({ ...backup, records })).toMatchObject({ added: 0 })
})

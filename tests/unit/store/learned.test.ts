/** What a point learnt is kept for it alone, comes back, and goes through a backup. */
import { beforeEach, expect, test } from 'vitest'
import * as store from '../../../src/lib/store'
import { empty, rawGet, rawSet } from './records'

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

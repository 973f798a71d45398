/** Nothing is left after everything was erased: no record, none that cannot be read, none of the demo or of a pupil. */
import { beforeEach, expect, test } from 'vitest'
import * as store from '../../../src/lib/store'
import { KINDS } from '../../../src/lib/store/keys'
import { check, draft, empty, page, rawGet, rawSet, someSettings } from './records'

beforeEach(empty)

test('every kind of record is gone, set aside or not', async () => {
  await store.addCheck(check('a'), page('a'))
  await store.saveDraft(draft('drift'))
  await store.saveSettings(someSettings)
  const keys = KINDS.flatMap((kind) => [`${kind}/x`, `aside/${kind}/x/1`])
  for (const key of keys) await rawSet(key, 'whatever was there')
  await store.eraseAll()
  for (const key of [...keys, 'check/a', 'page/a', 'settings'])
    expect(await rawGet(key)).toBeUndefined()
  const { records, setAside } = await store.exportAll()
  expect([Object.values(records).flat(), setAside]).toEqual([[], []])
})

test('what is kept afterwards stays, and erasing nothing is no fault', async () => {
  await store.eraseAll()
  await store.addCheck(check('a'), page('a'))
  expect(await store.getCheck('a')).toEqual(check('a'))
})

/** A long history is read fast, and never otherwise than it is kept: two windows of one browser, and what lies beside the records. */
import { beforeEach, describe, expect, test, vi } from 'vitest'
import type * as Store from '../../../src/lib/store'
import { change, check, empty, page, rawAll, rawGet, rawPut, rawSet } from './records'

const LONG = 220
const id = (i: number) => `c${String(i).padStart(4, '0')}`

beforeEach(empty)

/** The store as a window of its own has it: what one remembers the other does not know. */
async function window(): Promise<typeof Store> {
  vi.resetModules()
  return import('../../../src/lib/store')
}

async function long(store: typeof Store, length = LONG): Promise<void> {
  for (let i = 0; i < length; i += 1) await store.addCheck(check(id(i), { atMs: i }), page(id(i)))
}

/** The same, as it was written check by check the first time. */
let written: ReadonlyMap<string, unknown> | undefined
async function longAgain(store: typeof Store): Promise<void> {
  if (written) return rawPut(written)
  await long(store)
  written = await rawAll()
}

/** Lists once and waits for what is kept beside the records. */
async function listed(store: typeof Store) {
  const history = await store.listChecks()
  if (history.checks.length >= 200)
    await vi.waitFor(async () => expect(await rawGet('made/checks')).toBeDefined(), 10_000)
  return history
}

const ids = async (store: typeof Store) => (await store.listChecks()).checks.map((one) => one.id)
const all = Array.from({ length: LONG }, (_, i) => id(i))

describe('a long history', () => {
  test('comes without the records being read again, here and in a window opened later', async () => {
    const here = await window()
    await long(here)
    await listed(here)
    await here.listChecks()
    const reads = vi.spyOn(IDBObjectStore.prototype, 'getAll')
    expect(await ids(here)).toEqual(all)
    const later = await window()
    expect(await ids(later)).toEqual(all)
    expect((await later.listTopicChecks(check('x'))).checks).toHaveLength(LONG)
    expect(reads).not.toHaveBeenCalled()
    reads.mockRestore()
  })

  test.each<{ why: string; write: (store: typeof Store) => Promise<unknown> }>([
    { why: 'added', write: (store) => store.addCheck(check('new', { atMs: 9_999 }), page('new')) },
    {
      why: 'added as the oldest',
      write: (store) => store.addCheck(check('old', { atMs: 0 }), page('old')),
    },
    { why: 'with a mark changed', write: (store) => store.changeMark(id(3), change(1)) },
    { why: 'removed', write: (store) => store.removeCheck(id(5)) },
  ])('one $why is seen by both windows at once', async ({ write }) => {
    const [here, there] = [await window(), await window()]
    await longAgain(here)
    await listed(here)
    await listed(there)
    await write(here)
    const fresh = await window()
    const kept = await fresh.listChecks()
    expect(kept.checks).not.toEqual([])
    for (const store of [here, there]) {
      expect(await store.listChecks()).toEqual(kept)
      expect((await store.listTopicChecks(check('x'))).checks).toEqual(kept.checks)
    }
    // As the records themselves have it, with nothing beside them.
    await rawSet('made/revision', undefined)
    expect(await (await window()).listChecks()).toEqual(kept)
  })

  test('a write that fails changes nothing of what is listed', async () => {
    const here = await window()
    await longAgain(here)
    await listed(here)
    await expect(here.addCheck(check(id(1)), page(id(1)))).rejects.toThrow(/kept already/)
    expect(await ids(here)).toEqual(all)
  })

  test('what lies beside the records and is damaged is not believed', async () => {
    const here = await window()
    await longAgain(here)
    await listed(here)
    const revision = await rawGet('made/revision')
    for (const digest of ['', null, { revision, text: '{"cut' }, { revision, text: '1' }]) {
      await rawSet('made/checks', digest)
      expect(await ids(await window())).toEqual(all)
    }
  })

  test('what lies beside the records is no record: in no backup and in no list of what cannot be read', async () => {
    const here = await window()
    await longAgain(here)
    await listed(here)
    expect(await here.unreadableRecords()).toEqual([])
    expect(JSON.stringify(await here.exportAll(1))).not.toContain('made/')
  })
})

test('beside a short history nothing is kept', async () => {
  const here = await window()
  await long(here, 3)
  await here.listChecks()
  await here.listChecks()
  expect(await rawGet('made/revision')).toBeUndefined()
})

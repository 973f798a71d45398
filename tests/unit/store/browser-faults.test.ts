/** What browsers do to a database: refuse it, fill it, close it. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import * as store from '../../../src/lib/store'
import { change, check, closeUnderneath, draft, empty, page, rawGet, rawSet } from './records'

beforeEach(empty)
afterEach(() => {
  vi.restoreAllMocks()
  vi.unstubAllGlobals()
})

describe('a closed connection', () => {
  test('is opened again for a read', async () => {
    await store.addCheck(check('a'), page('a'))
    await closeUnderneath()
    expect(await store.getCheck('a')).toEqual(check('a'))
  })

  test('is opened again for a write, which happens once', async () => {
    await store.addCheck(check('a'), page('a'))
    await closeUnderneath()
    await store.changeMark('a', change(1))
    expect((await store.getCheck('a'))?.changes).toEqual([change(1)])
  })

  test('is opened again for many at once, by one of them', async () => {
    await store.addCheck(check('a'), page('a'))
    await closeUnderneath()
    const opened = vi.spyOn(IDBFactory.prototype, 'open')
    await Promise.all([1, 2, 3, 4].map((atMs) => store.changeMark('a', change(atMs))))
    expect((await store.getCheck('a'))?.changes).toHaveLength(4)
    expect(opened).toHaveBeenCalledTimes(1)
  })

  test('that closes again at once is an error after one more try', async () => {
    const closed = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(() => {
      throw new DOMException('The database connection is closing.', 'InvalidStateError')
    })
    await expect(store.listChecks()).rejects.toMatchObject({
      name: 'StoreError',
      kind: 'closed',
      cause: { name: 'InvalidStateError' },
    })
    expect(closed).toHaveBeenCalledTimes(2)
  })

  test('that is cut in the middle of a write is tried again', async () => {
    await store.addCheck(check('a'), page('a'))
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(function (
      this: IDBObjectStore,
    ) {
      this.transaction.abort()
      return undefined as never
    })
    await store.changeMark('a', change(1))
    expect(put).toHaveBeenCalledTimes(2)
    expect((await store.getCheck('a'))?.changes).toEqual([change(1)])
  })
})

describe('no room left', () => {
  const quota = () => new DOMException('The quota has been exceeded.', 'QuotaExceededError')

  test('said when the value is put', async () => {
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw quota()
    })
    await expect(store.saveDraft(draft('drift'))).rejects.toMatchObject({
      kind: 'full',
      message: expect.stringMatching(/no room left.*still there.*free some space/is) as string,
    })
  })

  test('said only when the transaction commits: nothing of it is kept', async () => {
    await store.addCheck(check('a'), page('a'))
    const put = IDBObjectStore.prototype.put
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...args
    ) {
      const request = put.apply(this, args)
      // How browsers do it: the request succeeds, the commit fails, and the transaction carries the error.
      const { transaction } = this
      request.onsuccess = () => {
        transaction.abort()
        Object.defineProperty(transaction, 'error', { value: quota() })
      }
      return request
    })
    await expect(store.changeMark('a', change(1))).rejects.toMatchObject({ kind: 'full' })
    await expect(store.addCheck(check('b'), page('b'))).rejects.toMatchObject({ kind: 'full' })
    vi.restoreAllMocks()
    expect(await store.getCheck('a')).toEqual(check('a'))
    expect(await store.getCheck('b')).toBeUndefined()
  })
})

describe('a browser that refuses', () => {
  test('no IndexedDB at all', async () => {
    vi.stubGlobal('indexedDB', undefined)
    await expect(store.listChecks()).rejects.toMatchObject({ kind: 'refused' })
    await expect(store.addCheck(check('a'), page('a'))).rejects.toMatchObject({
      kind: 'refused',
      message: expect.stringMatching(/private window.*copy it/is) as string,
    })
  })

  test.each([
    { why: 'it throws', throws: true },
    { why: 'the request fails', throws: false },
  ])('site data blocked: $why', async ({ throws }) => {
    await closeUnderneath()
    const denied = new DOMException('Access is denied.', 'SecurityError')
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
      if (throws) throw denied
      const request = { error: denied, onerror: undefined as undefined | (() => void) }
      queueMicrotask(() => request.onerror?.())
      return request as never
    })
    await expect(store.listChecks()).rejects.toMatchObject({ kind: 'refused', cause: denied })
    vi.restoreAllMocks()
    expect(await store.listChecks()).toEqual({ checks: [], unreadable: 0 })
  })
})

test('a write that fails half way leaves nothing behind', async () => {
  await rawSet('draft/shores/drift', { schema: 1, text: 'half a dra' })
  const put = IDBObjectStore.prototype.put
  let puts = 0
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...args
  ) {
    puts += 1
    if (puts === 2) throw new DOMException('It could not be cloned.', 'DataCloneError')
    return put.apply(this, args)
  })
  await expect(store.saveDraft(draft('drift'))).rejects.toMatchObject({ kind: 'unknown' })
  expect(puts).toBe(2)
  vi.restoreAllMocks()
  expect(await rawGet('draft/shores/drift')).toEqual({ schema: 1, text: 'half a dra' })
  expect((await store.unreadableRecords()).map(({ key }) => key)).toEqual(['draft/shores/drift'])
})

test('any other error keeps the browser’s words', async () => {
  vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(() => {
    throw new DOMException('The disk is wet.', 'UnknownError')
  })
  await expect(store.listChecks()).rejects.toMatchObject({
    kind: 'unknown',
    message: expect.stringContaining('The disk is wet.') as string,
  })
})

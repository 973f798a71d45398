/** The one place that opens the database: every verb of this room is a few lines on `reading` and `writing`. */
import { promisifyRequest } from 'idb-keyval'
import { connect } from './connection'
import { asStoreError, StoreError, wasClosed } from './errors'
import { watchChecks } from './history'

let connection = connect()

/** Reads in one transaction. `work` must wait for nothing but the database's own requests. */
export const reading = <T>(work: (store: IDBObjectStore) => Promise<T>): Promise<T> =>
  inStore('readonly', work)

/**
 * Reads and writes in one transaction: all of it is kept, or, where anything fails, none. Comes back once the browser
 * has committed it. `work` must wait for nothing but the database's own requests, and may be called a second time.
 */
export const writing = <T>(work: (store: IDBObjectStore) => Promise<T>): Promise<T> =>
  inStore('readwrite', async (store) => {
    const ended = endOf(store.transaction)
    const watch = watchChecks(store)
    let result: T
    try {
      result = await work(store)
    } catch (cause) {
      // Without this, what was put before the failure would be committed.
      abort(store.transaction)
      // A request that was under way knows only that it was cut off; the transaction knows why.
      throw wasClosed(cause) ? ((await ended) ?? cause) : cause
    }
    const failure = await ended
    if (failure) throw failure
    watch.committed()
    return result
  })

/** The keys and raw values of a range, or of everything. */
export async function rawEntries(
  store: IDBObjectStore,
  range?: IDBKeyRange,
): Promise<{ key: string; raw: unknown }[]> {
  const [keys, values] = await Promise.all([
    promisifyRequest(store.getAllKeys(range)),
    promisifyRequest<unknown[]>(store.getAll(range)),
  ])
  return keys.map((key, i) => ({ key: String(key), raw: values[i] }))
}

export const rawRecord = (store: IDBObjectStore, key: string): Promise<unknown> =>
  promisifyRequest<unknown>(store.get(key))

async function inStore<T>(
  mode: IDBTransactionMode,
  work: (store: IDBObjectStore) => Promise<T>,
): Promise<T> {
  for (let again = true; ; again = false) {
    const used = connection
    let reached = false
    try {
      if (typeof indexedDB === 'undefined') throw new ReferenceError('There is no IndexedDB here.')
      return await used(mode, (store) => {
        reached = true
        return work(store)
      })
    } catch (cause) {
      if (cause instanceof StoreError || !again || !wasClosed(cause))
        throw asStoreError(cause, reached)
      // A connection may be closed without telling. Another call may have replaced it already.
      if (connection === used) connection = connect()
    }
  }
}

/**
 * What a transaction failed of; `undefined` once it is committed. idb-keyval's `promisifyRequest` would give `null`,
 * because the error event of a request reaches its transaction before the transaction knows the error.
 */
function endOf(transaction: IDBTransaction): Promise<Error | undefined> {
  return new Promise((resolve) => {
    transaction.oncomplete = () => resolve(undefined)
    transaction.onabort = () =>
      resolve(transaction.error ?? new DOMException('The transaction was cut off.', 'AbortError'))
  })
}

function abort(transaction: IDBTransaction): void {
  try {
    transaction.abort()
  } catch {
    // It is over already.
  }
}

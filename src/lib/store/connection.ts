/** The database, opened when it is first needed and again after it was closed. */
import { promisifyRequest } from 'idb-keyval'

/** Runs `work` in one transaction on the records. */
export type Connection = <T>(
  mode: IDBTransactionMode,
  work: (store: IDBObjectStore) => Promise<T>,
) => Promise<T>

// One object store for all kinds of record, told apart by their keys: a check and its page are written in one
// transaction, and a transaction cannot span two databases.
const NAME = 'second-ink'
const STORE = 'records'

export function connect(): Connection {
  let opening: Promise<IDBDatabase> | undefined

  function open(): Promise<IDBDatabase> {
    const request = indexedDB.open(NAME)
    request.onupgradeneeded = () => request.result.createObjectStore(STORE)
    return promisifyRequest(request)
  }

  async function opened(): Promise<IDBDatabase> {
    const mine = (opening ??= open())
    const forget = () => {
      if (opening === mine) opening = undefined
    }
    try {
      const database = await mine
      database.onclose = forget
      // Another window erases the database, or a newer app changes it: it waits until all connections are closed.
      database.onversionchange = () => {
        database.close()
        forget()
      }
      return database
    } catch (error) {
      forget()
      throw error
    }
  }

  return async (mode, work) => {
    const database = await opened()
    // What is said to be kept is on the disk: by default Chromium says so before it is, and a power cut would lose it.
    const transaction = database.transaction(STORE, mode, { durability: 'strict' })
    return work(transaction.objectStore(STORE))
  }
}

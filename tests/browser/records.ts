/** The app's records from behind its back: how they get there, and how they are shown, is another test's affair. */
import type { Page } from '@playwright/test'
import { expect } from './app'

/** Puts them where the app keeps its records. The page must be one of the app's. */
export async function putRecords(
  page: Page,
  records: readonly (readonly [key: string, record: unknown])[],
): Promise<void> {
  await page.evaluate(async (entries) => {
    const database = await new Promise<IDBDatabase>((done, fail) => {
      const request = indexedDB.open('second-ink')
      request.onupgradeneeded = () => request.result.createObjectStore('records')
      request.onsuccess = () => done(request.result)
      request.onerror = () => fail(request.error ?? new Error('no database'))
    })
    const transaction = database.transaction('records', 'readwrite')
    for (const [key, record] of entries) transaction.objectStore('records').put(record, key)
    await new Promise<void>((done, fail) => {
      transaction.oncomplete = () => done()
      transaction.onabort = () => fail(transaction.error ?? new Error('not kept'))
    })
    database.close()
  }, records)
}

/** What is typed is kept a moment later: only then may a page be loaded again or closed. */
export async function expectKept(page: Page, kind: string, words: string): Promise<void> {
  await expect
    .poll(() =>
      page.evaluate(async (prefix) => {
        const database = await new Promise<IDBDatabase>((done, fail) => {
          const request = indexedDB.open('second-ink')
          request.onsuccess = () => done(request.result)
          request.onerror = () => fail(request.error ?? new Error('no database'))
        })
        const got = database
          .transaction('records')
          .objectStore('records')
          .getAll(IDBKeyRange.bound(`${prefix}/`, `${prefix}0`))
        const records = await new Promise<unknown[]>((done, fail) => {
          got.onsuccess = () => done(got.result)
          got.onerror = () => fail(got.error ?? new Error('not read'))
        })
        database.close()
        return JSON.stringify(records)
      }, kind),
    )
    .toContain(words)
}

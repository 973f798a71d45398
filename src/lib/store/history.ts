/**
 * The whole history of checks, read fast. Thousands of small records take the browser longer to hand over than one long text,
 * so a long history is kept a second time as one text beside the records. The records are what counts: the text, and what
 * this window remembers, hold only as long as the revision that every write of a check renews.
 */
import { promisifyRequest } from 'idb-keyval'
import { byTime, type Check } from '../recall'
import { checkKey, DIGEST_KEY, keysOf, REVISION_KEY } from './keys'
import { readRecord } from './records'

/** Below this the records are as fast, and nothing is kept beside them. */
const LONG = 200

export interface History {
  /** Oldest first. */
  readonly checks: Check[]
  /** How many more are kept that cannot be read. */
  readonly unreadable: number
}

interface Remembered extends History {
  readonly revision: string
  /** Whether the text beside the records is of this revision. */
  readonly digested: boolean
}

let remembered: Remembered | undefined

const get = (store: IDBObjectStore, key: string): Promise<unknown> =>
  promisifyRequest<unknown>(store.get(key))

/** What this window remembers, where nothing was written since; gives no copy. */
export async function fromMemory(store: IDBObjectStore): Promise<History | undefined> {
  const revision = await get(store, REVISION_KEY)
  return remembered !== undefined && remembered.revision === revision ? remembered : undefined
}

/** Every check: from memory, from the text, or from the records. */
export async function readHistory(store: IDBObjectStore): Promise<History> {
  const known = await fromMemory(store)
  if (known) return known
  const { raws, revision, digested } = await readRaw(store)
  const history = sorted(raws)
  remembered = revision === undefined ? undefined : { ...history, revision, digested }
  return history
}

/** The records of every check as they are kept, from the text or one by one. */
export const rawHistory = async (store: IDBObjectStore): Promise<unknown[]> =>
  (await readRaw(store)).raws

async function readRaw(store: IDBObjectStore) {
  const kept = await get(store, REVISION_KEY)
  const revision = typeof kept === 'string' ? kept : undefined
  const inText = revision === undefined ? undefined : rawsIn(await get(store, DIGEST_KEY), revision)
  const raws = inText ?? (await promisifyRequest<unknown[]>(store.getAll(keysOf('check'))))
  return { raws, revision, digested: inText !== undefined }
}

/** Whether `writeDigest` has something to do after this history was read. */
export const wantsDigest = ({ checks, unreadable }: History): boolean =>
  checks.length >= LONG && unreadable === 0 && remembered?.digested !== true

/** Keeps the text beside the records, as they are in this transaction. */
export async function writeDigest(store: IDBObjectStore): Promise<void> {
  const kept = await get(store, REVISION_KEY)
  const revision = typeof kept === 'string' ? kept : newRevision()
  const raws = await promisifyRequest<unknown[]>(store.getAll(keysOf('check')))
  const history = sorted(raws)
  if (!wantsDigest(history)) return
  store.put(revision, REVISION_KEY)
  store.put({ revision, text: JSON.stringify(raws) }, DIGEST_KEY)
  remembered = { ...history, revision, digested: true }
}

/**
 * Watches what a transaction writes: with the first check the revision is renewed in the same transaction. `committed` then
 * tells this window's memory.
 */
export function watchChecks(store: IDBObjectStore): { readonly committed: () => void } {
  const written = new Map<string, unknown>()
  const [put, remove] = [store.put, store.delete]
  let before: unknown
  let after: string | undefined

  const note = (key: unknown, value: unknown) => {
    if (typeof key !== 'string' || !key.startsWith(checkKey(''))) return
    written.set(key, value)
    if (written.size > 1) return
    const request = store.get(REVISION_KEY)
    request.onsuccess = () => {
      before = request.result
      if (before === undefined) return
      after = newRevision()
      put.call(store, after, REVISION_KEY)
    }
  }
  store.put = (value: unknown, key?: IDBValidKey) => {
    note(key, value)
    return put.call(store, value, key)
  }
  store.delete = (key: IDBValidKey | IDBKeyRange) => {
    note(key, undefined)
    return remove.call(store, key)
  }
  return {
    committed() {
      if (after === undefined) return
      const known = remembered?.revision === before ? remembered : undefined
      remembered =
        known && written.size === 1 ? withWritten(known, after, [...written][0]!) : undefined
    },
  }
}

/** A single check written or removed by this window; anything out of the ordinary is read anew. */
function withWritten(
  { checks, unreadable }: Remembered,
  revision: string,
  [key, value]: readonly [string, unknown],
): Remembered | undefined {
  const read = value === undefined ? undefined : readRecord('check', value)
  if (unreadable > 0 || read?.ok === false) return undefined
  const others = checks.filter(({ id }) => checkKey(id) !== key)
  const now = read ? [...others, read.record].sort(byTime) : others
  return { checks: now, unreadable, revision, digested: false }
}

function sorted(raws: readonly unknown[]): History {
  const read = raws.map((raw) => readRecord('check', raw))
  const checks = read.flatMap((one) => (one.ok ? [one.record] : [])).sort(byTime)
  return { checks, unreadable: read.length - checks.length }
}

/** The raw records in the text; `undefined` where it is of another revision or damaged. */
function rawsIn(digest: unknown, revision: string): unknown[] | undefined {
  if (typeof digest !== 'object' || digest === null || !('text' in digest)) return undefined
  if (!('revision' in digest) || digest.revision !== revision) return undefined
  try {
    const raws: unknown = JSON.parse(String(digest.text))
    return Array.isArray(raws) ? (raws as unknown[]) : undefined
  } catch {
    return undefined
  }
}

const newRevision = (): string =>
  [...crypto.getRandomValues(new Uint8Array(12))]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('')

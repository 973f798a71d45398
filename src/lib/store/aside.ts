/** Records that cannot be read: kept, counted, reported; never dropped and never overwritten. */
import { rawEntries, rawRecord, reading, writing } from './database'
import { asideKeysOf, asidePrefix, isAside, isBeside, isMade, kindAt } from './keys'
import type { Kind } from './keys'
import { forWriting, readRecord, type RecordOf } from './records'

export interface Unreadable {
  readonly key: string
  readonly value: unknown
  /** One plain sentence. */
  readonly why: string
}

/** Everything that is kept and not used: records that cannot be read, where they stand or moved out of the way. */
export const unreadableRecords = (): Promise<Unreadable[]> =>
  reading(async (store) => {
    const entries = await rawEntries(store)
    return entries.flatMap(({ key, raw }) => {
      const why = whyUnused(key, raw)
      return why === undefined ? [] : [{ key, value: raw, why }]
    })
  })

/** Removes one of them, once the user has said so. A record that can be read is left where it is. */
export const removeUnreadable = (key: string): Promise<void> =>
  writing(async (store) => {
    const raw = await rawRecord(store, key)
    if (raw !== undefined && whyUnused(key, raw) !== undefined) store.delete(key)
  })

/** Why what is kept at a key is not used; `undefined` where it is. */
export function whyUnused(key: string, raw: unknown): string | undefined {
  if (isMade(key)) return undefined
  const kind = kindAt(key)
  if (!kind) return 'It is of no kind that Second Ink knows.'
  const read = readRecord(kind, raw)
  if (!read.ok) return read.why
  if (isBeside(key)) return 'Another window wrote at the same time. Open the page to choose.'
  return isAside(key)
    ? 'Another stands in its place: a backup was restored or undone, or two windows wrote at once.'
    : undefined
}

/** Copies a raw value out of the way of what will be written at its key; the same value is not copied twice. */
export async function setAside(store: IDBObjectStore, key: string, raw: unknown): Promise<void> {
  const there = await rawEntries(store, asideKeysOf(key))
  if (there.some((entry) => sameJson(entry.raw, raw))) return
  let n = 1
  while (there.some((entry) => entry.key === asidePrefix(key) + n)) n += 1
  store.put(raw, asidePrefix(key) + n)
}

/** Writes a record; what stood there and cannot be read is set aside first. */
export async function putRecord<K extends Kind>(
  store: IDBObjectStore,
  kind: K,
  key: string,
  record: RecordOf[K],
): Promise<void> {
  const ready = forWriting(kind, record)
  const raw = await rawRecord(store, key)
  if (raw !== undefined && !readRecord(kind, raw).ok) await setAside(store, key, raw)
  store.put(ready, key)
}

export function sameJson(a: unknown, b: unknown): boolean {
  try {
    return JSON.stringify(a) === JSON.stringify(b)
  } catch {
    return false
  }
}

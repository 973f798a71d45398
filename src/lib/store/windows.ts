/**
 * Drafts that two windows write at the same time. Neither overwrites what the other wrote: the second is kept beside it, under
 * the name of its window, until the student has chosen.
 */
import { sameJson, setAside } from './aside'
import { rawEntries, rawRecord, reading, writing } from './database'
import { asideKeysOf, besideKey, isBeside, KEY_OF } from './keys'
import { forWriting, readRecord, type RecordOf } from './records'

export type DraftKind = 'draft' | 'edit' | 'entry' | 'import' | 'round'

/** What the student made of it: two drafts that differ only in their times hold the same work. */
const WORK: { readonly [K in DraftKind]: (record: RecordOf[K]) => unknown } = {
  draft: ({ text }) => text,
  edit: ({ form }) => form,
  entry: ({ day, source, rows }) => [day, source, rows],
  import: ({ name, tree }) => [name, tree],
  round: ({ uid, points, typing, stage }) => [uid, points, typing, stage],
}

/** One of them comes from a page and one from the database, which keeps what a record holds in an order of its own. */
export const sameWork = <K extends DraftKind>(kind: K, a: RecordOf[K], b: RecordOf[K]): boolean =>
  sameJson(workOf(kind, a), workOf(kind, b))

function workOf<K extends DraftKind>(kind: K, record: RecordOf[K]): unknown {
  const read = readRecord(kind, record)
  return WORK[kind](read.ok ? read.record : record)
}

export interface Saving<K extends DraftKind> {
  /** What this window last read or kept there; `undefined` where there was nothing. */
  readonly known: RecordOf[K] | undefined
  /** The name of this window. */
  readonly window: string
  /** Copies beside the draft that the student has decided on: they go. */
  readonly settled?: readonly string[]
  /** What the student decided against: it is set aside. */
  readonly against?: readonly RecordOf[K][]
}

/**
 * Keeps a draft in its place, if what stands there is what this window knows, and gives nothing. Otherwise keeps it beside and
 * gives what another window put there.
 */
export const keepDraft = <K extends DraftKind>(
  kind: K,
  record: RecordOf[K],
  { known, window, settled = [], against = [] }: Saving<K>,
): Promise<RecordOf[K] | undefined> =>
  writing(async (store) => {
    const key = KEY_OF[kind](record)
    const ready = forWriting(kind, record)
    const raw = await rawRecord(store, key)
    const read = raw === undefined ? undefined : readRecord(kind, raw)
    if (read?.ok && !mayReplace(kind, read.record, known, ready)) {
      store.put(ready, besideKey(key, window))
      return read.record
    }
    if (read && !read.ok) await setAside(store, key, raw)
    store.put(ready, key)
    for (const copy of [besideKey(key, window), ...settled]) store.delete(copy)
    for (const one of against)
      if (!isEmpty(one) && !sameWork(kind, one, ready)) await setAside(store, key, one)
    return undefined
  })

function mayReplace<K extends DraftKind>(
  kind: K,
  there: RecordOf[K],
  known: RecordOf[K] | undefined,
  mine: RecordOf[K],
): boolean {
  if (isEmpty(there) || sameWork(kind, there, mine)) return true
  return known !== undefined && sameWork(kind, there, known)
}

const isEmpty = (draft: object): boolean => 'text' in draft && draft.text === ''

export interface Standing<K extends DraftKind> {
  readonly record: RecordOf[K] | undefined
  /** Copies of other windows, undecided. */
  readonly beside: readonly { readonly key: string; readonly record: RecordOf[K] }[]
}

/** What stands at the key of a draft, and beside it. What cannot be read is left out and stays. */
export const standingDraft = <K extends DraftKind>(kind: K, key: string): Promise<Standing<K>> =>
  reading(async (store) => {
    const read = readRecord(kind, await rawRecord(store, key))
    const copies = await rawEntries(store, asideKeysOf(key))
    return {
      record: read.ok ? read.record : undefined,
      beside: copies.flatMap((copy) => {
        const one = readRecord(kind, copy.raw)
        return isBeside(copy.key) && one.ok ? [{ key: copy.key, record: one.record }] : []
      }),
    }
  })

/**
 * Ends a draft as this window has it: its copy beside goes, and what stands in its place if it is the same work or what this
 * window knows. What another window wrote stays.
 */
export const endDraft = <K extends DraftKind>(
  kind: K,
  record: RecordOf[K],
  saving: Pick<Saving<K>, 'known' | 'window'>,
): Promise<void> => writing((store) => endDraftIn(store, kind, record, saving))

export async function endDraftIn<K extends DraftKind>(
  store: IDBObjectStore,
  kind: K,
  record: RecordOf[K],
  { known, window }: Pick<Saving<K>, 'known' | 'window'>,
): Promise<void> {
  const key = KEY_OF[kind](record)
  store.delete(besideKey(key, window))
  const read = readRecord(kind, await rawRecord(store, key))
  if (read.ok && mayReplace(kind, read.record, known, record)) store.delete(key)
}

/** What the last restore changed is noted in its own transaction; with the note it is taken back, until the next restore. */
import * as v from 'valibot'
import { setAside } from './aside'
import { rawRecord, reading, writing } from './database'
import { StoreError } from './errors'
import { fingerprint } from './fingerprint'
import { isAside, keptAt, UNDO_KEY } from './keys'
import { instantMs } from './schemas/basic'
import type { Change } from './working-copy'

const noteSchema = v.object({
  schema: v.literal(1),
  atMs: instantMs,
  madeAtMs: instantMs,
  changes: v.array(
    // `before` is absent where nothing stood at the key; `after` is the fingerprint of what was put there.
    v.object({ key: v.string(), before: v.optional(v.unknown()), after: v.string() }),
  ),
})
type Note = v.InferOutput<typeof noteSchema>

export interface LastRestore {
  readonly atMs: number
  /** When the backup was made that was restored. */
  readonly madeAtMs: number
}

export interface Undone {
  /** Records that are again as they were before the restore, or gone again. */
  readonly undone: number
  /** Records that were changed or removed since: they stay, and what stood there before the restore is set aside. */
  readonly stay: number
}

export const undoNote = (changes: readonly Change[], atMs: number, madeAtMs: number): Note => ({
  schema: 1,
  atMs,
  madeAtMs,
  changes: changes.map(({ after, ...change }) => ({ ...change, after: fingerprint(after) })),
})

/** The restore that can be undone; `undefined` where there is none. */
export const lastRestore = (): Promise<LastRestore | undefined> =>
  reading(async (store) => {
    const note = await readNote(store)
    return note && { atMs: note.atMs, madeAtMs: note.madeAtMs }
  })

/** Takes the last restore back, all of it in one transaction. What was worked on since stays. */
export const undoRestore = (): Promise<Undone> =>
  writing(async (store) => {
    const note = await readNote(store)
    if (!note)
      throw new StoreError('unknown', 'There is no restore to undo. Nothing here was changed.')
    const stay = new Set<string>()
    // Copies that were set aside come last: those of a record that stays are needed.
    for (const change of note.changes.filter(({ key }) => !isAside(key))) {
      const now = await rawRecord(store, change.key)
      if (now === undefined || fingerprint(now) !== change.after) {
        stay.add(change.key)
        if (now !== undefined && 'before' in change)
          await setAside(store, change.key, change.before)
      } else takeBack(store, change)
    }
    for (const change of note.changes.filter(({ key }) => isAside(key)))
      if (!stay.has(keptAt(change.key))) takeBack(store, change)
    store.delete(UNDO_KEY)
    return { undone: note.changes.length - stay.size, stay: stay.size }
  })

function takeBack(store: IDBObjectStore, change: Note['changes'][number]): void {
  if ('before' in change) store.put(change.before, change.key)
  else store.delete(change.key)
}

async function readNote(store: IDBObjectStore): Promise<Note | undefined> {
  const read = v.safeParse(noteSchema, await rawRecord(store, UNDO_KEY))
  return read.success ? read.output : undefined
}

/** A backup -> what is kept here, merged record by record: looked at first, then done, and undone again. */
import { sameJson } from './aside'
import { readEnvelope } from './backup'
import { rawEntries, reading, writing } from './database'
import { StoreError } from './errors'
import { isMade, UNDO_KEY } from './keys'
import { planRestore, sortRecords, type RestorePreview } from './restore-plan'
import { undoNote } from './restore-undo'

/** How many records of the backup went where. */
export interface Restored {
  readonly added: number
  /** Kept here already; something of the backup's was added to them. */
  readonly united: number
  readonly unchanged: number
  /** Could not be read, here or where the backup was made: kept, and listed by `unreadableRecords`. */
  readonly setAside: number
}

/** What `importAll` would do now. Nothing is written. Rejects as `importAll` does. */
export async function previewRestore(backup: unknown): Promise<RestorePreview> {
  const sorted = sortRecords(readEnvelope(backup))
  return reading(async (store) => planRestore(sorted, await everything(store)).preview)
}

/**
 * Restores a backup, the parsed object or its text, in one transaction: all of it or nothing. Nothing that is kept
 * here is lost, and `undoRestore` takes it back. Rejects with a StoreError, kind 'unreadable', for what is no backup and for
 * anything newer than this app; kind 'changed' where it would no longer do what `seen` says.
 */
export async function importAll(
  backup: unknown,
  { nowMs = Date.now(), seen }: { nowMs?: number; seen?: RestorePreview } = {},
): Promise<Restored> {
  const sorted = sortRecords(readEnvelope(backup))
  return writing(async (store) => {
    const { preview, changes } = planRestore(sorted, await everything(store))
    if (seen && !sameJson(seen, preview))
      throw new StoreError(
        'changed',
        'What is kept here has changed since you opened the file, so that restoring it would do something else now. ' +
          'Nothing was restored: look again at what would change.',
      )
    for (const { key, after } of changes) store.put(after, key)
    // One that changes nothing leaves the last one to be undone.
    if (changes.length > 0) store.put(undoNote(changes, nowMs, sorted.madeAtMs), UNDO_KEY)
    return restored(preview)
  })
}

const everything = async (store: IDBObjectStore): Promise<ReadonlyMap<string, unknown>> =>
  new Map(
    (await rawEntries(store)).filter(({ key }) => !isMade(key)).map(({ key, raw }) => [key, raw]),
  )

function restored({ kinds, unreadable }: RestorePreview): Restored {
  const counts = { added: 0, united: 0, unchanged: 0, setAside: unreadable }
  for (const fates of Object.values(kinds)) {
    counts.added += fates.added
    counts.united += fates.taken + fates.joined
    counts.unchanged += fates.stays + fates.same
  }
  return counts
}

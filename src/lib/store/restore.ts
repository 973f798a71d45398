/** A backup -> what is kept here, merged record by record. */
import { putRecord, sameJson, setAside } from './aside'
import { readEnvelope, refusal } from './backup'
import { rawRecord, writing } from './database'
import {
  checkKey,
  draftKey,
  editKey,
  entryKey,
  IMPORT_KEY,
  keptAt,
  KINDS,
  learnedKey,
  pageKey,
  paperKey,
  pupilChecksKey,
  pupilKey,
  pupilPageKey,
  remarksKey,
  reviewKey,
  roundKey,
  SENDER_KEY,
  SETTINGS_KEY,
  syllabusKey,
  tutorNotesKey,
  type Kind,
} from './keys'
import { MERGE } from './merge'
import { refreshPupil } from './pupil-records'
import { readRecord, type RecordOf } from './records'

/** How many records of the backup went where. */
export interface Restored {
  readonly added: number
  /** Kept here already; something of the backup's was added to them. */
  readonly united: number
  readonly unchanged: number
  /** Could not be read, here or where the backup was made: kept, and listed by `unreadableRecords`. */
  readonly setAside: number
}

type Incoming = { [K in Kind]: { kind: K; key: string; record: RecordOf[K] } }[Kind]
interface Sorted {
  readonly good: Incoming[]
  readonly aside: { readonly key: string; readonly value: unknown }[]
}

const KEY_OF: { readonly [K in Kind]: (record: RecordOf[K]) => string } = {
  check: ({ id }) => checkKey(id),
  page: ({ id }) => pageKey(id),
  draft: ({ syllabusId, topicId }) => draftKey(syllabusId, topicId),
  syllabus: ({ id }) => syllabusKey(id),
  paper: ({ id }) => paperKey(id),
  settings: () => SETTINGS_KEY,
  edit: ({ id }) => editKey(id),
  entry: ({ id }) => entryKey(id),
  round: ({ id }) => roundKey(id),
  learned: (one) => learnedKey(one, one.ref, one.checkId),
  sender: () => SENDER_KEY,
  remarks: ({ id }) => remarksKey(id),
  pupil: ({ id }) => pupilKey(id),
  'pupil-checks': ({ id }) => pupilChecksKey(id),
  'pupil-page': ({ pupilId, checkId }) => pupilPageKey(pupilId, checkId),
  review: ({ pupilId, checkId }) => reviewKey(pupilId, checkId),
  'tutor-notes': ({ pupilId }) => tutorNotesKey(pupilId),
  import: () => IMPORT_KEY,
}

/**
 * Restores a backup, the parsed object or its text, in one transaction: all of it or nothing. Nothing that is kept
 * here is lost. Rejects with a StoreError, kind 'unreadable', for what is no backup and for anything newer than this app.
 */
export async function importAll(backup: unknown): Promise<Restored> {
  const { good, aside } = sortRecords(readEnvelope(backup))
  return writing(async (store) => {
    const counts = { added: 0, united: 0, unchanged: 0, setAside: aside.length }
    for (const incoming of good) counts[await restoreOne(store, incoming)] += 1
    // What the group page shows of a pupil follows from records that may each have come from another device.
    const pupils = new Set(good.flatMap((one) => (one.kind === 'pupil' ? [one.record.id] : [])))
    for (const id of pupils) await refreshPupil(store, id)
    for (const { key, value } of aside) await setAside(store, keptAt(key), value)
    return counts
  })
}

/** Reads every record before anything is written. A damaged one is set aside; a newer one refuses the whole. */
function sortRecords({ records, setAside }: ReturnType<typeof readEnvelope>): Sorted {
  const sorted: Sorted = { good: [], aside: [...setAside] }
  for (const kind of KINDS) records[kind].forEach((raw, i) => sortOne(kind, raw, i, sorted))
  return sorted
}

function sortOne<K extends Kind>(kind: K, raw: unknown, i: number, { good, aside }: Sorted): void {
  const read = readRecord(kind, raw)
  if (read.ok) good.push({ kind, key: KEY_OF[kind](read.record), record: read.record } as Incoming)
  else if (read.newer)
    throw refusal(
      `A record in this backup (${kind} ${i + 1}) was written by a newer Second Ink. ` +
        'Load the newest version, then try again.',
    )
  else aside.push({ key: `${kind}/from a backup`, value: raw })
}

async function restoreOne<K extends Kind>(
  store: IDBObjectStore,
  { kind, key, record }: { kind: K; key: string; record: RecordOf[K] },
): Promise<'added' | 'united' | 'unchanged'> {
  const raw = await rawRecord(store, key)
  const here = raw === undefined ? undefined : readRecord(kind, raw)
  if (!here?.ok) {
    await putRecord(store, kind, key, record)
    return 'added'
  }
  const merged = MERGE[kind](here.record, record)
  if (sameJson(merged, here.record)) return 'unchanged'
  // Of a syllabus only one file can stand: the one that gives way is kept aside.
  const alone: readonly Kind[] = ['syllabus', 'edit', 'entry', 'import']
  if (alone.includes(kind)) await setAside(store, key, raw)
  await putRecord(store, kind, key, merged)
  return 'united'
}

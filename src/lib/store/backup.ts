/** Everything that is kept -> one JSON object. */
import * as v from 'valibot'
import { withoutDemo } from '../recall'
import { whyUnused } from './aside'
import { rawEntries, reading } from './database'
import { demoCheckIds, isDemoRecord } from './demo'
import { StoreError } from './errors'
import { kindAt, KINDS, type Kind } from './keys'
import { readRecord, type RecordOf } from './records'
import { instantMs } from './schemas/basic'

/** The only version of the backup so far. */
export const BACKUP = 1

/** Records come by kind and carry versions of their own; `setAside` is what could not be read, word for word. */
export interface Backup {
  readonly app: 'Second Ink'
  readonly backup: typeof BACKUP
  readonly madeAtMs: number
  readonly records: { readonly [K in Kind]: readonly RecordOf[K][] }
  readonly setAside: readonly { readonly key: string; readonly value: unknown }[]
}

/** A backup whose records are still to be read one by one. */
export type BackupEnvelope = v.InferOutput<typeof envelope>

const envelope = v.object({
  app: v.literal('Second Ink'),
  backup: v.literal(BACKUP),
  madeAtMs: instantMs,
  // Kinds that this version has no more are not dropped: their records are set aside.
  records: v.looseObject({
    ...v.entriesFromList(KINDS, v.array(v.unknown())),
    // Backups of the first version have none.
    edit: v.optional(v.array(v.unknown()), []),
    entry: v.optional(v.array(v.unknown()), []),
    round: v.optional(v.array(v.unknown()), []),
    learned: v.optional(v.array(v.unknown()), []),
    sender: v.optional(v.array(v.unknown()), []),
    remarks: v.optional(v.array(v.unknown()), []),
    pupil: v.optional(v.array(v.unknown()), []),
    'pupil-checks': v.optional(v.array(v.unknown()), []),
    'pupil-file': v.optional(v.array(v.unknown()), []),
    review: v.optional(v.array(v.unknown()), []),
    'tutor-notes': v.optional(v.array(v.unknown()), []),
    import: v.optional(v.array(v.unknown()), []),
  }),
  setAside: v.array(v.object({ key: v.string(), value: v.unknown() })),
})

/** Reads everything but the demo in one transaction. `nowMs` is the time that the backup says it was made. */
export const exportAll = (nowMs: number = Date.now()): Promise<Backup> =>
  reading(async (store) => {
    const all = await rawEntries(store)
    const ofDemo = demoCheckIds(all)
    const entries = all.filter(({ key, raw }) => !isDemoRecord(key, raw, ofDemo))
    const of = <K extends Kind>(kind: K): RecordOf[K][] =>
      entries.flatMap(({ key, raw }) => {
        if (kindAt(key) !== kind || whyUnused(key, raw) !== undefined) return []
        const read = readRecord(kind, raw)
        return read.ok ? [read.record] : []
      })
    return {
      app: 'Second Ink',
      backup: BACKUP,
      madeAtMs: nowMs,
      records: {
        check: of('check'),
        page: of('page'),
        draft: of('draft'),
        syllabus: of('syllabus'),
        paper: of('paper'),
        settings: of('settings').map(withoutDemo),
        edit: of('edit'),
        entry: of('entry'),
        round: of('round'),
        learned: of('learned'),
        sender: of('sender'),
        remarks: of('remarks'),
        pupil: of('pupil'),
        'pupil-checks': of('pupil-checks'),
        'pupil-file': of('pupil-file'),
        review: of('review'),
        'tutor-notes': of('tutor-notes'),
        import: of('import'),
      },
      setAside: entries
        .filter(({ key, raw }) => whyUnused(key, raw) !== undefined)
        .map(({ key, raw }) => ({ key, value: asJson(raw) })),
    }
  })

/** The backup's outside. Throws a StoreError for what is no backup, and for one of a newer version. */
export function readEnvelope(given: unknown): BackupEnvelope {
  const file = typeof given === 'string' ? parseJson(given) : given
  if (
    v.is(
      v.object({ app: v.literal('Second Ink'), backup: v.pipe(v.number(), v.gtValue(BACKUP)) }),
      file,
    )
  )
    throw refusal(
      'This backup was made by a newer Second Ink. Load the newest version, then try again.',
    )
  const parsed = v.safeParse(envelope, file)
  if (parsed.success) return parsed.output
  const where = v.getDotPath(parsed.issues[0])
  throw refusal(
    where && v.is(v.object({ app: v.literal('Second Ink') }), file)
      ? `This backup is damaged at "${where}". Try another copy of it.`
      : 'This file is not a Second Ink backup. Choose the file that "Your data" saved.',
  )
}

export const refusal = (what: string): StoreError =>
  new StoreError('unreadable', `${what} Nothing on this device was changed.`)

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw refusal('This file is not a backup, or it was cut short: it is not complete JSON.')
  }
}

/** A broken record may hold anything that IndexedDB can keep; what JSON cannot say is kept as text. */
function asJson(value: unknown): unknown {
  try {
    return JSON.parse(JSON.stringify(value)) as unknown
  } catch {
    return String(value)
  }
}

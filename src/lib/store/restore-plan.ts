/** A backup and what is kept here -> what restoring it would do, record by record. Pure: nothing is written. */
import { defaultSettings, type Settings } from '../recall'
import { sameJson } from './aside'
import { refusal, type BackupEnvelope } from './backup'
import { KEY_OF, keptAt, KINDS, pupilChecksKey, pupilKey, reviewPrefix, type Kind } from './keys'
import { MERGE } from './merge'
import { withSummary } from './pupil-records'
import { forWriting, readRecord, type RecordOf } from './records'
import { workingCopy, type Change, type WorkingCopy } from './working-copy'

/** What becomes of the records of a backup. */
export interface Fates {
  /** Not here, or here but not readable: that one is set aside. */
  readonly added: number
  /** The backup's is later, and takes the place of the one here. */
  readonly taken: number
  /** Each holds what the other does not: both are put together. */
  readonly joined: number
  /** They differ, and the one here stays. */
  readonly stays: number
  readonly same: number
}

export interface RestorePreview {
  /** When the backup was made. */
  readonly madeAtMs: number
  /** Of the kinds that the backup has records of. */
  readonly kinds: Partial<Record<Kind, Fates>>
  /** Settings that become others, by name. */
  readonly settings: readonly (keyof Settings)[]
  /** Records of the backup that cannot be read. They are kept, and set aside. */
  readonly unreadable: number
  /** Records here that become others, those set aside included; 0: nothing changes. */
  readonly changes: number
}

export interface RestorePlan {
  readonly preview: RestorePreview
  readonly changes: readonly Change[]
}

type Incoming = { [K in Kind]: { kind: K; key: string; record: RecordOf[K] } }[Kind]
export interface Sorted {
  readonly madeAtMs: number
  readonly good: readonly Incoming[]
  readonly aside: readonly { readonly key: string; readonly value: unknown }[]
}

/** Reads every record of a backup. A damaged one is set aside; a newer one refuses the whole with a StoreError. */
export function sortRecords({ madeAtMs, records, setAside }: BackupEnvelope): Sorted {
  const good: Incoming[] = []
  const aside = [...setAside]
  const sortOne = <K extends Kind>(kind: K, raw: unknown, i: number) => {
    const read = readRecord(kind, raw)
    if (read.ok)
      good.push({ kind, key: KEY_OF[kind](read.record), record: read.record } as Incoming)
    else if (read.newer)
      throw refusal(
        `A record in this backup (${kind} ${i + 1}) was written by a newer Second Ink. ` +
          'Load the newest version, then try again.',
      )
    else aside.push({ key: `${kind}/from a backup`, value: raw })
  }
  for (const kind of KINDS) records[kind].forEach((raw, i) => sortOne(kind, raw, i))
  for (const [kind, raws] of Object.entries(records))
    if (!(KINDS as readonly string[]).includes(kind) && Array.isArray(raws))
      for (const value of raws) aside.push({ key: `${kind}/from a backup`, value })
  return { madeAtMs, good, aside }
}

/** `kept`: everything that is kept, raw, by key. */
export function planRestore(
  { madeAtMs, good, aside }: Sorted,
  kept: ReadonlyMap<string, unknown>,
): RestorePlan {
  const copy = workingCopy(kept)
  for (const incoming of good) restoreOne(copy, incoming)
  // What the group page shows of a pupil follows from records that may each have come from another device.
  for (const one of good) if (one.kind === 'pupil') refreshPupil(copy, one.record.id)
  for (const { key, value } of aside) copy.setAside(keptAt(key), value)
  const changes = copy.changes()
  const kinds = Object.fromEntries(
    KINDS.flatMap((kind) => {
      const fates = good.filter((one) => one.kind === kind).map((one) => fateOf(one, kept, copy))
      return fates.length === 0 ? [] : [[kind, countFates(fates)]]
    }),
  )
  const settings = changes.find(({ key }) => key === 'settings')
  return {
    changes,
    preview: {
      madeAtMs,
      kinds,
      settings: settings ? changedSettings(settings) : [],
      unreadable: aside.length,
      changes: changes.length,
    },
  }
}

// Of these only one can stand, and what gives way may be long work: it is kept aside.
const ALONE: readonly Kind[] = ['syllabus', 'edit', 'entry', 'import']

function restoreOne<K extends Kind>(
  copy: WorkingCopy,
  { kind, key, record }: { kind: K; key: string; record: RecordOf[K] },
): void {
  const raw = copy.get(key)
  const here = raw === undefined ? undefined : readRecord(kind, raw)
  if (!here?.ok) {
    if (here) copy.setAside(key, raw)
    copy.put(key, forWriting(kind, record))
    return
  }
  const merged = forWriting(kind, MERGE[kind](here.record, record))
  if (sameJson(merged, here.record)) return
  if (ALONE.includes(kind)) copy.setAside(key, raw)
  copy.put(key, merged)
}

function refreshPupil(copy: WorkingCopy, id: string): void {
  const pupil = readRecord('pupil', copy.get(pupilKey(id)))
  const checks = readRecord('pupil-checks', copy.get(pupilChecksKey(id)))
  if (!pupil.ok || !checks.ok) return
  const reviews = copy.under(reviewPrefix(id)).map(([, raw]) => raw)
  const fresh = forWriting('pupil', withSummary(pupil.record, checks.record, reviews))
  if (!sameJson(fresh, pupil.record)) copy.put(pupilKey(id), fresh)
}

type Fate = keyof Fates

function fateOf(
  { kind, key, record }: Incoming,
  kept: ReadonlyMap<string, unknown>,
  copy: WorkingCopy,
): Fate {
  const here = kept.has(key) ? readRecord(kind, kept.get(key)) : undefined
  if (!here?.ok) return 'added'
  const now = readRecord(kind, copy.get(key))
  const final = now.ok ? now.record : undefined
  if (sameJson(final, here.record)) return sameJson(here.record, record) ? 'same' : 'stays'
  return sameJson(final, record) ? 'taken' : 'joined'
}

function countFates(fates: readonly Fate[]): Fates {
  const counts = { added: 0, taken: 0, joined: 0, stays: 0, same: 0 }
  for (const fate of fates) counts[fate] += 1
  return counts
}

function changedSettings({ before, after }: Change): (keyof Settings)[] {
  const read = readRecord('settings', before)
  const was: Partial<Record<string, unknown>> = { ...(read.ok ? read.record : defaultSettings) }
  const is = after as Record<string, unknown>
  const names = new Set([...Object.keys(was), ...Object.keys(is)])
  names.delete('schema')
  return [...names].filter((name) => !sameJson(was[name], is[name])) as (keyof Settings)[]
}

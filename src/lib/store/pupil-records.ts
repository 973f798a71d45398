/** Helpers of the pupils' records, inside a transaction. */
import { summarise, withReview, type Review } from '../review'
import { rawEntries, rawRecord } from './database'
import { keysOfPupil, pupilChecksKey, pupilKey } from './keys'
import { forWriting, readRecord } from './records'

/** The tutor's marks of one pupil by check; those that cannot be read are left where they are. */
export async function reviewsOf(store: IDBObjectStore, id: string): Promise<Map<string, Review>> {
  const entries = await rawEntries(store, keysOfPupil('review', id))
  const read = entries.map(({ raw }) => readRecord('review', raw))
  return new Map(read.flatMap((one) => (one.ok ? [[one.record.checkId, one.record]] : [])))
}

/** Works out anew what the group page shows of a pupil: their checks with the tutor's marks. */
export async function refreshPupil(store: IDBObjectStore, id: string): Promise<void> {
  const pupil = readRecord('pupil', await rawRecord(store, pupilKey(id)))
  const kept = readRecord('pupil-checks', await rawRecord(store, pupilChecksKey(id)))
  if (!pupil.ok || !kept.ok) return
  const reviews = await reviewsOf(store, id)
  const { topics } = kept.record
  const checks = kept.record.checks.map((one) => ({
    ...one,
    check: withReview(one.check, reviews.get(one.check.id)),
  }))
  const summary = { checks: checks.length, topics: summarise(checks, topics) }
  store.put(forWriting('pupil', { ...pupil.record, ...summary }), pupilKey(id))
}

/** Helpers of the pupils' records, inside a transaction. */
import { summarise, withReview, type Pupil, type PupilChecks, type Review } from '../review'
import { rawEntries, rawRecord } from './database'
import { keysOfReviews, pupilChecksKey, pupilKey } from './keys'
import { forWriting, readRecord } from './records'

/** The tutor's marks of one pupil by check; those that cannot be read are left where they are. */
export const reviewsOf = async (store: IDBObjectStore, id: string): Promise<Map<string, Review>> =>
  readable((await rawEntries(store, keysOfReviews(id))).map(({ raw }) => raw))

function readable(raws: readonly unknown[]): Map<string, Review> {
  const read = raws.map((raw) => readRecord('review', raw))
  return new Map(read.flatMap((one) => (one.ok ? [[one.record.checkId, one.record]] : [])))
}

/** A pupil with what the group page shows of them: their checks with the tutor's marks, which are given raw. */
export function withSummary(
  pupil: Pupil,
  { checks: all, topics }: PupilChecks,
  rawReviews: readonly unknown[],
): Pupil {
  const reviews = readable(rawReviews)
  const checks = all.map((one) => ({
    ...one,
    check: withReview(one.check, reviews.get(one.check.id)),
  }))
  return { ...pupil, checks: checks.length, topics: summarise(checks, topics) }
}

/** Works it out anew. */
export async function refreshPupil(store: IDBObjectStore, id: string): Promise<void> {
  const pupil = readRecord('pupil', await rawRecord(store, pupilKey(id)))
  const kept = readRecord('pupil-checks', await rawRecord(store, pupilChecksKey(id)))
  if (!pupil.ok || !kept.ok) return
  const reviews = await rawEntries(store, keysOfReviews(id))
  const raws = reviews.map(({ raw }) => raw)
  store.put(forWriting('pupil', withSummary(pupil.record, kept.record, raws)), pupilKey(id))
}

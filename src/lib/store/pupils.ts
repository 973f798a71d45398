/** What came from pupils, and the tutor's own notes and marks beside it. Nothing here touches the user's own checks. */
import {
  newReview,
  summarise,
  withReview,
  type Pupil,
  type PupilChecks,
  type PupilFile,
  type Review,
  type SharedPage,
  type TutorNotes,
} from '../review'
import { putRecord } from './aside'
import { rawEntries, rawRecord, reading, writing } from './database'
import { StoreError } from './errors'
import { pagesOf, readRecallFile } from './exchange'
import {
  keysOf,
  keysOfReviews,
  pupilChecksKey,
  pupilFileKey,
  pupilKey,
  reviewKey,
  tutorNotesKey,
} from './keys'
import { forgetPupil, putLesson, type Lesson } from './learned'
import { refreshPupil, reviewsOf } from './pupil-records'
import { forWriting, packed, readRecord } from './records'

export interface Opened {
  readonly pupil: Pupil
  /** Whether a file of this pupil was here, and how many checks of it the newer one has no more. */
  readonly replaced: boolean
  readonly gone: number
}

/**
 * Opens a recall file, from its text: all of it or nothing. A newer file of the same pupil takes the place of the
 * older; the tutor's notes and marks stay. Rejects with a StoreError for what cannot be read, and for an older file.
 */
export async function openRecallFile(text: string, nowMs: number = Date.now()): Promise<Opened> {
  const { pupil: who, madeAtMs, topics, checks } = readRecallFile(text)
  return writing(async (store) => {
    const before = readRecord('pupil', await rawRecord(store, pupilKey(who.id)))
    if (before.ok && before.record.madeAtMs > madeAtMs)
      throw new StoreError(
        'unreadable',
        `A newer file of ${before.record.name} is here already. Nothing on this device was changed.`,
      )
    const reviews = await reviewsOf(store, who.id)
    const kept: PupilChecks = {
      schema: 1,
      id: who.id,
      madeAtMs,
      topics,
      checks: checks.map(({ check, topic, page }) => ({
        check,
        topic,
        withText: page !== undefined,
      })),
    }
    const summary = summarise(
      kept.checks.map((one) => ({
        ...one,
        check: withReview(one.check, reviews.get(one.check.id)),
      })),
      topics,
    )
    const pupil: Pupil = {
      schema: 1,
      ...who,
      madeAtMs,
      openedAtMs: nowMs,
      checks: checks.length,
      topics: summary,
    }
    const older = readRecord('pupil-checks', await rawRecord(store, pupilChecksKey(who.id)))
    const here = new Set(checks.map(({ check }) => check.id))
    const gone = older.ok ? older.record.checks.filter((one) => !here.has(one.check.id)).length : 0

    await putRecord(store, 'pupil', pupilKey(who.id), pupil)
    // The file was validated as a whole: what is in it is not validated again.
    store.put(packed(kept), pupilChecksKey(who.id))
    const file: PupilFile = { schema: 1, id: who.id, madeAtMs, text }
    if (checks.some(({ page }) => page)) store.put(file, pupilFileKey(who.id))
    else store.delete(pupilFileKey(who.id))
    return { pupil, replaced: before.ok, gone }
  })
}

/** Every pupil, and how many more are kept that cannot be read. */
export const listPupils = (): Promise<{ pupils: Pupil[]; unreadable: number }> =>
  reading(async (store) => {
    const read = (await rawEntries(store, keysOf('pupil'))).map(({ raw }) =>
      readRecord('pupil', raw),
    )
    const pupils = read.flatMap((one) => (one.ok ? [one.record] : []))
    return { pupils, unreadable: read.length - pupils.length }
  })

export interface WholePupil {
  readonly pupil: Pupil
  readonly kept: PupilChecks
  readonly reviews: ReadonlyMap<string, Review>
  readonly notes: TutorNotes
}

/** `undefined` where there is no such pupil; rejects where what is kept cannot be read. */
export const getPupil = (id: string): Promise<WholePupil | undefined> =>
  reading(async (store) => {
    const raw = await rawRecord(store, pupilKey(id))
    if (raw === undefined) return undefined
    const pupil = readRecord('pupil', raw)
    const kept = readRecord('pupil-checks', await rawRecord(store, pupilChecksKey(id)))
    if (!pupil.ok || !kept.ok)
      throw new StoreError(
        'unreadable',
        'This pupil’s file is kept, but cannot be read. Open it again; your notes and marks stay.',
      )
    const notes = readRecord('tutor-notes', await rawRecord(store, tutorNotesKey(id)))
    return {
      pupil: pupil.record,
      kept: kept.record,
      reviews: await reviewsOf(store, id),
      notes: notes.ok ? notes.record : { schema: 1, pupilId: id, text: '', savedAtMs: 0 },
    }
  })

/** The pages of some of a pupil's checks, by check; those that came without their text are missing. */
export const getPupilPages = (
  id: string,
  checkIds: readonly string[],
): Promise<Map<string, SharedPage>> =>
  reading(async (store) => {
    const read = readRecord('pupil-file', await rawRecord(store, pupilFileKey(id)))
    return read.ok ? pagesOf(read.record.text, checkIds) : new Map()
  })

/** Changes the tutor's marks of a check as they are kept now, with what that teaches, and gives them as they are then. */
export const changeReview = (
  pupilId: string,
  checkId: string,
  change: (review: Review) => Review,
  lesson?: Lesson,
): Promise<Review> =>
  writing(async (store) => {
    const key = reviewKey(pupilId, checkId)
    const read = readRecord('review', await rawRecord(store, key))
    const review = forWriting('review', change(read.ok ? read.record : newReview(pupilId, checkId)))
    await putRecord(store, 'review', key, review)
    if (lesson) await putLesson(store, lesson)
    await refreshPupil(store, pupilId)
    return review
  })

export const saveTutorNotes = (notes: TutorNotes): Promise<void> =>
  writing((store) => putRecord(store, 'tutor-notes', tutorNotesKey(notes.pupilId), notes))

/** Removes a pupil's file with the tutor's notes and marks, for good: it is the tutor who asks. */
export const removePupil = (id: string): Promise<void> =>
  writing(async (store) => {
    store.delete(pupilKey(id))
    store.delete(pupilChecksKey(id))
    store.delete(tutorNotesKey(id))
    store.delete(pupilFileKey(id))
    store.delete(keysOfReviews(id))
    await forgetPupil(store, id)
  })

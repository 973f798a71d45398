/** What each point learnt from marks that were changed. */
import { putRecord } from './aside'
import { rawEntries, rawRecord, reading, writing } from './database'
import { keysOf, keysOfLearned, learnedKey, type LearnedAt } from './keys'
import { readRecord } from './records'
import type { LearnedWording } from './types'

interface TopicPlace {
  readonly syllabusId: string
  readonly topicId: string
}

/** What was learnt of one topic, oldest first. One that cannot be read is left out and stays. */
export const listLearned = (topic: TopicPlace): Promise<LearnedWording[]> =>
  reading(async (store) => (await readAll(store, keysOfLearned(topic))).map(({ record }) => record))

/** On the tutor's side: what was learnt from the marks of one pupil's checks, oldest first. */
export const listTaughtBy = (pupilId: string): Promise<LearnedWording[]> =>
  reading(async (store) => (await taughtBy(store, pupilId)).map(({ record }) => record))

/** What a point learns from one mark: a wording, or nothing any more. */
export interface Lesson {
  readonly at: LearnedAt
  readonly wording: LearnedWording | undefined
}

/** Keeps it; somebody's latest word on a wording stands, so another record of theirs of this point with the same text goes. */
export const keepWording = (wording: LearnedWording): Promise<void> =>
  writing((store) => putLesson(store, { at: wording, wording }))

/** Keeps what is learnt from a mark inside a transaction: with the mark, so that neither is there without the other. */
export async function putLesson(store: IDBObjectStore, { at, wording }: Lesson): Promise<void> {
  const key = learnedKey(at)
  if (!wording) {
    store.delete(key)
    return
  }
  for (const { key: other, record } of await readAll(store, keysOfLearned(wording)))
    if (other !== key && record.by === wording.by && sameWording(record, wording))
      store.delete(other)
  await putRecord(store, 'learned', key, wording)
}

/** Removes a wording, unless its mark was changed since and has taught another one. */
export const withdrawWording = (wording: LearnedWording): Promise<void> =>
  writing(async (store) => {
    const kept = readRecord('learned', await rawRecord(store, learnedKey(wording)))
    if (kept.ok && kept.record.atMs === wording.atMs) store.delete(learnedKey(wording))
  })

/** Removes what a point learnt from one mark. Where there is nothing, nothing happens. */
export const forgetWording = (at: LearnedAt): Promise<void> =>
  writing(async (store) => {
    store.delete(learnedKey(at))
  })

/** Of several words on one wording the latest, whoever's it is: the tutor may overrule the student, and the other way round. */
export const latestWords = (learned: readonly LearnedWording[]): LearnedWording[] =>
  learned.filter(
    (one) => !learned.some((other) => other.atMs > one.atMs && sameWording(other, one)),
  )

/** Removes what the marks of one pupil's checks taught, inside a transaction. */
export async function forgetPupil(store: IDBObjectStore, pupilId: string): Promise<void> {
  for (const { key } of await taughtBy(store, pupilId)) store.delete(key)
}

/** Removes what a tutor's marks of one check taught, inside a transaction. */
export async function forgetTutor(
  store: IDBObjectStore,
  check: TopicPlace & { readonly id: string },
): Promise<void> {
  for (const { key, record } of await readAll(store, keysOfLearned(check)))
    if (record.checkId === check.id && record.by === 'tutor' && record.pupilId === undefined)
      store.delete(key)
}

const taughtBy = async (store: IDBObjectStore, pupilId: string) =>
  (await readAll(store, keysOf('learned'))).filter(({ record }) => record.pupilId === pupilId)

async function readAll(store: IDBObjectStore, range: IDBKeyRange) {
  return (await rawEntries(store, range))
    .flatMap(({ key, raw }) => {
      const read = readRecord('learned', raw)
      return read.ok ? [{ key, record: read.record }] : []
    })
    .sort((a, b) => a.record.atMs - b.record.atMs)
}

const plain = (text: string) => text.normalize('NFC').toLowerCase().replace(/\s+/gu, ' ').trim()
const sameWording = (a: LearnedWording, b: LearnedWording) =>
  a.ref === b.ref && plain(a.text) === plain(b.text)

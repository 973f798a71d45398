/** What each point learnt from marks that were changed. */
import { putRecord } from './aside'
import { rawEntries, reading, writing } from './database'
import { keysOfLearned, learnedKey } from './keys'
import { readRecord } from './records'
import type { LearnedWording } from './types'

interface TopicPlace {
  readonly syllabusId: string
  readonly topicId: string
}

/** What was learnt of one topic, oldest first. One that cannot be read is left out and stays. */
export const listLearned = (topic: TopicPlace): Promise<LearnedWording[]> =>
  reading(async (store) => (await readAll(store, topic)).map(({ record }) => record))

/** Keeps it; the latest word on a wording stands, so another record of this point with the same text goes. */
export const keepWording = (wording: LearnedWording): Promise<void> =>
  writing(async (store) => {
    const key = learnedKey(wording, wording.ref, wording.checkId)
    for (const { key: other, record } of await readAll(store, wording))
      if (other !== key && record.ref === wording.ref && sameText(record.text, wording.text))
        store.delete(other)
    await putRecord(store, 'learned', key, wording)
  })

/** Removes what a point learnt from one check. Where there is nothing, nothing happens. */
export const forgetWording = (topic: TopicPlace, ref: string, checkId: string): Promise<void> =>
  writing(async (store) => {
    store.delete(learnedKey(topic, ref, checkId))
  })

async function readAll(store: IDBObjectStore, topic: TopicPlace) {
  return (await rawEntries(store, keysOfLearned(topic)))
    .flatMap(({ key, raw }) => {
      const read = readRecord('learned', raw)
      return read.ok ? [{ key, record: read.record }] : []
    })
    .sort((a, b) => a.record.atMs - b.record.atMs)
}

const plain = (text: string) => text.normalize('NFC').toLowerCase().replace(/\s+/gu, ' ').trim()
const sameText = (a: string, b: string) => plain(a) === plain(b)

/** Dumps not yet marked, one for each topic, saved while typing. */
import { putRecord } from './aside'
import { rawEntries, rawRecord, reading, writing } from './database'
import { draftKey, keysOf } from './keys'
import { readRecord } from './records'
import type { Draft } from './types'

/** `undefined` where there is none, or one that cannot be read: that one is set aside when the next is saved. */
export const getDraft = (syllabusId: string, topicId: string): Promise<Draft | undefined> =>
  reading(async (store) => {
    const read = readRecord('draft', await rawRecord(store, draftKey(syllabusId, topicId)))
    return read.ok ? read.record : undefined
  })

/** Those that can be read, the last saved first. */
export const listDrafts = (): Promise<Draft[]> =>
  reading(async (store) => {
    const read = (await rawEntries(store, keysOf('draft'))).map(({ raw }) =>
      readRecord('draft', raw),
    )
    return read
      .flatMap((one) => (one.ok ? [one.record] : []))
      .sort((a, b) => b.savedAtMs - a.savedAtMs)
  })

export const saveDraft = (draft: Draft): Promise<void> =>
  writing((store) => putRecord(store, 'draft', draftKey(draft.syllabusId, draft.topicId), draft))

/** One that cannot be read stays. */
export const removeDraft = (syllabusId: string, topicId: string): Promise<void> =>
  writing(async (store) => {
    const key = draftKey(syllabusId, topicId)
    if (readRecord('draft', await rawRecord(store, key)).ok) store.delete(key)
  })

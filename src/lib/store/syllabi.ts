/** Syllabi that the user brought. Those that ship with the app are not kept here. */
import { putRecord } from './aside'
import { rawEntries, reading, writing } from './database'
import { keysOf, syllabusKey } from './keys'
import { readRecord } from './records'
import type { KeptSyllabus } from './types'

/** In the order in which they were added, and how many more are kept that cannot be read. */
export const listSyllabi = (): Promise<{ syllabi: KeptSyllabus[]; unreadable: number }> =>
  reading(async (store) => {
    const read = (await rawEntries(store, keysOf('syllabus'))).map(({ raw }) =>
      readRecord('syllabus', raw),
    )
    const syllabi = read
      .flatMap((one) => (one.ok ? [one.record] : []))
      .sort((a, b) => a.addedAtMs - b.addedAtMs)
    return { syllabi, unreadable: read.length - syllabi.length }
  })

/** Adds one, or replaces the one with its id. One is taken away by `changeSyllabus`, which settles its edits as well. */
export const putSyllabus = (kept: KeptSyllabus): Promise<void> =>
  writing((store) => putRecord(store, 'syllabus', syllabusKey(kept.id), kept))

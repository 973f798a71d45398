/** Exam questions that the student logged. */
import type { PaperEntry, PaperQuestion } from '../recall'
import { putRecord } from './aside'
import { rawEntries, rawRecord, reading, writing } from './database'
import { entryKey, keysOf, paperKey } from './keys'
import { readRecord } from './records'

/** Oldest day first, and how many more are kept that cannot be read. */
export const listPapers = (): Promise<{ papers: PaperQuestion[]; unreadable: number }> =>
  reading(async (store) => {
    const read = (await rawEntries(store, keysOf('paper'))).map(({ raw }) =>
      readRecord('paper', raw),
    )
    const papers = read
      .flatMap((one) => (one.ok ? [one.record] : []))
      .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
    return { papers, unreadable: read.length - papers.length }
  })

/** Adds one, or replaces the one with its id. */
export const putPaper = (paper: PaperQuestion): Promise<void> =>
  writing((store) => putRecord(store, 'paper', paperKey(paper.id), paper))

export const removePaper = (id: string): Promise<void> =>
  writing(async (store) => {
    store.delete(paperKey(id))
  })

/**
 * Puts and removes questions in one transaction, with the end of the entry that they come from: all of it or nothing,
 * so that a paper is never logged by half, nor twice because its entry was still there.
 */
export const changePapers = (change: {
  readonly put?: readonly PaperQuestion[]
  readonly remove?: readonly string[]
  /** The id of an entry that is over. */
  readonly entry?: string
}): Promise<void> =>
  writing(async (store) => {
    for (const paper of change.put ?? []) await putRecord(store, 'paper', paperKey(paper.id), paper)
    for (const id of change.remove ?? []) store.delete(paperKey(id))
    if (change.entry !== undefined) await dropEntry(store, change.entry)
  })

/** Half-written entries that can be read, the last saved first. */
export const listEntries = (): Promise<PaperEntry[]> =>
  reading(async (store) =>
    (await rawEntries(store, keysOf('entry')))
      .flatMap(({ raw }) => {
        const read = readRecord('entry', raw)
        return read.ok ? [read.record] : []
      })
      .sort((a, b) => b.savedAtMs - a.savedAtMs),
  )

export const saveEntry = (entry: PaperEntry): Promise<void> =>
  writing((store) => putRecord(store, 'entry', entryKey(entry.id), entry))

export const removeEntry = (id: string): Promise<void> => writing((store) => dropEntry(store, id))

/** One that cannot be read stays. */
async function dropEntry(store: IDBObjectStore, id: string): Promise<void> {
  if (readRecord('entry', await rawRecord(store, entryKey(id))).ok) store.delete(entryKey(id))
}

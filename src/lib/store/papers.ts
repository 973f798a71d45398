/** Exam questions that the student logged. */
import type { PaperQuestion } from '../recall'
import { putRecord } from './aside'
import { rawEntries, reading, writing } from './database'
import { keysOf, paperKey } from './keys'
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

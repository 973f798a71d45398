/** Syllabi that are being edited, and the step in which one takes its syllabus's place. */
import type { EditedPoint } from '../recall'
import { putRecord } from './aside'
import { rawEntries, rawRecord, reading, writing } from './database'
import { checkKey, editKey, keysOf, paperKey, syllabusKey } from './keys'
import { forWriting, readRecord } from './records'
import type { KeptSyllabus, SyllabusEdit } from './types'

/** `undefined` where there is none, or one that cannot be read: that one is set aside when the next is saved. */
export const getEdit = (syllabusId: string): Promise<SyllabusEdit | undefined> =>
  reading(async (store) => {
    const read = readRecord('edit', await rawRecord(store, editKey(syllabusId)))
    return read.ok ? read.record : undefined
  })

/** Those that can be read, the last saved first. */
export const listEdits = (): Promise<SyllabusEdit[]> =>
  reading(async (store) =>
    (await rawEntries(store, keysOf('edit')))
      .flatMap(({ raw }) => {
        const read = readRecord('edit', raw)
        return read.ok ? [read.record] : []
      })
      .sort((a, b) => b.savedAtMs - a.savedAtMs),
  )

export const saveEdit = (edit: SyllabusEdit): Promise<void> =>
  writing((store) => putRecord(store, 'edit', editKey(edit.id), edit))

/** One that cannot be read stays. */
export const removeEdit = (syllabusId: string): Promise<void> =>
  writing(async (store) => {
    const key = editKey(syllabusId)
    if (readRecord('edit', await rawRecord(store, key)).ok) store.delete(key)
  })

export interface SyllabusChange {
  readonly id: string
  /** What takes its place; absent: the user's copy goes, and the shipped one of this id is there again. */
  readonly kept?: KeptSyllabus
  /** For each check of it, by id, what became of its points. */
  readonly edited: ReadonlyMap<string, readonly EditedPoint[]>
  /** The same for each question of a paper. */
  readonly papers: ReadonlyMap<string, readonly EditedPoint[]>
}

/**
 * Puts an edited syllabus in use, in one transaction: the syllabus, the note in each of its checks of what became of
 * its points, and the end of the edit. A check's marks and page are not touched.
 */
export const changeSyllabus = ({ id, kept, edited, papers }: SyllabusChange): Promise<void> =>
  writing(async (store) => {
    if (kept) await putRecord(store, 'syllabus', syllabusKey(id), kept)
    else store.delete(syllabusKey(id))
    for (const [checkId, points] of edited)
      await noteEdited(store, 'check', checkKey(checkId), points)
    for (const [paperId, points] of papers)
      await noteEdited(store, 'paper', paperKey(paperId), points)
    const edit = readRecord('edit', await rawRecord(store, editKey(id)))
    if (edit.ok) store.delete(editKey(id))
  })

/** A record that was removed meanwhile, or that cannot be read, is left as it is. */
async function noteEdited(
  store: IDBObjectStore,
  kind: 'check' | 'paper',
  key: string,
  points: readonly EditedPoint[],
): Promise<void> {
  const read = readRecord(kind, await rawRecord(store, key))
  if (!read.ok) return
  const { edited: _before, ...record } = read.record
  const now = points.length > 0 ? { ...record, edited: points } : record
  store.put(forWriting(kind, now as typeof read.record), key)
}

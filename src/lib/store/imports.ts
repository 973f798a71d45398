/** The syllabus that was brought and is being put right, saved at every step. */
import { putRecord } from './aside'
import { rawRecord, reading, writing } from './database'
import { IMPORT_KEY } from './keys'
import { readRecord } from './records'
import type { SyllabusImport } from './types'

/** `undefined` where there is none, or one that cannot be read: that one is set aside when the next is saved. */
export const getImport = (): Promise<SyllabusImport | undefined> =>
  reading(async (store) => {
    const read = readRecord('import', await rawRecord(store, IMPORT_KEY))
    return read.ok ? read.record : undefined
  })

export const saveImport = (kept: SyllabusImport): Promise<void> =>
  writing((store) => putRecord(store, 'import', IMPORT_KEY, kept))

/** One that cannot be read stays. */
export const removeImport = (): Promise<void> =>
  writing(async (store) => {
    if (readRecord('import', await rawRecord(store, IMPORT_KEY)).ok) store.delete(IMPORT_KEY)
  })

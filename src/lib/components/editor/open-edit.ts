/** A syllabus, and the edit of it that may have been begun -> all that the editor begins with. */
import { getEdit, listSyllabi, StoreError } from '$lib/store'
import { emptyForm, formOf, readSyllabus, writeSyllabus } from '$lib/syllabus'
import { loadShipped, loadShippedSource } from '../library'
import type { Begun } from './edit-session.svelte'
import { NEW_EDIT } from './new-edit'

export interface OpenEdit extends Begun {
  readonly title: string
  readonly isNew: boolean
  /** It ships, and the user has no copy of it. */
  readonly shipped: boolean
  /** The user's copy of one that ships. */
  readonly replaces: boolean
  /** When it was brought, where it was. */
  readonly addedAtMs?: number
  /** An edit was begun before. */
  readonly goesOn: boolean
  /** What is in use is no longer what that edit was begun from. */
  readonly stale: boolean
  /** Whether a syllabus of this id is there already and is not this one. */
  readonly taken: (id: string) => boolean
}

/** '' begins a new one. `undefined` where there is no syllabus of this id. */
export async function openEdit(id: string): Promise<OpenEdit | undefined> {
  const kept = await keptSyllabi()
  const own = kept.find((syllabus) => syllabus.id === id)
  const shipped = id === '' ? undefined : await loadShipped(id)
  const syllabus = own?.syllabus ?? shipped
  if (id !== '' && !syllabus) return undefined
  const key = id === '' ? NEW_EDIT : id
  const edit = await getEdit(key).catch(() => undefined)
  const source = syllabus ? (own?.source ?? (await loadShippedSource(id)) ?? '') : ''
  const inUse = syllabus ? formOf(syllabus) : emptyForm()
  return {
    id: key,
    title: syllabus?.title ?? '',
    isNew: id === '',
    shipped: own === undefined && shipped !== undefined,
    replaces: own !== undefined && shipped !== undefined,
    ...(own ? { addedAtMs: own.addedAtMs } : {}),
    goesOn: edit !== undefined,
    stale: edit !== undefined && edit.source !== source,
    // The keys of an edit say where things stood in the file that it was begun from.
    source:
      edit?.source ?? (readSyllabus(source).ok || !syllabus ? source : writeSyllabus(syllabus)),
    inUse,
    form: edit?.form ?? inUse,
    taken: (other) => id === '' && kept.some((one) => one.id === other),
  }
}

/** Where nothing can be read there is still what ships. */
async function keptSyllabi() {
  try {
    return (await listSyllabi()).syllabi
  } catch (error) {
    if (error instanceof StoreError) return []
    throw error
  }
}

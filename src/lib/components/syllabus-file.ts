/** A syllabus -> a file of it in one of its forms, and giving it to the user. */
import { listSyllabi } from '$lib/store'
import type { Syllabus } from '$lib/syllabus'
import { csvOf } from './csv'
import { download } from './download'
import { loadShipped, loadShippedSource } from './library'

/** A syllabus and its file word for word; no syllabus where the file cannot be read yet. */
export interface Exported {
  readonly id: string
  readonly source: string
  readonly syllabus: Syllabus | undefined
}

export interface GivenFile {
  readonly name: string
  readonly text: string
  readonly type: string
}

export type FileForm = 'file' | 'table' | 'case'

/** What the user brought, else what ships. Rejects with a plain message where there is none of this id. */
export async function exportedOf(id: string): Promise<Exported> {
  // Where nothing can be read from the store there is still what ships.
  const kept = await listSyllabi().then(
    ({ syllabi }) => syllabi.find((syllabus) => syllabus.id === id),
    () => undefined,
  )
  if (kept) return { id, source: kept.source, syllabus: kept.syllabus }
  const [syllabus, source] = await Promise.all([loadShipped(id), loadShippedSource(id)])
  if (!syllabus || source === undefined)
    throw new Error('This syllabus is no longer here. Load the page again.')
  return { id, source, syllabus }
}

/** `nowMs` dates a package of the standard. Rejects with a plain message where the syllabus has mistakes. */
export async function fileOf(
  { id, source, syllabus }: Exported,
  form: FileForm,
  nowMs: number,
): Promise<GivenFile> {
  if (form === 'file')
    return { name: `${id}.yaml`, text: source, type: 'application/yaml;charset=utf-8' }
  const whole = readable(syllabus)
  // Loaded on first use: a page that lists syllabi writes none.
  const { casePackage, tableRows } = await import('$lib/syllabus')
  return form === 'table'
    ? { name: `${id}.csv`, text: await csvOf(tableRows(whole)), type: 'text/csv;charset=utf-8' }
    : {
        name: `${id}.case.json`,
        text: `${JSON.stringify(casePackage(whole, nowMs), null, 2)}\n`,
        type: 'application/json',
      }
}

export function readable(syllabus: Syllabus | undefined): Syllabus {
  if (syllabus) return syllabus
  throw new Error('It has mistakes: only its own file can be saved until they are put right.')
}

/**
 * Hands the file over to another app where the device can do that, else saves it. Gives what was done; undefined where
 * the user thought better of it.
 */
export async function shareFile({ id, source }: Exported): Promise<'shared' | 'saved' | undefined> {
  // Browsers share a short list of kinds of files only; a text file is on it, and is read here as well.
  const file = new File([source], `${id}.txt`, { type: 'text/plain' })
  if (!navigator.canShare?.({ files: [file] })) {
    download(`${id}.yaml`, source, 'application/yaml;charset=utf-8')
    return 'saved'
  }
  try {
    await navigator.share({ files: [file] })
    return 'shared'
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return undefined
    throw error
  }
}

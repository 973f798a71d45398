/** A syllabus -> the file that is given to the user: the one they brought word for word, a shipped one written out. */
import { listSyllabi } from '$lib/store'
import { loadShipped } from './library'

export interface GivenFile {
  readonly name: string
  readonly text: string
  readonly type: string
}

/** Rejects with a plain message where there is no such syllabus. */
export async function syllabusFile(id: string): Promise<GivenFile> {
  return { name: `${id}.yaml`, text: await sourceOf(id), type: 'application/yaml;charset=utf-8' }
}

async function sourceOf(id: string): Promise<string> {
  // Where nothing can be read from the store there is still what ships.
  const kept = await listSyllabi().then(
    ({ syllabi }) => syllabi.find((syllabus) => syllabus.id === id),
    () => undefined,
  )
  if (kept) return kept.source
  const shipped = await loadShipped(id)
  if (!shipped) throw new Error('This syllabus is no longer here. Load the page again.')
  const { writeSyllabus } = await import('$lib/syllabus')
  return writeSyllabus(shipped)
}

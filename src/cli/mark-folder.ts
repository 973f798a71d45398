/** A folder of pages on one topic, marked: a table and a summary are written into it. */
import { readdirSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { csvOf } from '../lib/components/csv'
import { mark } from '../lib/marking'
import { batchOf } from '../lib/review'
import type { Topic } from '../lib/syllabus'
import { batchSummary, batchTable } from '../lib/view/batch-tables'
import { CliError, readText } from './files'

const TABLE = 'marks.csv'
const SUMMARY = 'marks-summary.md'

export const isFolder = (path: string): boolean =>
  statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false

/**
 * Marks every .txt file of a folder, by name; folders in it are left alone. All are read before the first is marked: a
 * bad one leaves nothing half written. Gives what was written, in a sentence.
 */
export async function markFolder(topic: Topic, folder: string): Promise<string> {
  const names = readdirSync(folder)
    .filter((name) => /\.txt$/i.test(name) && !isFolder(join(folder, name)))
    .sort((a, b) => a.localeCompare(b, 'en', { numeric: true }))
  if (names.length === 0) throw new CliError(`${folder}: no .txt file in this folder`)
  const texts = names.map((name) => ({ name, text: readText(join(folder, name)) }))
  const marked = texts.map(({ name, text }) => ({
    name: name.replace(/\.txt$/i, ''),
    report: mark(topic, text),
  }))
  const written = [
    [TABLE, await csvOf(batchTable(topic, marked))],
    [SUMMARY, batchSummary(topic, batchOf(topic, marked))],
  ] as const
  for (const [name, content] of written) write(join(folder, name), content)
  return `${names.length} pages marked: ${written.map(([name]) => join(folder, name)).join(', ')}\n`
}

function write(path: string, content: string): void {
  try {
    writeFileSync(path, content)
  } catch (error) {
    throw new CliError(`${path}: could not be written (${String((error as Error).message)})`)
  }
}

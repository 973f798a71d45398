import { readdirSync, readFileSync } from 'node:fs'
import { readSyllabus, type Topic } from '../../../src/lib/syllabus'

const folder = new URL('../../../syllabi/', import.meta.url)

/** Every topic of the syllabi that ship with the app, with the name of its file without the ending. */
export const shippedTopics: readonly { readonly file: string; readonly topic: Topic }[] =
  readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .flatMap((name) => {
      const read = readSyllabus(readFileSync(new URL(name, folder), 'utf8'))
      if (!read.ok) throw new Error(`${name}: ${read.mistakes[0]!.message}`)
      return read.syllabus.topics.map((topic) => ({ file: name.replace('.yaml', ''), topic }))
    })

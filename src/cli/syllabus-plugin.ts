/**
 * The syllabi that ship with the app, read when it is built, so that no YAML parser is on the pages that only use them.
 * `virtual:syllabi` gives what a list needs, without the points; each syllabus is a module of its own, loaded where it is marked.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { basename, resolve } from 'node:path'
import { runnerImport, type Plugin } from 'vite'
import type { Syllabus } from '../lib/syllabus'

const LIST = 'virtual:syllabi'
const ONE = 'virtual:syllabus/'
const SOURCE = 'virtual:syllabus-source/'
/** Rollup's sign for a module that is no file. */
const NO_FILE = '\0'

export function shippedSyllabi(folder = 'syllabi'): Plugin {
  const pathOf = (name: string) => resolve(folder, `${name}.yaml`)
  const names = () =>
    readdirSync(folder)
      .filter((file) => file.endsWith('.yaml'))
      .map((file) => basename(file, '.yaml'))
      .sort()

  return {
    name: 'shipped-syllabi',
    resolveId: (id) =>
      id === LIST || id.startsWith(ONE) || id.startsWith(SOURCE) ? NO_FILE + id : undefined,
    async load(id) {
      if (id === NO_FILE + LIST) {
        for (const name of names()) this.addWatchFile(pathOf(name))
        const files = names().map(async (name) => ({
          name,
          syllabus: await readFile(pathOf(name)),
        }))
        return listModule(await Promise.all(files))
      }
      if (id.startsWith(NO_FILE + SOURCE)) {
        const path = pathOf(id.slice((NO_FILE + SOURCE).length))
        this.addWatchFile(path)
        return `export default ${JSON.stringify(readFileSync(path, 'utf8'))}`
      }
      if (!id.startsWith(NO_FILE + ONE)) return undefined
      const path = pathOf(id.slice((NO_FILE + ONE).length))
      this.addWatchFile(path)
      return asModule(await readFile(path))
    },
  }
}

function listModule(files: readonly { name: string; syllabus: Syllabus }[]): string {
  const items = files.map(({ name, syllabus }) => {
    const { id, title, note, topics } = syllabus
    const listed = topics.map((topic) => ({
      id: topic.id,
      title: topic.title,
      ...(topic.caution === undefined ? {} : { caution: topic.caution }),
      points: topic.points.length,
    }))
    const outline = JSON.stringify({
      id,
      title,
      ...(note === undefined ? {} : { note }),
      topics: listed,
    })
    const loader = (module: string) =>
      `() => import(${JSON.stringify(module)}).then((m) => m.default)`
    return `{ outline: ${outline}, load: ${loader(ONE + name)}, source: ${loader(SOURCE + name)} }`
  })
  return `export default [${items.join(',\n')}]`
}

const asModule = (syllabus: Syllabus): string =>
  // A browser reads a long JSON text faster than the same object as code.
  `export default JSON.parse(${JSON.stringify(JSON.stringify(syllabus))})`

/** A shipped file with a mistake ends the build, with the place of every mistake. */
async function readFile(path: string): Promise<Syllabus> {
  // Imported as the app imports it: a plain import would have the configuration's own loader look for the room's files.
  const { module } = await runnerImport<typeof import('../lib/syllabus')>(
    resolve('src/lib/syllabus/index.ts'),
  )
  const read = module.readSyllabus(readFileSync(path, 'utf8'))
  if (read.ok) return read.syllabus
  const mistakes = read.mistakes.map(
    ({ line, column, where, message }) => `${path}:${line}:${column} ${where}: ${message}`,
  )
  throw new Error(mistakes.join('\n'))
}

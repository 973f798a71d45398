/** The files that the marker is measured with: read, and refused in one line where they are not what they should be. */
import { readdirSync } from 'node:fs'
import { basename, join } from 'node:path'
import * as v from 'valibot'
import type { Topic } from '../../lib/syllabus'
import { CliError, readSyllabusFile, readText } from '../files'

const label = v.object({
  mark: v.picklist(['full', 'partial', 'missed', 'contradicted']),
  evidence: v.optional(v.string()),
  why: v.optional(v.string()),
})
const dump = v.object({
  id: v.string(),
  style: v.string(),
  text: v.string(),
  labels: v.record(v.string(), label),
})
const dumpsFile = v.object({ topic: v.string(), dumps: v.array(dump) })

export type LabelledDump = v.InferOutput<typeof dump>

/** A topic with the dumps that were labelled for it. */
export interface LabelledTopic {
  /** The name of the two files, without their endings. */
  readonly name: string
  readonly topic: Topic
  readonly dumps: readonly LabelledDump[]
}

/** Every `NAME.dumps.json` of a folder with its `NAME.yaml`, by name. */
export function readLabelledFolder(folder: string): LabelledTopic[] {
  let files: string[]
  try {
    files = readdirSync(folder)
  } catch {
    throw new CliError(`${folder}: no such folder`)
  }
  const names = files.filter((f) => f.endsWith('.dumps.json')).sort()
  if (names.length === 0) throw new CliError(`${folder}: no NAME.dumps.json in it`)
  return names.map((file) => readLabelledTopic(join(folder, file)))
}

function readLabelledTopic(path: string): LabelledTopic {
  const name = basename(path, '.dumps.json')
  const yaml = join(path, '..', `${name}.yaml`)
  const { topic: id, dumps } = parsed(dumpsFile, readText(path), path)
  const { topics } = readSyllabusFile(yaml)
  const topic = topics.find((t) => t.id === id)
  if (!topic)
    throw new CliError(
      `${path}: labelled for topic ${id}, but ${yaml} has ${topics.map((t) => t.id).join(', ')}`,
    )
  const refs = new Set(topic.points.map(({ ref }) => ref))
  for (const { id: dumpId, labels } of dumps) {
    const stranger = Object.keys(labels).find((ref) => !refs.has(ref))
    if (stranger !== undefined)
      throw new CliError(
        `${path}: dump ${dumpId} labels point ${stranger}, but topic ${id} of ${yaml} has no such point`,
      )
  }
  return { name, topic, dumps }
}

const shortAnswer = v.object({
  set: v.string(),
  question: v.string(),
  references: v.pipe(v.array(v.string()), v.nonEmpty('there is no reference answer')),
  answer: v.string(),
  correct: v.boolean(),
})

export type ShortAnswer = v.InferOutput<typeof shortAnswer>

/** One JSON object a line; empty lines are passed over. */
export function readShortAnswers(path: string): ShortAnswer[] {
  return readText(path)
    .split('\n')
    .flatMap((line, i) =>
      line.trim() === '' ? [] : [parsed(shortAnswer, line, `${path}:${i + 1}`)],
    )
}

function parsed<S extends v.GenericSchema>(
  schema: S,
  text: string,
  where: string,
): v.InferOutput<S> {
  let raw: unknown
  try {
    raw = JSON.parse(text)
  } catch (error) {
    throw new CliError(`${where}: not JSON (${(error as Error).message})`)
  }
  const read = v.safeParse(schema, raw)
  if (read.success) return read.output
  const at = v.getDotPath(read.issues[0])
  throw new CliError(`${where}: ${at ? `at ${at}: ` : ''}${read.issues[0].message}`)
}

import { isMap, isScalar } from 'yaml'
import {
  fieldsOf,
  itemsOf,
  lineOf,
  report,
  textOf,
  type Field,
  type NamedField,
  type Reading,
} from './fields'
import { readPoint, type Seen } from './read-point'
import { topicId } from './slug'
import { readSource, type SyllabusMistake } from './source'
import { FORMAT, type Point, type Syllabus, type Topic } from './types'

export type SyllabusRead =
  | { readonly ok: true; readonly syllabus: Syllabus }
  | {
      readonly ok: false
      /** In the order of the file, at least 1, at most 50. */
      readonly mistakes: readonly SyllabusMistake[]
      /** How many further mistakes are not listed. */
      readonly more: number
    }

const MOST_LISTED = 50

/**
 * Reads a syllabus file. A file with a mistake is refused whole, with every mistake in its place; where the YAML itself
 * is broken only that is reported, since what follows a broken line cannot be judged. Never throws.
 */
export function readSyllabus(source: string): SyllabusRead {
  const tree = readSource(source)
  if (!tree.ok) return refusal(tree.mistakes)
  const reading: Reading = { source, placeOf: tree.placeOf, mistakes: [] }
  const node = tree.document.contents
  const root: Field = { node, at: node?.range?.[0] ?? 0, where: '' }
  const tooNew = newerFormat(reading, root)
  // The rest may be right in the newer format: judging it by this one would mislead.
  if (tooNew) return refusal(tooNew)
  const syllabus = syllabusOf(reading, root)
  return syllabus && reading.mistakes.length === 0
    ? { ok: true, syllabus }
    : refusal(reading.mistakes)
}

function refusal(mistakes: readonly SyllabusMistake[]): SyllabusRead {
  const ordered = [...mistakes].sort((a, b) => a.line - b.line || a.column - b.column)
  const named = ordered.map((mistake) =>
    mistake.where === '' ? { ...mistake, where: 'the file' } : mistake,
  )
  return {
    ok: false,
    mistakes: named.slice(0, MOST_LISTED),
    more: Math.max(0, named.length - MOST_LISTED),
  }
}

function newerFormat(reading: Reading, { node }: Field): SyllabusMistake[] | undefined {
  const format: unknown = isMap(node) ? node.get('format', true) : undefined
  if (!isScalar(format) || typeof format.value !== 'number' || !(format.value > FORMAT))
    return undefined
  const message = `The file is in format ${format.source}, which is newer than this version of the app; it reads format ${FORMAT}. Bring the app up to date.`
  return [{ ...reading.placeOf(format.range?.[0] ?? 0), where: 'format', message }]
}

function syllabusOf(reading: Reading, root: Field): Syllabus | undefined {
  const fields = fieldsOf(reading, root, {
    required: ['format', 'title', 'topics'],
    optional: ['id', 'note'],
  })
  if (!fields) return undefined
  const format = fields.get('format')
  if (format && !(isScalar(format.node) && format.node.value === FORMAT)) {
    report(
      reading,
      format.at,
      'format',
      `format: ${FORMAT} was expected, the number without quotation marks.`,
    )
  }
  const titled = fields.get('title')
  const title = titled && lineOf(reading, titled)?.text
  const given = fields.get('id')
  const own = given && givenId(reading, given)
  const id = given || title === undefined ? own : idFrom(reading, titled!, title)
  const noted = fields.get('note')
  const note = noted && textOf(reading, noted)?.text
  const listed = fields.get('topics')
  const topics = listed && topicsOf(reading, listed)
  if (title === undefined || id === undefined || !topics) return undefined
  return { format: FORMAT, id, title, ...(note !== undefined && { note }), topics }
}

function topicsOf(reading: Reading, field: NamedField): Topic[] {
  const refs: Seen = new Map()
  const ids: Seen = new Map()
  const items = itemsOf(reading, field) ?? []
  return items.flatMap((item, i) => topicOf(reading, item, i + 1, { refs, ids }) ?? [])
}

function topicOf(
  reading: Reading,
  item: Field,
  number: number,
  seen: { readonly refs: Seen; readonly ids: Seen },
): Topic | undefined {
  const where = topicName(item, number)
  const fields = fieldsOf(
    reading,
    { ...item, where },
    { required: ['title', 'points'], optional: ['id', 'caution'] },
  )
  if (!fields) return undefined
  const titled = fields.get('title')
  const title = titled && lineOf(reading, titled)?.text
  const id = topicIdOf(reading, fields, title, seen.ids)
  const cautioned = fields.get('caution')
  const caution = cautioned && textOf(reading, cautioned)?.text
  const listed = fields.get('points')
  const items = (listed && itemsOf(reading, listed)) ?? []
  const points = items.flatMap((point, i): Point[] => {
    const read = readPoint(reading, where, point, i + 1, seen.refs)
    return read ? [read] : []
  })
  if (title === undefined || id === undefined) return undefined
  return { id, title, ...(caution !== undefined && { caution }), points }
}

function topicName({ node }: Field, number: number): string {
  const title: unknown = isMap(node) ? node.get('title', true) : undefined
  const source = isScalar(title) ? title.source?.trim() : undefined
  if (!source) return `topic no. ${number}`
  return `topic "${source.length > 60 ? `${source.slice(0, 59)}…` : source}"`
}

function topicIdOf(
  reading: Reading,
  fields: ReadonlyMap<string, NamedField>,
  title: string | undefined,
  seen: Seen,
): string | undefined {
  const given = fields.get('id')
  const titled = fields.get('title')
  const id = given
    ? givenId(reading, given)
    : title && titled
      ? idFrom(reading, titled, title)
      : undefined
  const field = given ?? titled
  if (id === undefined || !field) return undefined
  const first = seen.get(id)
  if (first !== undefined) {
    return report(
      reading,
      field.at,
      field.where,
      `The id ${id} is taken by the topic in line ${first}: give this topic another title, or an "id" of its own.`,
    )
  }
  seen.set(id, reading.placeOf(field.at).line)
  return id
}

function givenId(reading: Reading, field: NamedField): string | undefined {
  const text = lineOf(reading, field)
  if (!text) return undefined
  const id = topicId(text.text)
  if (id === text.text) return id
  const advice = id === '' ? '' : ` Write ${id}.`
  return report(
    reading,
    text.at,
    text.where,
    `An id has small letters, figures and hyphens only.${advice}`,
  )
}

function idFrom(reading: Reading, field: Field, title: string): string | undefined {
  const id = topicId(title)
  if (id !== '') return id
  return report(
    reading,
    field.at,
    field.where,
    'The title has neither letter nor figure to make an id from.',
  )
}

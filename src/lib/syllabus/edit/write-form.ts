/** A form -> the file of its syllabus, whether or not it can be read yet. */
import { Document, Pair, Scalar, YAMLMap, YAMLSeq, type Node } from 'yaml'
import { topicId } from '../slug'
import { FORMAT } from '../types'
import type { PointForm, SyllabusForm, SymbolForm, TopicForm } from './form'

/** What a field holds: a text, a number, a list of texts, symbols with their words; undefined: it is not there. */
export type FieldValue = string | number | readonly string[] | readonly SymbolForm[] | undefined

/** In the order in which they stand in a file. */
export const syllabusFields = ({ id, title, note }: SyllabusForm): [string, FieldValue][] => [
  ['format', FORMAT],
  ['title', title.trim()],
  ['id', ownId(id, title)],
  ['note', optional(note)],
]

export const topicFields = ({ id, title, caution }: TopicForm): [string, FieldValue][] => [
  ['title', title.trim()],
  ['id', ownId(id, title)],
  ['caution', optional(caution)],
]

export const pointFields = (point: PointForm): [string, FieldValue][] => [
  ['ref', point.ref.trim()],
  ['text', point.text.trim()],
  ['cue', optional(point.cue)],
  ['any', anyOf(point.any)],
  ['ideas', texts(point.ideas)],
  ['reject', texts(point.reject)],
  ['equation', optional(point.equation)],
  ['where', point.where.length > 0 ? point.where : undefined],
  ['value', optional(point.value)],
  ['steps', texts(point.steps)],
]

/** An id is written only where the title alone would not give it. */
const ownId = (id: string, title: string) => (id === '' || id === topicId(title) ? undefined : id)
const optional = (text: string) => (text.trim() === '' ? undefined : text.trim())
const anyOf = (any: string) => (/^\s*\d{1,9}\s*$/.test(any) ? Number(any) : optional(any))
const texts = (list: readonly string[]) =>
  list.length > 0 ? list.map((text) => text.trim()) : undefined

export function writeForm(form: SyllabusForm): string {
  const document = new Document(mapOf(syllabusFields(form)))
  const topics = seqOf(form.topics.map(topicNode))
  ;(document.contents as YAMLMap).items.push(pairOf('topics', topics))
  return document.toString({ lineWidth: 0 })
}

export function topicNode(topic: TopicForm): YAMLMap {
  const node = mapOf(topicFields(topic))
  node.items.push(pairOf('points', seqOf(topic.points.map(pointNode))))
  return node
}

export const pointNode = (point: PointForm): YAMLMap => mapOf(pointFields(point))

export function nodeOf(name: string, value: Exclude<FieldValue, undefined>): Node {
  if (Array.isArray(value))
    return name === 'where' ? symbolsNode(value as SymbolForm[]) : seqOf(value.map(scalarOf))
  const scalar = scalarOf(value as string | number)
  // Every ref in quotes, also where YAML needs none, so that whoever adds one by hand sees how it is done.
  if (name === 'ref') scalar.type = Scalar.QUOTE_DOUBLE
  return scalar
}

export const pairOf = (name: string, value: Node): Pair => new Pair(new Scalar(name), value)

const scalarOf = (value: unknown) => new Scalar(value)

function mapOf(fields: readonly [string, FieldValue][]): YAMLMap {
  const map = new YAMLMap()
  for (const [name, value] of fields)
    if (value !== undefined) map.items.push(pairOf(name, nodeOf(name, value)))
  return map
}

/** Not from an object: a symbol that stands there twice must be told, not lost. */
function symbolsNode(symbols: readonly SymbolForm[]): YAMLMap {
  const map = new YAMLMap()
  for (const { symbol, words } of symbols)
    map.items.push(pairOf(symbol.trim(), new Scalar(words.trim())))
  return map
}

function seqOf(items: readonly Node[]): YAMLSeq {
  const seq = new YAMLSeq()
  seq.items.push(...items)
  return seq
}

/** A form -> the file that it was begun from with the changes in it: what was not touched stays as its author wrote it. */
import { isMap, isScalar, isSeq, type Document, type Node, type YAMLMap, type YAMLSeq } from 'yaml'
import { readSyllabus } from '../read'
import { readSource } from '../source'
import { formOf, type PointForm, type SyllabusForm, type SymbolForm, type TopicForm } from './form'
import { layoutOf } from './layout'
import {
  nodeOf,
  pairOf,
  pointFields,
  pointNode,
  syllabusFields,
  topicFields,
  topicNode,
  writeForm,
  type FieldValue,
} from './write-form'

/**
 * The file of a form. Where `base` is the file that the form was begun from, its comments, its order of fields and its
 * way of quoting stay; without a change it comes back byte for byte. Comments of what was dropped go with it.
 */
export function editSource(form: SyllabusForm, base: string): string {
  const before = readSyllabus(base)
  const tree = readSource(base)
  const fresh = writeForm(form)
  if (!before.ok || !tree.ok || !isMap(tree.document.contents)) return fresh
  const written = JSON.stringify
  if (written(formOf(before.syllabus)) === written(form)) return base
  editTree(tree.document.contents, form)
  const edited = printed(tree.document, base)
  // The comments are worth much, the syllabus more: where the two files do not say the same, the plain one stands.
  const [kept, plain] = [readSyllabus(edited), readSyllabus(fresh)]
  const same = kept.ok && plain.ok && written(kept.syllabus) === written(plain.syllabus)
  return same ? edited : fresh
}

function printed(document: Document.Parsed, base: string): string {
  const { newline, mark, ...layout } = layoutOf(base)
  const text = document.toString(layout)
  return mark + (newline === '\n' ? text : text.replaceAll('\n', newline))
}

function editTree(root: YAMLMap, form: SyllabusForm): void {
  const topics = root.get('topics')
  if (!isSeq(topics)) return
  // Taken before anything moves: keys say where a point stood when the file was read.
  const stood = topics.items.map((topic) => ({ topic, points: pointsOf(topic)?.items ?? [] }))
  setFields(root, syllabusFields(form))
  const pointOf = (point: PointForm): Node => {
    const [, t, p] = /^p(\d+)\.(\d+)$/.exec(point.key) ?? []
    const node = stood[Number(t)]?.points[Number(p)]
    if (!isMap(node)) return pointNode(point)
    setFields(node, pointFields(point))
    return node
  }
  const topicOf = (topic: TopicForm): Node => {
    const node = stood[Number(/^t(\d+)$/.exec(topic.key)?.[1])]?.topic
    const points = isMap(node) ? pointsOf(node) : undefined
    const nodes = topic.points.map(pointOf)
    if (!isMap(node) || !points) {
      const made = topicNode({ ...topic, points: [] })
      const list = pointsOf(made)
      if (list) list.items = nodes
      return made
    }
    setFields(node, topicFields(topic))
    setItems(points, nodes)
    return node
  }
  setItems(topics, form.topics.map(topicOf))
}

const pointsOf = (topic: unknown): YAMLSeq | undefined => {
  const points: unknown = isMap(topic) ? topic.get('points') : undefined
  return isSeq(points) ? points : undefined
}

/** Each field as it should be; one that says so already is not touched. New ones come in their usual place. */
function setFields(map: YAMLMap, fields: readonly [string, FieldValue][]): void {
  const order = fields.map(([name]) => name)
  for (const [name, value] of fields) {
    const at = map.items.findIndex(({ key }) => String(key) === name)
    const pair = map.items[at]
    if (value === undefined) {
      if (pair) map.items.splice(at, 1)
    } else if (pair) {
      pair.value = edited(name, pair.value, value)
    } else {
      const before = order.slice(0, order.indexOf(name))
      const after = map.items.map(({ key }) => before.includes(String(key))).lastIndexOf(true)
      map.items.splice(after + 1, 0, pairOf(name, nodeOf(name, value)))
    }
  }
}

function edited(name: string, node: unknown, value: Exclude<FieldValue, undefined>): unknown {
  if (typeof value === 'string' || typeof value === 'number') {
    if (!isScalar(node)) return nodeOf(name, value)
    if (textOf(node) !== String(value)) node.value = value
    return node
  }
  if (name === 'where')
    return isMap(node) ? setSymbols(node, value as SymbolForm[]) : nodeOf(name, value)
  return isSeq(node) ? setTexts(node, value as readonly string[]) : nodeOf(name, value)
}

/** As the reader takes a text: digit for digit, without space around it. */
const textOf = (node: unknown): string | undefined =>
  isScalar(node) ? (node.source ?? String(node.value)).trim() : undefined

/** Items that say the same stay, with their comments; one that was changed in its place is changed in its place. */
function setTexts(seq: YAMLSeq, texts: readonly string[]): YAMLSeq {
  const left = [...seq.items]
  const take = (node: unknown) => left.splice(left.indexOf(node), 1)[0]
  const same = texts.map((text) => {
    const node = left.find((item) => textOf(item) === text)
    return node === undefined ? undefined : take(node)
  })
  const items = texts.map((text, i) => {
    if (same[i]) return same[i]
    const here = seq.items[i]
    if (!left.includes(here) || !isScalar(here)) return nodeOf('', text)
    take(here)
    here.value = text
    return here
  })
  seq.items = items
  return seq
}

function setSymbols(map: YAMLMap, symbols: readonly SymbolForm[]): YAMLMap {
  map.items = symbols.map(({ symbol, words }) => {
    const name = symbol.trim()
    const pair = map.items.find(({ key }) => String(key) === name)
    if (!pair) return pairOf(name, nodeOf('', words.trim()))
    pair.value = edited('', pair.value, words.trim())
    return pair
  })
  return map
}

/** The empty lines between the items are those that the file had. */
function setItems(seq: YAMLSeq, items: readonly Node[]): void {
  const before = seq.items
  const spaced = before.slice(1).some((item) => (item as Node).spaceBefore)
  const first = (before[0] as Node | undefined)?.spaceBefore ?? false
  items.forEach((item, i) => {
    if (before[i] !== item) item.spaceBefore = i === 0 ? first : spaced
  })
  seq.items = [...items]
}

/** A form -> a syllabus, or its mistakes at their fields, in the words in which a file's mistakes are told. */
import { isMap, isSeq, type Node } from 'yaml'
import { readSyllabus } from '../read'
import { readSource } from '../source'
import type { Syllabus, Topic } from '../types'
import type { SyllabusForm, TopicForm } from './form'
import { writeForm } from './write-form'

/** Names and numbers from the root: `topics/0/points/2/ideas/1`; a symbol is counted: `…/where/0`. */
export type FieldPath = string

export type FormRead =
  | { readonly ok: true; readonly syllabus: Syllabus; readonly source: string }
  | {
      readonly ok: false
      /** The first mistake of each field. '' is the whole. */
      readonly mistakes: ReadonlyMap<FieldPath, string>
      /** How many mistakes there are, those of fields with several included. */
      readonly count: number
    }

export function readForm(form: SyllabusForm): FormRead {
  const source = writeForm(form)
  const read = readSyllabus(source)
  if (read.ok) return { ok: true, syllabus: read.syllabus, source }
  const tree = readSource(source)
  const starts = lineStarts(source)
  const mistakes = new Map<FieldPath, string>()
  for (const { line, column, message } of read.mistakes) {
    const at = (starts[line - 1] ?? 0) + column - 1
    const path = tree.ok ? pathAt(tree.document.contents, at) : ''
    const told = withoutLines(message)
    for (const place of [path, ...twins(form, path)])
      if (!mistakes.has(place)) mistakes.set(place, told)
  }
  return { ok: false, mistakes, count: read.mistakes.length + read.more }
}

/** The lines are those of a file that nobody sees. */
const withoutLines = (message: string): string =>
  message
    .replace(/; the first is in line \d+/, '')
    .replace(/by the topic in line \d+/, 'by another topic')
    .replace(/, in line \d+/, '')

/** A ref that two points have is wrong at both: in a form either may be the one that was just typed. */
function twins(form: SyllabusForm, path: FieldPath): FieldPath[] {
  const refs = form.topics.flatMap(({ points }, t) =>
    points.map(({ ref }, p) => ({ ref: ref.trim(), path: `topics/${t}/points/${p}/ref` })),
  )
  const ref = refs.find((one) => one.path === path)?.ref ?? ''
  return ref === '' ? [] : refs.filter((one) => one.ref === ref).map((one) => one.path)
}

/**
 * One topic of a form as far as it can be read: points with a mistake are left out, so that the others can be tried
 * and looked through meanwhile. `undefined` where nothing of it can be read.
 */
export function readTopic(form: SyllabusForm, key: string): Topic | undefined {
  const topic = form.topics.find((one) => one.key === key)
  if (!topic) return undefined
  const alone = (points: TopicForm['points']) =>
    readForm({
      ...form,
      id: '',
      title: 'x',
      note: '',
      topics: [{ ...topic, title: oneLine(topic.title) || 'x', caution: '', points }],
    })
  const read = alone(topic.points)
  if (read.ok) return read.syllabus.topics[0]
  const wrong = new Set(
    [...read.mistakes.keys()].map((path) => path.split('/').slice(0, 4).join('/')),
  )
  const rest = alone(topic.points.filter((_, i) => !wrong.has(`topics/0/points/${i}`)))
  return rest.ok ? rest.syllabus.topics[0] : undefined
}

const oneLine = (title: string): string => title.replace(/\s+/g, ' ').trim().slice(0, 200)

function lineStarts(source: string): number[] {
  const starts = [0]
  for (let at = source.indexOf('\n'); at !== -1; at = source.indexOf('\n', at + 1))
    starts.push(at + 1)
  return starts
}

/** The innermost field that an offset of the file stands in. */
function pathAt(root: Node | null, at: number): FieldPath {
  const path: string[] = []
  let node: unknown = root
  for (;;) {
    const step = stepTo(node, at, path.at(-1) === 'where')
    if (!step) return path.join('/')
    path.push(step.name)
    node = step.node
  }
}

function stepTo(
  node: unknown,
  at: number,
  counted: boolean,
): { name: string; node: unknown } | undefined {
  if (isSeq(node)) {
    const index = lastBefore(node.items, at)
    return index === -1 ? undefined : { name: String(index), node: node.items[index] }
  }
  if (!isMap(node)) return undefined
  const index = lastBefore(
    node.items.map(({ key }) => key),
    at,
  )
  const pair = node.items[index]
  if (!pair) return undefined
  return { name: counted ? String(index) : String(pair.key), node: pair.value }
}

/** The last of these nodes that begins at `at` or before it; -1 where all come later. */
const lastBefore = (nodes: readonly unknown[], at: number): number =>
  nodes.map((node) => ((node as Node | null)?.range?.[0] ?? Infinity) <= at).lastIndexOf(true)

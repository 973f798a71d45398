/** The mistakes of a file that a form was written to -> the fields of the form that they stand in. */
import { isMap, isSeq, type Node } from 'yaml'
import { readSource, type SyllabusMistake } from '../source'
import type { SyllabusForm } from './form'

/** Names and numbers from the root: `topics/0/points/2/ideas/1`; a symbol is counted: `…/where/0`. '' is the whole. */
export type FieldPath = string

/** The first mistake of each field. `source` is the form as `writeForm` writes it, read with these mistakes. */
export function mistakesByField(
  form: SyllabusForm,
  source: string,
  told: readonly SyllabusMistake[],
): Map<FieldPath, string> {
  const tree = readSource(source)
  const starts = lineStarts(source)
  const mistakes = new Map<FieldPath, string>()
  for (const { line, column, message } of told) {
    const at = (starts[line - 1] ?? 0) + column - 1
    const path = tree.ok ? pathAt(tree.document.contents, at) : ''
    for (const place of [path, ...twins(form, path)])
      if (!mistakes.has(place)) mistakes.set(place, withoutLines(message))
  }
  return mistakes
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

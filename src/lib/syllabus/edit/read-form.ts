/** A form -> a syllabus, or its mistakes at their fields, in the words in which a file's mistakes are told. */
import { isMap, isSeq, type Node } from 'yaml'
import { readSyllabus } from '../read'
import { readSource } from '../source'
import type { Syllabus } from '../types'
import type { SyllabusForm } from './form'
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
    if (!mistakes.has(path)) mistakes.set(path, message)
  }
  return { ok: false, mistakes, count: read.mistakes.length + read.more }
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

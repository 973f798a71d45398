/** A draft -> a syllabus and its file, through the same reader that every file goes through. */
import { readSyllabus } from '../read'
import { topicId } from '../slug'
import { FORMAT, type Point, type Syllabus, type Topic } from '../types'
import { writeSyllabus } from '../write'
import { problemsOf, type DraftProblem } from './problems'
import type { DraftLine, DraftTree } from './types'

export type Finished =
  | { readonly ok: true; readonly source: string; readonly syllabus: Syllabus }
  | { readonly ok: false; readonly problems: readonly DraftProblem[] }

/** All of it or nothing. Never throws. */
export function finishDraft(tree: DraftTree): Finished {
  const problems = problemsOf(tree)
  if (problems.length > 0) return { ok: false, problems }
  const source = writeSyllabus({
    format: FORMAT,
    id: topicId(tree.title),
    title: tree.title.trim(),
    ...(tree.note === undefined || tree.note.trim() === '' ? {} : { note: tree.note.trim() }),
    topics: topicsOf(tree),
  })
  const read = readSyllabus(source)
  if (read.ok) return { ok: true, source, syllabus: read.syllabus }
  return {
    ok: false,
    problems: read.mistakes.map(({ where, message }) => ({ message: `${where}: ${message}` })),
  }
}

/** Topics without points are none; points in front of the first topic are one of the syllabus's own name. */
export function topicsOf({ title, lines }: DraftTree): Topic[] {
  const topics: { head?: DraftLine; points: Point[] }[] = []
  for (const line of lines) {
    if (line.role === 'topic') topics.push({ head: line, points: [] })
    else if (line.role === 'point') {
      if (topics.length === 0) topics.push({ points: [] })
      topics.at(-1)!.points.push(pointOf(line))
    }
  }
  const taken = new Set<string>()
  return topics
    .filter(({ points }) => points.length > 0)
    .map(({ head, points }) => {
      const name = head ? `${head.ref} ${head.text}`.replace(/\s+/g, ' ').trim() : title.trim()
      const caution = head?.caution?.trim()
      return { id: ownId(name, taken), title: name, ...(caution ? { caution } : {}), points }
    })
}

const pointOf = ({ ref, text, more }: DraftLine): Point => ({
  ideas: [],
  ...more,
  ref: ref.trim(),
  text: text.trim(),
})

/** Two topics of one title get ids of their own. */
function ownId(title: string, taken: Set<string>): string {
  const first = topicId(title)
  let id = first
  for (let n = 2; taken.has(id); n += 1) id = `${first}-${n}`
  taken.add(id)
  return id
}

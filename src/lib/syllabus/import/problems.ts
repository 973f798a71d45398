/** What keeps a draft from being a syllabus. */
import { topicId } from '../slug'
import type { DraftLine, DraftTree } from './types'

export interface DraftProblem {
  /** The line it is about; undefined: the title, or the whole. */
  readonly key?: number
  readonly message: string
}

/** Every point whose ref a point before it has, in order. */
export function doubleRefs(
  lines: readonly DraftLine[],
): { readonly ref: string; readonly line: DraftLine }[] {
  const seen = new Set<string>()
  return lines.flatMap((line) => {
    if (line.role !== 'point' || line.ref === '') return []
    if (seen.has(line.ref)) return [{ ref: line.ref, line }]
    seen.add(line.ref)
    return []
  })
}

/** In the order of the draft. A draft without problems can be kept. */
export function problemsOf({ title, lines }: DraftTree): DraftProblem[] {
  const problems: DraftProblem[] = []
  if (topicId(title) === '')
    problems.push({ message: 'The syllabus needs a title with letters or figures.' })
  else if (title.trim().length > 200)
    problems.push({ message: 'The title is longer than 200 characters.' })
  if (!lines.some(({ role }) => role === 'point'))
    problems.push({ message: 'There is no point left: put at least one back.' })
  const doubles = new Set(doubleRefs(lines).map(({ line }) => line.key))
  for (const line of lines) problems.push(...problemsOfLine(line, doubles))
  return problems
}

function problemsOfLine(line: DraftLine, doubles: ReadonlySet<number>): DraftProblem[] {
  const { key, role, ref, text } = line
  if (role === 'out') return []
  const say = (message: string): DraftProblem[] => [{ key, message }]
  if (role === 'topic') {
    if (topicId(text) === '') return say('This topic needs a title with letters or figures.')
    if (`${ref} ${text}`.length > 200) return say('A topic’s title has at most 200 characters.')
    return /[\n\r]/.test(text) ? say('A topic’s title stands on one line.') : []
  }
  if (ref.trim() === '') return say('This point needs a number.')
  if (ref.length > 200) return say('A point’s number has at most 200 characters.')
  if (doubles.has(key)) return say(`The number ${ref} is taken by a point above.`)
  return text.trim() === '' ? say('This point has no text.') : []
}

/** Points -> how many of each kind there are, in words. */
import type { Point } from '../syllabus'
import { counted, listed } from './words'

export type PointKind = 'method' | 'equation' | 'value' | 'list' | 'ideas' | 'drafted'

/** What decides whether a point is full: the most particular thing that it asks for. */
export function kindOf({ steps, equation, value, any, ideas }: Point): PointKind {
  if (steps) return 'method'
  if (equation) return 'equation'
  if (value) return 'value'
  if (any !== undefined && any < ideas.length) return 'list'
  return ideas.length > 0 ? 'ideas' : 'drafted'
}

const WORDS: readonly (readonly [PointKind, (count: number) => string])[] = [
  ['ideas', (n) => `${n} with key ideas`],
  ['drafted', (n) => `${n} whose ideas are drafted from the text`],
  ['list', (n) => counted(n, 'list (any so many of them)', 'lists (any so many of them)')],
  ['equation', (n) => counted(n, 'equation')],
  ['value', (n) => counted(n, 'value')],
  ['method', (n) => counted(n, 'method in steps', 'methods in steps')],
]

/** "8 with key ideas, 2 equations and 1 method in steps". */
export function kindWords(points: readonly Point[]): string {
  const kinds = points.map(kindOf)
  const count = (kind: PointKind) => kinds.filter((one) => one === kind).length
  return listed(WORDS.flatMap(([kind, words]) => (count(kind) > 0 ? [words(count(kind))] : [])))
}

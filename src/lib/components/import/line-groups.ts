/** The lines of a draft by topic, and looked up. */
import type { DraftLine } from '$lib/syllabus/import'

/** A topic with what stands under it. */
export interface LineGroup {
  readonly key: number
  readonly head: DraftLine | undefined
  readonly lines: readonly DraftLine[]
}

export const pointsIn = ({ lines }: Pick<LineGroup, 'lines'>): number =>
  lines.filter(({ role }) => role === 'point').length

export function grouped(lines: readonly DraftLine[]): LineGroup[] {
  const made: { key: number; head: DraftLine | undefined; lines: DraftLine[] }[] = []
  for (const line of lines) {
    if (line.role === 'topic' || made.length === 0)
      made.push({ key: line.key, head: line.role === 'topic' ? line : undefined, lines: [] })
    made.at(-1)!.lines.push(line)
  }
  return made
}

/** The first that was not there before. */
export function newLine(
  before: readonly DraftLine[],
  after: readonly DraftLine[],
): DraftLine | undefined {
  const known = new Set(before.map(({ key }) => key))
  return after.find(({ key }) => !known.has(key))
}

interface Problem {
  readonly key?: number | undefined
  readonly message: string
}

/** What stands in the way of each line; under `undefined`, of the whole. */
export const byLine = (problems: readonly Problem[]): ReadonlyMap<number | undefined, string> =>
  new Map(problems.map(({ key, message }) => [key, message]))

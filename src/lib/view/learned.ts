/** A changed mark -> the wording that its point can learn from. */
import type { Outcome, Report } from '../marking/types'

export interface Wording {
  readonly text: string
  readonly credited: boolean
}

/**
 * Counted as full after all: the statement that the marker had as nearest, unless the point is said across others as well.
 * Not full after all: the statements in which the marker found its ideas, from the first to the last. Else nothing.
 */
export function wordingOf(
  page: { readonly text: string; readonly report: Report },
  ref: string,
  outcome: Outcome | null,
): Wording | undefined {
  const point = page.report.points.find((one) => one.ref === ref)
  if (!point || outcome === null) return undefined
  const found = point.ideas.flatMap(({ spans }) => spans)
  const { nearest } = point
  if (outcome === 'full') {
    if (point.outcome === 'full' || !nearest) return undefined
    if (found.some(({ start, end }) => start < nearest.start || end > nearest.end)) return undefined
    return { text: page.text.slice(nearest.start, nearest.end), credited: true }
  }
  if (point.outcome !== 'full') return undefined
  const used = page.report.statements.filter((statement) =>
    found.some(({ start, end }) => start < statement.end && end > statement.start),
  )
  const [first, last] = [used[0], used.at(-1)]
  return first && last && { text: page.text.slice(first.start, last.end), credited: false }
}

/** What the marked page says of it; the wording follows. */
export const learntSentence = ({ ref, credited }: Wording & { readonly ref: string }): string =>
  credited
    ? `From now on this wording counts for ${ref} in your checks:`
    : `From now on this wording is not enough for ${ref} in your checks:`

/** By point, in the order of the refs; of each the latest first. */
export function byPoint<T extends { readonly ref: string; readonly atMs: number }>(
  learned: readonly T[],
): { ref: string; wordings: T[] }[] {
  const refs = [...new Set(learned.map(({ ref }) => ref))]
  return refs
    .sort((a, b) => a.localeCompare(b, 'en', { numeric: true }))
    .map((ref) => ({
      ref,
      wordings: learned.filter((one) => one.ref === ref).sort((a, b) => b.atMs - a.atMs),
    }))
}

/** A changed mark -> the wording that its point can learn from. */
import type { Outcome, Report } from '../marking/types'
import type { Settings } from '../recall'

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

/** Where a mark teaches nothing by itself, it takes back what the other's mark of the same point taught. */
export const overruled = (
  taught: Wording | undefined,
  outcome: Outcome | null,
): Wording | undefined =>
  taught && outcome !== null && (outcome === 'full') !== taught.credited
    ? { text: taught.text, credited: !taught.credited }
    : undefined

interface Learnt extends Wording {
  readonly ref: string
  readonly by: 'student' | 'tutor'
  readonly pupilId?: string
}

/** Whether it counts by the settings: what a tutor taught the student goes with the tutor's marks. */
export const wordingCounts = (
  { by, pupilId }: Pick<Learnt, 'by' | 'pupilId'>,
  settings: Pick<Settings, 'learnsFromChanges' | 'tutorMarksCount'>,
): boolean =>
  settings.learnsFromChanges !== false &&
  (by === 'student' || pupilId !== undefined || settings.tutorMarksCount !== false)

/** What the page that was marked says of it; the wording follows. */
export const learntSentence = ({ ref, credited, by, pupilId }: Learnt): string => {
  const words = credited ? `counts for ${ref}` : `is not enough for ${ref}`
  if (by === 'student') return `From now on this wording ${words} in your checks:`
  return pupilId === undefined
    ? `From your tutor: from now on this wording ${words} in your checks:`
    : `From now on this wording ${words}, here and, with the file, for the pupil:`
}

/** "Accepted, from your tutor". */
export const whoseWords = ({ credited, by, pupilId }: Learnt): string =>
  `${credited ? 'Accepted' : 'Not enough'}, ${
    by === 'student' ? 'by you' : pupilId === undefined ? 'from your tutor' : 'by you, of a pupil'
  }`

interface Placed {
  readonly topicId: string
  readonly ref: string
  readonly atMs: number
}

/** By point, in the order of the topics and refs; of each the latest first. */
export function byPoint<T extends Placed>(
  learned: readonly T[],
): { key: string; ref: string; topicId: string; wordings: T[] }[] {
  const points = new Map(
    learned.map(({ topicId, ref }) => [JSON.stringify([topicId, ref]), { topicId, ref }]),
  )
  return [...points]
    .map(([key, { topicId, ref }]) => ({
      key,
      ref,
      topicId,
      wordings: learned
        .filter((one) => one.topicId === topicId && one.ref === ref)
        .sort((a, b) => b.atMs - a.atMs),
    }))
    .sort(
      (a, b) =>
        a.topicId.localeCompare(b.topicId, 'en') ||
        a.ref.localeCompare(b.ref, 'en', { numeric: true }),
    )
}

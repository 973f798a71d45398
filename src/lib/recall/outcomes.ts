/** What each point of a check came to, once everybody who may change a mark has had their say. */
import type { Outcome } from '../marking/types'
import type { Settings } from './settings'
import type { Check, Decider, MarkChange } from './types'

export interface Decided {
  readonly ref: string
  /** The outcome that stands. */
  readonly outcome: Outcome
  /** What the marker gave, whoever changed it since. */
  readonly marker: Outcome
  /** Whose outcome stands. */
  readonly by: Decider
}

/** Counts of points; the four outcomes add up to `points`. */
export interface Recall {
  readonly full: number
  readonly partial: number
  readonly missed: number
  readonly contradicted: number
  readonly points: number
}

/**
 * The check with the changes that count: where the student has set that the tutor's marks do not, these are left out.
 * Absent, the setting says that they do.
 */
export function countedCheck(check: Check, settings: Pick<Settings, 'tutorMarksCount'>): Check {
  const all = settings.tutorMarksCount !== false || check.changes.every(({ by }) => by !== 'tutor')
  return all ? check : { ...check, changes: check.changes.filter(({ by }) => by !== 'tutor') }
}

/**
 * Every point of a check in the syllabus's order. Of each decider the latest change stands, and `null` takes theirs
 * back; of the changes that stand, the latest decides. "Latest" is the order in which they were made, not their
 * times: a clock may be set back. Changes of points that were not checked are ignored.
 */
export function decidedOutcomes(check: Check): Decided[] {
  const changesOf = byRef(check.changes)
  return check.marks.map(({ ref, outcome: marker }) => {
    const changes = changesOf.get(ref)
    const standing = changes && standingChange(changes)
    return standing
      ? { ref, outcome: standing.outcome, marker, by: standing.by }
      : { ref, outcome: marker, marker, by: 'marker' }
  })
}

/** The outcome that stands for one point. Throws a RangeError for a point that the check does not have. */
export function outcomeOf(check: Check, ref: string): Outcome {
  const decided = decidedOutcomes(check).find((point) => point.ref === ref)
  if (!decided) throw new RangeError(`The check of ${check.topicTitle} has no point ${ref}.`)
  return decided.outcome
}

export function recallOf(check: Check): Recall {
  const counts = { full: 0, partial: 0, missed: 0, contradicted: 0 }
  for (const { outcome } of decidedOutcomes(check)) counts[outcome] += 1
  return { ...counts, points: check.marks.length }
}

/** Every point full. A check of no points recalls nothing, so it is not full. */
export const isFull = (recall: Recall): boolean =>
  recall.points > 0 && recall.full === recall.points

/** Share of points full, 0 to 1; partial counts as not full. 0 for a check of no points. */
export const recallShare = (recall: Recall): number =>
  recall.points === 0 ? 0 : recall.full / recall.points

function byRef(changes: readonly MarkChange[]): Map<string, MarkChange[]> {
  const groups = new Map<string, MarkChange[]>()
  for (const change of changes) {
    const group = groups.get(change.ref)
    if (group) group.push(change)
    else groups.set(change.ref, [change])
  }
  return groups
}

type Standing = MarkChange & { readonly outcome: Outcome }

function standingChange(changes: readonly MarkChange[]): Standing | undefined {
  const latestOf = new Map<MarkChange['by'], number>()
  changes.forEach((change, i) => latestOf.set(change.by, i))
  const latestFirst = [...latestOf.values()].sort((a, b) => b - a)
  return latestFirst.map((i) => changes[i]).find(stands)
}

const stands = (change: MarkChange | undefined): change is Standing =>
  change !== undefined && change.outcome !== null

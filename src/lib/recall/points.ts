/** Checks and papers -> the history of each point, for the lists that are made of points. */
import type { Outcome } from '../marking/types'
import type { Day } from './days'
import { marksOfToday, refToday } from './edited'
import type { PaperQuestion } from './papers'
import { byTime } from './by-time'
import { dayOf } from './sessions'
import type { Check } from './types'

/** One time that a point was seen. */
export interface Seen {
  readonly day: Day
  readonly outcome: Outcome
  readonly in: 'check' | 'gap' | 'paper'
}

/**
 * For each point of one topic, every time it was seen, oldest first; gap checks included. A point whose meaning was
 * edited begins anew. A mark lost on a paper
 * counts as seen and missed, and comes after the checks of its day: of two readings of one day, the stricter stands.
 */
export function pointHistories(
  checks: readonly Check[],
  papers: readonly PaperQuestion[] = [],
): Map<string, Seen[]> {
  const histories = new Map<string, Seen[]>()
  const add = (ref: string, seen: Seen) => {
    const history = histories.get(ref)
    if (history) history.push(seen)
    else histories.set(ref, [seen])
  }
  for (const check of [...checks].sort(byTime)) {
    const day = dayOf(check)
    for (const { ref, outcome } of marksOfToday(check)) add(ref, { day, outcome, in: check.kind })
  }
  for (const { day, points, edited } of papers)
    for (const { ref, lost } of points) {
      const now = refToday(edited, ref)
      if (lost && now !== null) add(now, { day, outcome: 'missed', in: 'paper' })
    }

  // Sorting is stable, so that checks of one day stay before its papers and in their order.
  for (const history of histories.values())
    history.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
  return histories
}

/** The points of one topic that are not full in the latest check that had them, in the order first seen. */
export const openGaps = (checks: readonly Check[]): string[] =>
  [...pointHistories(checks)]
    .filter(([, history]) => history.at(-1)?.outcome !== 'full')
    .map(([ref]) => ref)

/** The grid of a topic -> the points that keep being missed. */
import type { Outcome } from '../marking/types'
import type { Day } from '../recall'
import { shortDay } from './dates'
import type { Grid } from './history'
import { outcomeWords } from './sentences'
import { counted } from './words'

export interface OftenMissed {
  readonly ref: string
  /** Sessions in which it was not full, out of those that had it. */
  readonly notFull: number
  readonly sessions: number
  readonly latest: Outcome
  /** The last day on which it was full; absent where it never was. */
  readonly fullOn?: Day
}

/** Only so many of the latest sessions count: what was missed in the first weeks and is known since is no news. */
const LATEST = 8

/**
 * Points not full at least twice, and in at least half of the latest sessions that had them; the most often first, and
 * among equals the grid's order.
 */
export function oftenMissed({ days, rows }: Grid): OftenMissed[] {
  return rows
    .flatMap(({ ref, cells }) => {
      const seen = cells.flatMap((outcome, i) => (outcome ? [{ outcome, day: days[i] }] : []))
      const late = seen.slice(-LATEST)
      const latest = late.at(-1)?.outcome
      const notFull = late.filter(({ outcome }) => outcome !== 'full').length
      if (latest === undefined || notFull < 2 || notFull * 2 < late.length) return []
      const fullOn = seen.filter(({ outcome }) => outcome === 'full').at(-1)?.day
      return [
        {
          ref,
          notFull,
          sessions: late.length,
          latest,
          ...(fullOn === undefined ? {} : { fullOn }),
        },
      ]
    })
    .sort((a, b) => b.notFull - a.notFull)
}

/** "Not full in 4 of the last 5 sessions; the last time: missed. Last full on 3 March." */
export function oftenMissedWords(point: OftenMissed, today: Day): string {
  const { notFull, sessions, latest, fullOn } = point
  return (
    `Not full in ${notFull} of the last ${counted(sessions, 'session')}; ` +
    `the last time: ${outcomeWords(latest)}. ` +
    (fullOn === undefined ? 'Never full yet.' : `Last full on ${shortDay(fullOn, today)}.`)
  )
}

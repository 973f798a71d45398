/** How long a check of a topic takes: as long as the student's own checks of it took, else so much for each point. */
import type { Session } from './sessions'

export interface HowLong {
  /** Whole minutes, 1 or more. */
  readonly minutes: number
  /** What it was taken from, so that it can be said. */
  readonly from: 'past-checks' | 'points'
}

/** Of more than these the older say nothing of how long it takes today. Our own choice. */
const LATEST = 3

/**
 * The median writing time of the latest three sessions; those without a time (a history that came from elsewhere) are
 * left out. With none, `points` times `secondsPerPoint`.
 */
export function howLong(
  sessions: readonly Session[],
  points: number,
  secondsPerPoint: number,
): HowLong {
  const times = sessions
    .map(({ check }) => check.writingMs)
    .filter((ms) => ms > 0)
    .slice(-LATEST)
    .sort((a, b) => a - b)
  const middle = times[Math.floor((times.length - 1) / 2)]
  return middle === undefined
    ? { minutes: minutesOf(points * secondsPerPoint * 1000), from: 'points' }
    : { minutes: minutesOf(middle), from: 'past-checks' }
}

const minutesOf = (ms: number): number => Math.max(1, Math.round(ms / 60_000))

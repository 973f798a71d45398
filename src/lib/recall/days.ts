/** Calendar days: the only place in this room that turns instants into dates. */
import { Temporal } from 'temporal-polyfill'
import type { Day } from './day'

export type { Day }

/** The clock, as the caller reads it: milliseconds since 1970 UTC, and the IANA name of the time zone there. */
export interface Now {
  readonly nowMs: number
  readonly zone: string
}

/**
 * The calendar day on the wall at an instant in a zone. A zone that this machine does not know (renamed since, or
 * misspelt in a file) is read as UTC, so that one odd record never hides a whole history.
 */
export function dayAt(atMs: number, zone: string): Day {
  const ms = Math.floor(atMs)
  const { offsetMs } = spanAt(ms, zone)
  return new Date(ms + offsetMs).toISOString().replace(/T.*$/, '')
}

/**
 * The instant at which a clock on the wall of a zone shows `time` ('HH:MM') on a day, in milliseconds since 1970 UTC. Of an
 * hour that comes twice the first is taken; one that is left out is read as an hour later.
 */
export const instantAt = (day: Day, time: string, zone: string): number =>
  Temporal.PlainDateTime.from(`${day}T${time}`).toZonedDateTime(known(zone)).epochMilliseconds

/** Whole days from `from` to `to`; negative where `to` comes first. */
export const daysBetween = (from: Day, to: Day): number =>
  Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to)).days

export const addDays = (day: Day, days: number): Day =>
  Temporal.PlainDate.from(day).add({ days }).toString()

function known(zone: string): string {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone)
    return zone
  } catch {
    return 'UTC'
  }
}

/** A stretch of time in which a zone keeps one distance from UTC. */
interface Span {
  readonly fromMs: number
  readonly untilMs: number
  readonly offsetMs: number
}

/**
 * The stretches met so far, by zone. Asking the calendar library for each of 2,000 checks is most of the time that
 * Today takes; between two changes of the clocks the answer is a sum.
 */
const spans = new Map<string, Span[]>()

function spanAt(ms: number, zone: string): Span {
  const met = spans.get(zone) ?? []
  const span = met.find(({ fromMs, untilMs }) => fromMs <= ms && ms < untilMs)
  if (span) return span
  const found = findSpan(ms, zone)
  spans.set(zone, [...met, found])
  return found
}

function findSpan(ms: number, zone: string): Span {
  const instant = Temporal.Instant.fromEpochMilliseconds(ms)
  let at: Temporal.ZonedDateTime
  try {
    at = instant.toZonedDateTimeISO(zone)
  } catch {
    return { fromMs: -Infinity, untilMs: Infinity, offsetMs: 0 }
  }
  // "Previous" is before the instant itself: one that is a change of the clocks begins its own stretch.
  const from = at.add({ nanoseconds: 1 }).getTimeZoneTransition('previous')
  const until = at.getTimeZoneTransition('next')
  return {
    fromMs: from?.epochMilliseconds ?? -Infinity,
    untilMs: until?.epochMilliseconds ?? Infinity,
    offsetMs: Math.round(at.offsetNanoseconds / 1e6),
  }
}

/** Checks of one topic -> its sessions: one for each calendar day in the student's own time zone. */
import { byTime } from './by-time'
import { dayAt, type Day, type Now } from './days'
import { isFull, recallOf, type Recall } from './outcomes'
import type { Check } from './types'

export interface Session {
  readonly day: Day
  /** The first check of the day: the one that counts. */
  readonly check: Check
  /** The same day's other checks: practice, because the answers had just been seen. */
  readonly later: readonly Check[]
  readonly recall: Recall
  readonly full: boolean
}

/** The calendar day of a check in the zone that it was made in: it never moves later, wherever it is read. */
export const dayOf = (check: Check): Day => dayAt(check.atMs, check.zone)

/**
 * The sessions of one topic, oldest first. Gap checks are left out. A calendar day is one session however often it is
 * lived through: after a flight over the date line, or with the clock set back, its checks join the same session.
 */
export function sessionsOf(checks: readonly Check[]): Session[] {
  const days = new Map<Day, [Check, ...Check[]]>()
  for (const check of checks.filter(({ kind }) => kind === 'check').sort(byTime)) {
    const day = dayOf(check)
    const sameDay = days.get(day)
    if (sameDay) sameDay.push(check)
    else days.set(day, [check])
  }
  return [...days].map(([day, [check, ...later]]) => {
    const recall = recallOf(check)
    return { day, check, later, recall, full: isFull(recall) }
  })
}

/**
 * The time to put on a new check of a topic. It is the clock's, unless the clock was set back within a day that has
 * a check already: then the new check comes just after that day's last, so that a second try never passes for a first.
 */
export function checkTimeMs(checks: readonly Check[], { nowMs, zone }: Now): number {
  const today = dayAt(nowMs, zone)
  const sameDay = checks.filter((check) => dayOf(check) === today).map(({ atMs }) => atMs + 1)
  const afterThem = Math.max(nowMs, ...sameDay)
  return dayAt(afterThem, zone) === today ? afterThem : nowMs
}

/** Days and times in words. English, whatever the machine's language: the tool speaks one. */
import type { Day } from '../recall'

/** "Tuesday 2 March 2027". */
export const dayWords = (day: Day): string => format(noonOf(day), 'UTC', LONG)

/** "2 March" in the year of `today`, else "2 March 2026". */
export const shortDay = (day: Day, today: Day): string =>
  format(noonOf(day), 'UTC', day.slice(0, 4) === today.slice(0, 4) ? SHORT : SHORT_WITH_YEAR)

/** The same where there is little room: "2 Mar", "2 Mar 2026". */
export const tinyDay = (day: Day, today: Day): string => {
  const year = day.slice(0, 4) === today.slice(0, 4) ? {} : { year: 'numeric' as const }
  return format(noonOf(day), 'UTC', { day: 'numeric', month: 'short', ...year })
}

/** The time on the wall in the zone that it was made in: "16:40". */
export const timeWords = (atMs: number, zone: string): string => format(atMs, zone, TIME)

/** "today", "tomorrow", "yesterday", else the day, with how far off it is where that helps. */
export function dayFrom(day: Day, today: Day): string {
  const days = Math.round((noonOf(day) - noonOf(today)) / DAY_MS)
  if (days === 0) return 'today'
  if (days === 1) return 'tomorrow'
  if (days === -1) return 'yesterday'
  const when = `${format(noonOf(day), 'UTC', WEEKDAY)} ${shortDay(day, today)}`
  if (days > 1) return `${when}, in ${days} days`
  return `${when}, ${-days} days ago`
}

const DAY_MS = 86_400_000
const noonOf = (day: Day): number => Date.parse(`${day}T12:00:00Z`)

const LONG = { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' } as const
const SHORT = { day: 'numeric', month: 'long' } as const
const SHORT_WITH_YEAR = { ...SHORT, year: 'numeric' } as const
const WEEKDAY = { weekday: 'long' } as const
const TIME = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const

function format(atMs: number, zone: string, how: Intl.DateTimeFormatOptions): string {
  try {
    return new Intl.DateTimeFormat('en-GB', { ...how, timeZone: zone }).format(atMs)
  } catch {
    // A zone that this machine does not know: the recall room reads it as UTC too.
    return new Intl.DateTimeFormat('en-GB', { ...how, timeZone: 'UTC' }).format(atMs)
  }
}

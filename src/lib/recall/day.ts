/** A calendar day by itself: what every record is checked with, and no calendar library with it. */

/** A calendar day of the ISO calendar, 'YYYY-MM-DD'. */
export type Day = string

/** Whether a text is a day that exists, written 'YYYY-MM-DD'. */
export function isDay(text: string): boolean {
  // A date of a month that is too long for it is read as one of the next month (ECMA-262, 21.4.1.32).
  const ms = /^\d{4}-\d\d-\d\d$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : NaN
  return Number.isFinite(ms) && new Date(ms).toISOString().startsWith(text)
}

/** The run towards finished, in plain words: what is there, what is still needed, and from which day. */
import { runOf, type Day, type Session, type StatusReason } from '../recall'
import { shortDay } from './dates'
import { counted, listed } from './words'

/** Longer runs are told by their number and their ends. */
const MOST_DAYS_TOLD = 4

/**
 * "Full on 3 and 6 March; once more on or after the 10th and it is finished." `rule` is the student's setting, for a
 * topic that has no run yet.
 */
export function runSentence(
  sessions: readonly Session[],
  status: StatusReason,
  rule: { readonly sessionsNeeded: number; readonly daysApart: number },
  today: Day,
): string {
  const days = runOf(sessions).map(({ day }) => day)
  switch (status.rule) {
    case 'no-check':
      return `It is finished by ${ruleWords(rule)}.`
    case 'latest-not-full':
    case 'not-full-after-finished':
      return `${brokenRun(sessions, today)}It is finished by ${ruleWords(rule)}.`
    case 'latest-full':
      return `Full on ${daysWords(days, today)}; ${leftWords(status, today)} and it is finished.`
    case 'run-long-enough':
      return `Full on ${daysWords(days, today)}: that finished it.`
  }
}

/** The run that the latest session ended, if there was one. */
function brokenRun(sessions: readonly Session[], today: Day): string {
  const latest = sessions.at(-1)
  const before = runOf(sessions.slice(0, -1)).map(({ day }) => day)
  return latest && before.length > 0
    ? `Full on ${daysWords(before, today)}, then not on ${shortDay(latest.day, today)}: the run starts again. `
    : ''
}

function ruleWords({ sessionsNeeded, daysApart }: { sessionsNeeded: number; daysApart: number }) {
  if (sessionsNeeded === 1) return 'one check with every point'
  const apart =
    daysApart > sessionsNeeded - 1
      ? `, the last at least ${counted(daysApart, 'day')} after the first`
      : ''
  return `${counted(sessionsNeeded, 'full check')} in a row on different days${apart}`
}

function leftWords(
  { sessionsLeft, finishableFrom, lastDay }: Extract<StatusReason, { rule: 'latest-full' }>,
  today: Day,
): string {
  const from = onOrAfter(finishableFrom, lastDay, today)
  if (sessionsLeft === 1) return `once more on or after ${from}`
  if (sessionsLeft === 2) return `twice more, the last on or after ${from},`
  return `${sessionsLeft} times more, the last on or after ${from},`
}

/** "the 10th" in the month of the day told before it, else "10 April". */
const onOrAfter = (day: Day, before: Day, today: Day): string =>
  day.slice(0, 7) === before.slice(0, 7) ? `the ${ordinal(dateOf(day))}` : shortDay(day, today)

/** "3 and 6 March", "28 February, 3 and 6 March". */
export function daysWords(days: readonly Day[], today: Day): string {
  const [first, last] = [days[0], days.at(-1)]
  if (first === undefined || last === undefined) return 'no day'
  if (days.length > MOST_DAYS_TOLD)
    return `${days.length} days in a row, from ${shortDay(first, today)} to ${shortDay(last, today)}`
  // The month stands once, after the last day of it.
  return listed(
    days.map((day, i) =>
      day.slice(0, 7) === days[i + 1]?.slice(0, 7) ? String(dateOf(day)) : shortDay(day, today),
    ),
  )
}

const dateOf = (day: Day): number => Number(day.slice(8))

function ordinal(date: number): string {
  if (date % 10 === 1 && date !== 11) return `${date}st`
  if (date % 10 === 2 && date !== 12) return `${date}nd`
  if (date % 10 === 3 && date !== 13) return `${date}rd`
  return `${date}th`
}

/** Sessions and an exam day -> the day on which a topic should be checked next, and which rule gave it. */
import { addDays, daysBetween, type Day } from './days'
import type { Session } from './sessions'
import { runOf } from './status'

/**
 * The best gap as a share of the days left, at the two ends of what was measured. Between them it lies on a straight
 * line in the logarithm of the days; outside them it stays where it ends.
 * Source: Cepeda, Vul, Rohrer, Wixted and Pashler (2008), Psychological Science 19(11), 1095–1102: the best gap fell
 * from about 20–40 % of a one-week delay to about 5–10 % of a one-year delay; the ends here are the middles of these.
 */
export const SHARE_AT_A_WEEK = { days: 7, share: 0.3 } as const
export const SHARE_AT_A_YEAR = { days: 365, share: 0.075 } as const

/** Days to the next check where no exam is set, by the length of the run of full sessions. Common practice. */
export const GAPS_BY_RUN = [1, 3, 7, 16, 35] as const

/** Why a topic has its next date, as data: the room `view` makes the sentence. `from` is the latest session's day. */
export type NextReason =
  | { readonly rule: 'not-checked' }
  | { readonly rule: 'after-gaps'; readonly from: Day; readonly gapDays: 1 }
  | {
      readonly rule: 'share-of-days-left'
      readonly from: Day
      readonly gapDays: number
      readonly examDay: Day
      readonly daysLeft: number
      /** 0 to 1, before rounding to whole days. */
      readonly share: number
    }
  | { readonly rule: 'by-run'; readonly from: Day; readonly gapDays: number; readonly run: number }
  | { readonly rule: 'no-day-before-exam'; readonly from: Day; readonly examDay: Day }

export interface NextDate {
  /** `null` where there is none: nothing checked yet, or no day left before the exam. */
  readonly day: Day | null
  /** The day of a gap check of what was missed; `null` after a full session. */
  readonly gapsOn: Day | null
  readonly why: NextReason
}

/** The share of the days left that makes the best gap, 0.3 to 0.075. `daysLeft` must be above 0. */
export function gapShare(daysLeft: number): number {
  const week = SHARE_AT_A_WEEK
  const year = SHARE_AT_A_YEAR
  const days = Math.min(Math.max(daysLeft, week.days), year.days)
  const along = Math.log(days / week.days) / Math.log(year.days / week.days)
  return week.share + along * (year.share - week.share)
}

/**
 * Days from a session to the topic's next one. `run`: full sessions in a row with it, 0 where it had gaps. `daysLeft`: days
 * from it to the exam; absent: none is set. `undefined`: no day is left between.
 */
export function gapDaysAfter(run: number, daysLeft?: number): number | undefined {
  if (daysLeft !== undefined && daysLeft <= 1) return undefined
  if (run === 0) return 1
  return (daysLeft === undefined ? gapByRun(run) : gapBefore(daysLeft)).gapDays
}

/**
 * The next date after the latest session. `examDay` is the nearest exam's, if any; one that was over before the
 * latest session is as good as none. The date is never on or after the exam's day.
 */
export function nextDate(sessions: readonly Session[], examDay?: Day): NextDate {
  const latest = sessions.at(-1)
  if (!latest) return { day: null, gapsOn: null, why: { rule: 'not-checked' } }

  const { day: from, full } = latest
  const gapsOn = full ? null : from
  const exam = examDay !== undefined && examDay >= from ? examDay : undefined
  const daysLeft = exam === undefined ? Infinity : daysBetween(from, exam)
  if (exam !== undefined && daysLeft <= 1)
    return { day: null, gapsOn, why: { rule: 'no-day-before-exam', from, examDay: exam } }

  const why: NextReason & { gapDays: number } = !full
    ? { rule: 'after-gaps', from, gapDays: 1 }
    : exam !== undefined
      ? { rule: 'share-of-days-left', from, examDay: exam, daysLeft, ...gapBefore(daysLeft) }
      : { rule: 'by-run', from, ...gapByRun(runOf(sessions).length) }
  return { day: addDays(from, why.gapDays), gapsOn, why }
}

/** At least a day and before the exam; `daysLeft` is 2 or more. */
function gapBefore(daysLeft: number): { share: number; gapDays: number } {
  const share = gapShare(daysLeft)
  return { share, gapDays: Math.min(Math.max(1, Math.round(share * daysLeft)), daysLeft - 1) }
}

const gapByRun = (run: number): { run: number; gapDays: number } => ({
  run,
  gapDays: GAPS_BY_RUN[Math.min(run, GAPS_BY_RUN.length) - 1] ?? 1,
})

/**
 * Where a topic goes from here, as if every coming session were full. Days are counted from today, which is 0: planning
 * tries many dates, and sums of whole numbers are quick.
 */
import { daysBetween, type Day } from './days'
import { gapDaysAfter } from './next-date'
import type { TopicPlan } from './plan'
import type { FinishRule } from './settings'
import { runOf } from './status'

/** A topic on its way: its latest session, and the run that it ends. */
export interface Course {
  /** The day of the latest session; absent: none yet. */
  readonly at?: number
  /** Full sessions in a row, and the day of the first of them. */
  readonly run: number
  readonly firstAt: number
  /** The day of its exam; absent: none is set. */
  readonly exam?: number
  /** Sessions so far. */
  readonly sessions: number
}

export function courseOf({ sessions, exam }: TopicPlan, today: Day): Course {
  const latest = sessions.at(-1)
  const run = runOf(sessions)
  return {
    ...(latest ? { at: daysBetween(today, latest.day) } : {}),
    run: run.length,
    firstAt: run[0] ? daysBetween(today, run[0].day) : 0,
    ...(exam ? { exam: daysBetween(today, exam.day) } : {}),
    sessions: sessions.length,
  }
}

/** The day on which the rules ask for the next session, today at the earliest; `undefined`: none is left before the exam. */
export function dueOf({ at, run, exam }: Course): number | undefined {
  if (at === undefined) return exam === undefined || exam > 0 ? 0 : undefined
  const gap = gapDaysAfter(run, exam === undefined ? undefined : exam - at)
  if (gap === undefined) return undefined
  const due = Math.max(0, at + gap)
  return exam === undefined || due < exam ? due : undefined
}

/** The course after a full session on a day. */
export const afterFull = (course: Course, day: number): Course => ({
  ...course,
  at: day,
  run: course.run + 1,
  firstAt: course.run === 0 ? day : course.firstAt,
  sessions: course.sessions + 1,
})

/** Whether its run finishes the topic: the rule of `status.ts`. */
export const isFinished = (
  { at, run, firstAt }: Course,
  { sessionsNeeded, daysApart }: FinishRule,
): boolean => at !== undefined && run >= sessionsNeeded && at - firstAt >= daysApart

/** The days that the rules give, one after the other, before the day `until`; as many as there are, whatever else falls on them. */
export function forecast(course: Course, until: number): number[] {
  const days: number[] = []
  for (let now = course; ;) {
    const due = dueOf(now)
    if (due === undefined || due >= until) return days
    days.push(due)
    now = afterFull(now, due)
  }
}

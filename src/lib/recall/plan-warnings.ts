/** What the days left cannot hold, and what would. */
import { addDays, type Day } from './days'
import { afterFull, dueOf, isFinished, type Course } from './forecast'
import { level, type Levelled, type LevelTopic, type Room } from './level'
import type { FinishRule, TopicPlace } from './settings'

/** Days planned of a topic without an exam, today included. Our own choice: six weeks. */
export const PLANNED_WITHOUT_EXAM = 42

/** The most that can be set, and the steps in which more is proposed. */
const MOST_MINUTES = 600
const STEP = 5

/** What does not fit, as data: the room `view` makes the sentence. Topics are hardest first. */
export type PlanWarning<T extends TopicPlace = TopicPlace> =
  | {
      readonly rule: 'too-little-time'
      readonly examDay: Day
      readonly topics: readonly T[]
      /** Of sessions that no day before the exam has room for. */
      readonly minutesMissing: number
      /** Minutes a day with which all of it fits; `null`: not even with ten hours. */
      readonly minutesADayNeeded: number | null
      /** Of the topics those that get no check at all. */
      readonly unchecked: readonly T[]
    }
  /** They cannot be finished before the exam even with all day: the days themselves are too few. */
  | { readonly rule: 'too-few-days'; readonly examDay: Day; readonly topics: readonly T[] }
  /** No check of them is left before the exam. */
  | { readonly rule: 'no-day-left'; readonly examDay: Day; readonly topics: readonly T[] }
  | { readonly rule: 'longer-than-a-day'; readonly topics: readonly T[]; readonly minutes: number }
  /** Without an exam: sessions that the planned days have no room for come later. */
  | { readonly rule: 'later-than-planned'; readonly topics: readonly T[]; readonly until: Day }

export interface Planned<T extends TopicPlace> {
  /** In the order of `topics`, which is hardest first. */
  readonly named: readonly T[]
  readonly topics: readonly LevelTopic[]
  readonly levelled: Levelled
  readonly room: Room
  readonly rule: FinishRule
  readonly today: Day
}

/** By exam, the nearest first; then what concerns no exam. */
export function warningsOf<T extends TopicPlace>(planned: Planned<T>): PlanWarning<T>[] {
  const { topics, levelled, room, rule, today } = planned
  const all = topics.map((_, i) => i)
  const named = (which: readonly number[]) => which.map((i) => planned.named[i]!)
  const lacks = (i: number) => levelled.missing[i]! > 0
  const none = (i: number) => dueOf(topics[i]!.course) === undefined
  const examDays = [...new Set(topics.flatMap(({ course }) => course.exam ?? []))].sort(
    (a, b) => a - b,
  )
  const needed = all.some((i) => lacks(i) && topics[i]!.course.exam !== undefined)
    ? minutesThatHold(topics, room, rule)
    : null

  const ofExams = examDays.flatMap((exam): PlanWarning<T>[] => {
    const here = all.filter((i) => topics[i]!.course.exam === exam)
    const examDay = addDays(today, exam)
    const short = here.filter(lacks)
    const late = here.filter((i) => !none(i) && !canFinish(topics[i]!, rule))
    const minutesMissing = short.reduce(
      (sum, i) => sum + levelled.missing[i]! * topics[i]!.minutes,
      0,
    )
    return [
      short.length > 0 && {
        rule: 'too-little-time' as const,
        examDay,
        topics: named(short),
        minutesMissing,
        minutesADayNeeded: needed,
        unchecked: named(short.filter((i) => levelled.nothing[i])),
      },
      late.length > 0 && { rule: 'too-few-days' as const, examDay, topics: named(late) },
      here.some(none) && {
        rule: 'no-day-left' as const,
        examDay,
        topics: named(here.filter(none)),
      },
    ].filter((warning) => warning !== false)
  })
  const long = all.filter((i) => topics[i]!.minutes > room.minutesADay)
  const later = all.filter((i) => lacks(i) && topics[i]!.course.exam === undefined)
  return [
    ...ofExams,
    ...(long.length > 0
      ? [
          {
            rule: 'longer-than-a-day' as const,
            topics: named(long),
            minutes: Math.max(...long.map((i) => topics[i]!.minutes)),
          },
        ]
      : []),
    ...(later.length > 0
      ? [
          {
            rule: 'later-than-planned' as const,
            topics: named(later),
            until: addDays(today, PLANNED_WITHOUT_EXAM - 1),
          },
        ]
      : []),
  ]
}

/** Whether the days before its exam are enough to finish it, with all the time in the world. */
function canFinish({ course, before }: LevelTopic, rule: FinishRule): boolean {
  let now: Course = course
  for (let due = dueOf(now); due !== undefined && due < before; due = dueOf(now)) {
    if (isFinished(now, rule)) return true
    now = afterFull(now, due)
  }
  return isFinished(now, rule)
}

/** The fewest minutes a day, in steps of five, with which no topic that has an exam lacks a session. */
function minutesThatHold(
  topics: readonly LevelTopic[],
  room: Room,
  rule: FinishRule,
): number | null {
  const holds = (minutesADay: number) =>
    level(topics, { ...room, minutesADay }, rule).missing.every(
      (sessions, i) => sessions === 0 || topics[i]!.course.exam === undefined,
    )
  let low = Math.floor(room.minutesADay / STEP)
  let high = MOST_MINUTES / STEP
  if (!holds(high * STEP)) return null
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (holds(middle * STEP)) high = middle
    else low = middle
  }
  return high * STEP
}

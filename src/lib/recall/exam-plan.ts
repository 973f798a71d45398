/** All topics -> the days to the exams, levelled to the minutes a day, with what the days left cannot hold. */
import { addDays, dayAt, type Day, type Now } from './days'
import type { FirstTopic } from './first'
import { courseOf } from './forecast'
import { level, type Levelled, type LevelTopic, type Room } from './level'
import { PLANNED_WITHOUT_EXAM, warningsOf, type PlanWarning } from './plan-warnings'
import { MINUTES_A_DAY, type Settings, type TopicPlace } from './settings'

export interface PlanQuestion<T extends TopicPlace> {
  /** Hardest first, as `whatFirst` gives them. */
  readonly plans: readonly FirstTopic<T>[]
  /** Minutes of one check, whole, 1 or more. */
  readonly minutesOf: (plan: FirstTopic<T>) => number
  readonly settings: Settings
  readonly now: Now
}

export interface PlannedCheck<T extends TopicPlace = TopicPlace> {
  readonly topic: T
  readonly day: Day
  /** The day that the rules gave; another than `day` where that one was full. */
  readonly due: Day
  readonly minutes: number
  /** Which session of the topic it is, from 1, those already done counted. */
  readonly session: number
  /** Whether finishing the topic needs it, or it keeps a finished one. */
  readonly needed: boolean
}

export interface PlannedDay<T extends TopicPlace = TopicPlace> {
  readonly day: Day
  /** Hardest first. */
  readonly checks: readonly PlannedCheck<T>[]
  readonly minutes: number
}

export interface ExamPlan<T extends TopicPlace = TopicPlace> {
  readonly today: Day
  /** The last day that is planned: the one before the last exam, or the end of six weeks. */
  readonly until: Day
  readonly minutesADay: number
  /** Minutes of the checks already made today: today holds so many fewer. */
  readonly usedToday: number
  /** In order; days with nothing are left out. */
  readonly days: readonly PlannedDay<T>[]
  readonly warnings: readonly PlanWarning<T>[]
}

/**
 * Every coming session is taken to be full; dates move when one is not. No session falls on or after its topic's exam. A day
 * holds more than `minutesADay` only where one check alone is longer, and then a warning says so.
 */
export function planToExam<T extends TopicPlace>(question: PlanQuestion<T>): ExamPlan<T> {
  const { plans, minutesOf, settings, now } = question
  const today = dayAt(now.nowMs, now.zone)
  const minutesADay = settings.minutesADay ?? MINUTES_A_DAY
  const topics = plans.map((plan): LevelTopic => {
    const course = courseOf(plan, today)
    return { course, minutes: minutesOf(plan), before: course.exam ?? PLANNED_WITHOUT_EXAM }
  })
  const usedToday = plans
    .filter(({ sessions }) => sessions.at(-1)?.day === today)
    .reduce((sum, plan) => sum + minutesOf(plan), 0)
  const room: Room = { minutesADay, usedToday }
  const levelled = level(topics, room, settings)
  return {
    today,
    until: addDays(today, Math.max(0, ...topics.map(({ before }) => before - 1))),
    minutesADay,
    usedToday,
    days: daysOf(plans, topics, levelled, today),
    warnings: warningsOf({
      named: plans.map(({ topic }) => topic),
      topics,
      levelled,
      room,
      rule: settings,
      today,
    }),
  }
}

function daysOf<T extends TopicPlace>(
  plans: readonly FirstTopic<T>[],
  topics: readonly LevelTopic[],
  { placed }: Levelled,
  today: Day,
): PlannedDay<T>[] {
  const byDay = new Map<number, PlannedCheck<T>[]>()
  const inOrder = [...placed].sort((a, b) => a.day - b.day || a.topic - b.topic)
  for (const { topic, day, due, session, needed } of inOrder) {
    const checks = byDay.get(day) ?? []
    byDay.set(day, checks)
    checks.push({
      topic: plans[topic]!.topic,
      day: addDays(today, day),
      due: addDays(today, due),
      minutes: topics[topic]!.minutes,
      session,
      needed,
    })
  }
  return [...byDay].map(([day, checks]) => ({
    day: addDays(today, day),
    checks,
    minutes: checks.reduce((sum, { minutes }) => sum + minutes, 0),
  }))
}

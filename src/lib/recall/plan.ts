/** One topic and its history -> where it stands and when it comes next, each with its reason. */
import type { Day } from './days'
import { nextDate, type NextDate } from './next-date'
import { countedCheck } from './outcomes'
import { openGaps } from './points'
import { sessionsOf, type Session } from './sessions'
import {
  nextExam,
  ratingOf,
  type Exam,
  type Rating,
  type Settings,
  type TopicPlace,
} from './settings'
import { explainStatus, type StatusReason } from './status'
import type { Check } from './types'

export interface TopicPlan<T extends TopicPlace = TopicPlace> {
  readonly topic: T
  readonly sessions: readonly Session[]
  readonly status: StatusReason
  readonly next: NextDate
  /** Points to write again today, after a session with gaps; empty on other days. */
  readonly gapsToday: readonly string[]
  readonly exam: Exam | undefined
  readonly rating: Rating | undefined
}

/** `allChecks` are the topic's own, gap checks included, in any order. */
export function planTopic<T extends TopicPlace>(
  topic: T,
  allChecks: readonly Check[],
  settings: Settings,
  today: Day,
): TopicPlan<T> {
  const checks = allChecks.map((check) => countedCheck(check, settings))
  const sessions = sessionsOf(checks)
  const exam = nextExam(settings, topic, today)
  const next = nextDate(sessions, exam?.day)
  return {
    topic,
    sessions,
    status: explainStatus(sessions, settings),
    next,
    gapsToday: next.gapsOn === today ? openGaps(checks) : [],
    exam,
    rating: ratingOf(settings, topic),
  }
}

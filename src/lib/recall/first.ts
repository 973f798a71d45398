/** All topics -> the order to do them in, hardest first (common practice), with the reason beside each. */
import { dayAt, daysBetween, type Day, type Now } from './days'
import { recallShare } from './outcomes'
import { planTopic, type TopicPlan } from './plan'
import type { Rating, Settings, TopicPlace } from './settings'
import type { Check } from './types'

/** Which part of the list a topic is in, as data: the room `view` makes the sentence. */
export type PartReason =
  | { readonly rule: 'overdue'; readonly day: Day; readonly days: number }
  | { readonly rule: 'due'; readonly day: Day }
  | { readonly rule: 'never-checked' }
  | { readonly rule: 'later'; readonly day: Day; readonly days: number }
  | { readonly rule: 'no-day-left'; readonly examDay: Day }

/** What its place inside the part was weighed by. */
export type WeighedReason =
  | { readonly rule: 'recall'; readonly full: number; readonly points: number }
  | { readonly rule: 'rating'; readonly rating: Rating }
  | { readonly rule: 'exam'; readonly day: Day; readonly days: number }

export interface FirstTopic<T extends TopicPlace = TopicPlace> extends TopicPlan<T> {
  readonly part: PartReason
  /** In the order in which they were weighed. */
  readonly weighed: readonly WeighedReason[]
}

/**
 * Every topic, the one to do first at the front: due or overdue, then never checked, then those not yet due by their
 * date. Inside that, lowest recall, then the student's rating (unrated counts as middling), then the nearer exam,
 * then the order of `topics`, which is the syllabus's. `checks` may hold other topics' and come in any order.
 */
export function whatFirst<T extends TopicPlace>(
  topics: readonly T[],
  checks: readonly Check[],
  settings: Settings,
  now: Now,
): FirstTopic<T>[] {
  const today = dayAt(now.nowMs, now.zone)
  const checksOf = byTopic(checks)
  return topics
    .map((topic) => planTopic(topic, checksOf.get(placeKey(topic)) ?? [], settings, today))
    .map((plan) => ({ ...plan, part: partOf(plan, today), weighed: weighedBy(plan, today) }))
    .sort(hardestFirst)
}

const placeKey = ({ syllabusId, topicId }: TopicPlace) => JSON.stringify([syllabusId, topicId])

/** The checks of each topic, by the JSON text of its two ids. */
function byTopic(checks: readonly Check[]): Map<string, Check[]> {
  const groups = new Map<string, Check[]>()
  for (const check of checks) {
    const group = groups.get(placeKey(check))
    if (group) group.push(check)
    else groups.set(placeKey(check), [check])
  }
  return groups
}

function weighedBy(plan: TopicPlan, today: Day): WeighedReason[] {
  const reasons: WeighedReason[] = []
  const recall = plan.sessions.at(-1)?.recall
  if (recall) reasons.push({ rule: 'recall', full: recall.full, points: recall.points })
  if (plan.rating) reasons.push({ rule: 'rating', rating: plan.rating })
  if (plan.exam)
    reasons.push({ rule: 'exam', day: plan.exam.day, days: daysBetween(today, plan.exam.day) })
  return reasons
}

function partOf({ next }: TopicPlan, today: Day): PartReason {
  if (next.why.rule === 'no-day-before-exam')
    return { rule: 'no-day-left', examDay: next.why.examDay }
  if (next.day === null) return { rule: 'never-checked' }
  const days = daysBetween(today, next.day)
  if (days === 0) return { rule: 'due', day: next.day }
  return days < 0
    ? { rule: 'overdue', day: next.day, days: -days }
    : { rule: 'later', day: next.day, days }
}

const PART = { overdue: 0, due: 0, 'never-checked': 1, later: 2, 'no-day-left': 3 } as const
const RATING = { hard: 0, middling: 1, easy: 2 } as const
const NO_EXAM = '9999-12-31'

/** Comparison for sorting; equal topics keep the syllabus's order, because sorting is stable. */
function hardestFirst(a: FirstTopic, b: FirstTopic): number {
  const [x, y] = [weights(a), weights(b)]
  const i = x.findIndex((weight, at) => weight !== y[at])
  return i === -1 ? 0 : (x[i] ?? 0) < (y[i] ?? 0) ? -1 : 1
}

function weights(topic: FirstTopic): (number | string)[] {
  const recall = topic.sessions.at(-1)?.recall
  return [
    PART[topic.part.rule],
    topic.part.rule === 'later' ? topic.part.days : 0,
    recall ? recallShare(recall) : 0,
    RATING[topic.rating ?? 'middling'],
    topic.exam?.day ?? NO_EXAM,
  ]
}

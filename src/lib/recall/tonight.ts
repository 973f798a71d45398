/** The night before: the points of tomorrow's exam to write once more, in the minutes that are left. */
import type { Outcome } from '../marking/types'
import { addDays, dayAt, daysBetween, type Day, type Now } from './days'
import type { PaperQuestion } from './papers'
import { pointHistories, type Seen } from './points'
import { covers, type Settings, type TopicPlace } from './settings'
import type { Check } from './types'

/** Why a point is on the list, as data: the room `view` makes the sentence. */
export type TonightReason =
  | {
      readonly rule: 'not-full'
      readonly outcome: Outcome
      readonly day: Day
      readonly in: Seen['in']
    }
  | { readonly rule: 'full-once-since'; readonly missedOn: Day; readonly fullOn: Day }
  | { readonly rule: 'never-seen' }
  | { readonly rule: 'longest-unseen'; readonly day: Day; readonly days: number }

export interface TonightPoint extends TopicPlace {
  readonly ref: string
  readonly why: TonightReason
}

export interface Tonight {
  readonly points: readonly TonightPoint[]
  /** How many points of the exam the minutes have no room for. */
  readonly leftOut: number
}

export interface TonightQuestion {
  /** The topics to choose from in the syllabus's order, with the refs of all their points. */
  readonly topics: readonly (TopicPlace & { readonly refs: readonly string[] })[]
  readonly checks: readonly Check[]
  readonly papers?: readonly PaperQuestion[]
  readonly minutes: number
  readonly secondsPerPoint: number
  readonly now: Now
}

/** The topics that an exam asks tomorrow, in the order given. */
export function topicsOfTomorrow<T extends TopicPlace>(
  topics: readonly T[],
  settings: Settings,
  { nowMs, zone }: Now,
): T[] {
  const tomorrow = addDays(dayAt(nowMs, zone), 1)
  const exams = settings.exams.filter(({ day }) => day === tomorrow)
  return topics.filter((topic) => exams.some((exam) => covers(exam, topic)))
}

/**
 * Every point not full when last seen (missed and contradicted before part said), then those full only once since
 * they were last not full, then the rest; inside each, the longest unseen first, then the syllabus's order. As many
 * as the minutes hold, and at least one where there are any minutes.
 */
export function tonight(question: TonightQuestion): Tonight {
  const today = dayAt(question.now.nowMs, question.now.zone)
  const all = question.topics.flatMap((topic) => pointsOf(topic, question, today))
  all.sort((a, b) => group(a.why) - group(b.why) || compareDays(lastSeen(a.why), lastSeen(b.why)))
  const room = Math.floor((question.minutes * 60) / question.secondsPerPoint)
  const points = all.slice(0, question.minutes > 0 ? Math.max(1, room) : 0)
  return { points, leftOut: all.length - points.length }
}

function pointsOf(
  topic: TonightQuestion['topics'][number],
  { checks, papers = [] }: TonightQuestion,
  today: Day,
): TonightPoint[] {
  const { syllabusId, topicId, refs } = topic
  const here = (record: TopicPlace) =>
    record.syllabusId === syllabusId && record.topicId === topicId
  const histories = pointHistories(checks.filter(here), papers.filter(here))
  return refs.map((ref) => ({
    syllabusId,
    topicId,
    ref,
    why: why(histories.get(ref) ?? [], today),
  }))
}

function why(history: readonly Seen[], today: Day): TonightReason {
  const latest = history.at(-1)
  if (!latest) return { rule: 'never-seen' }
  const { day, outcome } = latest
  if (outcome !== 'full') return { rule: 'not-full', outcome, day, in: latest.in }
  const lastGap = history.map((seen) => seen.outcome !== 'full').lastIndexOf(true)
  const gap = history[lastGap]
  if (gap && lastGap === history.length - 2)
    return { rule: 'full-once-since', missedOn: gap.day, fullOn: day }
  return { rule: 'longest-unseen', day, days: daysBetween(day, today) }
}

function group(reason: TonightReason): number {
  switch (reason.rule) {
    case 'not-full':
      return reason.outcome === 'partial' ? 1 : 0
    case 'full-once-since':
      return 2
    case 'never-seen':
    case 'longest-unseen':
      return 3
  }
}

/** Never seen sorts before every day. */
function lastSeen(reason: TonightReason): Day {
  if (reason.rule === 'never-seen') return ''
  return reason.rule === 'full-once-since' ? reason.fullOn : reason.day
}

const compareDays = (a: Day, b: Day): number => (a < b ? -1 : a > b ? 1 : 0)

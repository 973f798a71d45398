/** All topics of a syllabus -> a map by status, its share finished, and the rows of its list. */
import type { FirstTopic, Status, TopicPlace } from '../recall'
import { recallShare } from '../recall'
import { nextSentence, recallWords, STATUS_WORDS } from './sentences'
import { counted } from './words'

/** In the order in which they are told: what is done first. */
export const STATUSES: readonly Status[] = ['finished', 'full', 'reopened', 'gaps', 'not checked']

export interface MapTopic<T extends TopicPlace = TopicPlace> {
  /** Its place in the syllabus, from 1. */
  readonly number: number
  readonly title: string
  readonly plan: FirstTopic<T>
  readonly status: Status
  /** Of the latest session, 0 to 1; 0 where there is none. */
  readonly share: number
  /** "17 of 24 points full"; the number of its points where there is no check. */
  readonly recall: string
  /** "" where there is no check. */
  readonly next: string
}

/** In the syllabus's order. `plans` in any order, `titles` and points in the syllabus's. */
export function mapOf<T extends TopicPlace>(
  topics: readonly { readonly id: string; readonly title: string; readonly points: number }[],
  plans: readonly FirstTopic<T>[],
  today: string,
): MapTopic<T>[] {
  const planOf = new Map(plans.map((plan) => [plan.topic.topicId, plan]))
  return topics.flatMap(({ id, title, points }, i) => {
    const plan = planOf.get(id)
    if (!plan) return []
    const recall = plan.sessions.at(-1)?.recall
    return [
      {
        number: i + 1,
        title,
        plan,
        status: plan.status.status,
        share: recall ? recallShare(recall) : 0,
        recall: recall ? `${recallWords(recall)} full` : counted(points, 'point'),
        next: recall ? nextSentence(plan.next, today) : '',
      },
    ]
  })
}

/** What a screen reader hears of one topic of the map. */
export const mapWords = ({ number, title, status, recall }: MapTopic): string =>
  `${number}. ${title}: ${STATUS_WORDS[status].toLowerCase()}, ${recall}`

/** How many topics have each status; those that none has are left out. */
export const statusCounts = (topics: readonly MapTopic[]) =>
  STATUSES.map((status) => ({
    status,
    count: topics.filter((topic) => topic.status === status).length,
  })).filter(({ count }) => count > 0)

/** "3 of 14 topics are finished: 21 %." */
export function finishedSentence(topics: readonly MapTopic[]): string {
  const finished = topics.filter(({ status }) => status === 'finished').length
  if (topics.length === 0) return 'It has no topics yet.'
  if (finished === topics.length)
    return topics.length === 1
      ? 'Its one topic is finished.'
      : `All ${finished} topics are finished.`
  if (finished === 0) return `None of its ${counted(topics.length, 'topic')} is finished yet.`
  // Rounded down: a hundred per cent is said of all only.
  const share = Math.floor((finished / topics.length) * 100)
  return `${finished} of ${counted(topics.length, 'topic')} ${finished === 1 ? 'is' : 'are'} finished: ${share} %.`
}

export const SORTS = {
  syllabus: 'the syllabus’s order',
  first: 'what to do first',
  recall: 'lowest recall',
  next: 'next date',
  title: 'title',
} as const
export type Sort = keyof typeof SORTS

export interface Wanted {
  readonly status: Status | 'all'
  /** Letters of the title; capitals do not matter. */
  readonly text: string
  readonly sort: Sort
}

/** The topics asked for, in the order asked for; equal ones keep the syllabus's order. `first` as `whatFirst` has them. */
export function chosen<T extends MapTopic>(
  topics: readonly T[],
  { status, text, sort }: Wanted,
  first: readonly FirstTopic[],
): T[] {
  const letters = text.trim().toLowerCase()
  const place = new Map(first.map(({ topic }, i) => [topic.topicId, i]))
  const rank = (topic: T): number | string => {
    switch (sort) {
      case 'syllabus':
        return topic.number
      case 'first':
        return place.get(topic.plan.topic.topicId) ?? topics.length
      case 'recall':
        return topic.share
      case 'next':
        return topic.plan.next.day ?? '9999-12-31'
      case 'title':
        return topic.title.toLowerCase()
    }
  }
  return topics
    .filter((topic) => status === 'all' || topic.status === status)
    .filter((topic) => topic.title.toLowerCase().includes(letters))
    .map((topic) => ({ topic, key: rank(topic) }))
    .sort((a, b) => compare(a.key, b.key))
    .map(({ topic }) => topic)
}

const compare = (a: number | string, b: number | string): number =>
  typeof a === 'string' && typeof b === 'string'
    ? a.localeCompare(b, 'en')
    : a < b
      ? -1
      : a > b
        ? 1
        : 0

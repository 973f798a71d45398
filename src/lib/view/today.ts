/** The front page: what to do first and why, and where every topic stands. */
import type { FirstTopic, Recall, TopicPlan, TopicPlace } from '../recall'
import { dayFrom } from './dates'
import { nextSentence, recallWords, STATUS_WORDS } from './sentences'
import { minutesWords } from './how-long'
import { counted, opening } from './words'

/** Why a topic comes first, in one or two sentences; "" never. */
export const firstReason = (plan: FirstTopic, today: string): string =>
  reasonFrom(partSentence(plan.part, today), plan)

/** Why a topic stands where it stands in a list. */
export const rowReason = (plan: FirstTopic, today: string): string =>
  reasonFrom(
    plan.part.rule === 'later'
      ? `${opening(dayFrom(plan.part.day, today))}.`
      : partSentence(plan.part, today),
    plan,
  )

function reasonFrom(where: string, { part, weighed, status }: FirstTopic): string {
  const recall = weighed.find((reason) => reason.rule === 'recall')
  const rating = weighed.find((reason) => reason.rule === 'rating')
  const exam = weighed.find((reason) => reason.rule === 'exam')
  const last =
    recall &&
    (status.status === 'reopened'
      ? `It was finished once; the last check had ${recallWords(recall)} full.`
      : `The last check had ${recallWords(recall)} full.`)
  return [
    where,
    last,
    rating && `You find it ${rating.rating}.`,
    exam && part.rule !== 'no-day-left' && examSentence(exam.days),
  ]
    .filter((sentence) => sentence !== undefined && sentence !== false)
    .join(' ')
}

function partSentence(part: FirstTopic['part'], today: string): string {
  switch (part.rule) {
    case 'overdue':
      return part.days === 1 ? 'Due since yesterday.' : `Due for ${counted(part.days, 'day')}.`
    case 'due':
      return 'Due today.'
    case 'never-checked':
      return 'Not checked yet.'
    case 'later':
      return `Nothing is due today. The next is this, ${dayFrom(part.day, today)}.`
    case 'no-day-left':
      return part.examDay === today
        ? 'The exam is today.'
        : `The exam is ${dayFrom(part.examDay, today)}: no day is left for a check.`
  }
}

const examSentence = (days: number): string =>
  days === 0
    ? 'The exam is today.'
    : days === 1
      ? 'The exam is tomorrow.'
      : `The exam is in ${days} days.`

/** How a topic stands, for one row of a list. */
export interface Standing {
  readonly status: string
  /** "17 of 24 points", of the latest session; absent where there is none. */
  readonly latest?: string
  readonly next: string
}

export function standingRow({ sessions, status, next }: TopicPlan, today: string): Standing {
  const recall: Recall | undefined = sessions.at(-1)?.recall
  return {
    status: STATUS_WORDS[status.status],
    ...(recall ? { latest: recallWords(recall) } : {}),
    next: recall ? opening(nextSentence(next, today)) : '',
  }
}

/** The topics of somebody's day, hardest first in each part. */
export interface TodayParts<T extends TopicPlace> {
  /** What to do now: due, or else not checked yet; absent where there is neither. */
  readonly first: FirstTopic<T> | undefined
  /** Due or overdue besides. */
  readonly due: readonly FirstTopic<T>[]
  /** Not checked yet, besides. */
  readonly fresh: readonly FirstTopic<T>[]
  /** Not due yet, by date. */
  readonly later: readonly FirstTopic<T>[]
  /** Their exam comes before another check can. */
  readonly noDayLeft: readonly FirstTopic<T>[]
  /** There are topics and every one is finished. */
  readonly allFinished: boolean
}

/** `plans` in the order of `whatFirst`. */
export function todayParts<T extends TopicPlace>(plans: readonly FirstTopic<T>[]): TodayParts<T> {
  const isDue = ({ part }: FirstTopic<T>) => part.rule === 'due' || part.rule === 'overdue'
  const of = (rule: FirstTopic['part']['rule']) => plans.filter(({ part }) => part.rule === rule)
  const [first] = [...plans.filter(isDue), ...of('never-checked')]
  const others = (some: readonly FirstTopic<T>[]) => some.filter((plan) => plan !== first)
  return {
    first,
    due: others(plans.filter(isDue)),
    fresh: others(of('never-checked')),
    later: of('later'),
    noDayLeft: of('no-day-left'),
    allFinished: plans.length > 0 && plans.every(({ status }) => status.status === 'finished'),
  }
}

/** How much is due against the minutes that the student gives; "" where nothing is. */
export function loadSentence(due: readonly number[], minutesADay: number): string {
  if (due.length === 0) return ''
  const sum = due.reduce((all, minutes) => all + minutes, 0)
  const load = `${counted(due.length, 'topic')} ${due.length === 1 ? 'is' : 'are'} due: about ${minutesWords(sum)} in all.`
  return sum > minutesADay
    ? `${load} You give ${minutesWords(minutesADay)} a day, so take them in this order; the rest keeps its place.`
    : load
}

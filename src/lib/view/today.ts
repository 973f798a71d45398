/** The front page: what to do first and why, and where every topic stands. */
import type { FirstTopic, Recall, TopicPlan, TopicPlace } from '../recall'
import { dayFrom } from './dates'
import { nextSentence, recallWords, STATUS_WORDS } from './sentences'
import { counted, opening } from './words'

/** Why a topic comes where it comes, in one or two sentences; "" never. */
export function firstReason({ part, weighed, status }: FirstTopic, today: string): string {
  const recall = weighed.find((reason) => reason.rule === 'recall')
  const rating = weighed.find((reason) => reason.rule === 'rating')
  const exam = weighed.find((reason) => reason.rule === 'exam')
  const last =
    recall &&
    (status.status === 'reopened'
      ? `It was finished once; the last check had ${recallWords(recall)} full.`
      : `The last check had ${recallWords(recall)} full.`)
  return [
    partSentence(part, today),
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

/**
 * The syllabi that somebody works with: those they brought, and the shipped ones that they have checked. All of them
 * where there are none such. An example that ships must not head the list of somebody who has a syllabus of their own.
 */
export function inUse<T extends { readonly id: string; readonly shipped: boolean }>(
  syllabi: readonly T[],
  checks: readonly Pick<TopicPlace, 'syllabusId'>[],
): readonly T[] {
  const checked = new Set(checks.map(({ syllabusId }) => syllabusId))
  const used = syllabi.filter(({ id, shipped }) => !shipped || checked.has(id))
  return used.length > 0 ? used : syllabi
}

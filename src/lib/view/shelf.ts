/** Every syllabus there is -> the shelf: those in use, those to look at, and topics whose syllabus is gone. */
import { byTime, dayOf, type Check, type Day } from '../recall'
import { counted } from './words'

/** As much of a syllabus as the shelf needs. */
export interface Shelved {
  readonly id: string
  readonly title: string
  readonly shipped: boolean
  readonly topics: readonly { readonly id: string; readonly points: number }[]
}

export interface Shelf<T> {
  readonly inUse: readonly T[]
  readonly toLookAt: readonly T[]
}

/** What the user brought is always in use; a shipped one once it is taken. The order is kept. */
export function shelfOf<T extends Shelved>(syllabi: readonly T[], taken: readonly string[]) {
  const used = ({ id, shipped }: T) => !shipped || taken.includes(id)
  const shelf: Shelf<T> = {
    inUse: syllabi.filter(used),
    toLookAt: syllabi.filter((one) => !used(one)),
  }
  return shelf
}

/** "4 topics, 52 points". */
export const sizeOf = ({ topics }: Pick<Shelved, 'topics'>): string =>
  `${counted(topics.length, 'topic')}, ${counted(
    topics.reduce((sum, { points }) => sum + points, 0),
    'point',
  )}`

/** A topic that was checked and is in no syllabus any more. */
export interface FormerTopic {
  readonly syllabusId: string
  readonly topicId: string
  /** As it was called in its latest check. */
  readonly title: string
  readonly checks: number
  readonly latest: Day
}

/** The latest first. */
export function formerTopics(
  checks: readonly Check[],
  syllabi: readonly Pick<Shelved, 'id' | 'topics'>[],
): FormerTopic[] {
  const here = new Set(
    syllabi.flatMap(({ id, topics }) => topics.map((topic) => key(id, topic.id))),
  )
  const gone = new Map<string, Check[]>()
  for (const check of [...checks].sort(byTime)) {
    const place = key(check.syllabusId, check.topicId)
    if (!here.has(place)) gone.set(place, [...(gone.get(place) ?? []), check])
  }
  return [...gone.values()]
    .map((own) => {
      const check = own.at(-1)!
      const { syllabusId, topicId, topicTitle: title } = check
      return { syllabusId, topicId, title, checks: own.length, latest: dayOf(check) }
    })
    .reverse()
    .sort((a, b) => (a.latest < b.latest ? 1 : a.latest > b.latest ? -1 : 0))
}

const key = (syllabusId: string, topicId: string): string => JSON.stringify([syllabusId, topicId])

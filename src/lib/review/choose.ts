/** The pupil's checks and what they choose to share -> the file for the tutor. */
import { dayOf, type Check, type Day } from '../recall'
import type { Topic } from '../syllabus/types'
import type { RecallFile, Sender, SharedCheck, SharedPage } from './types'

export interface Choice {
  /** Keys of the topics that are shared; see `topicKey`. */
  readonly topics: ReadonlySet<string>
  /** First and last day, both included; empty: no limit. */
  readonly from: Day | ''
  readonly to: Day | ''
  readonly withText: boolean
}

/** One text for the two ids of a topic: the same wherever it is made. */
export const topicKey = (place: {
  readonly syllabusId: string
  readonly topicId: string
}): string => JSON.stringify([place.syllabusId, place.topicId])

/** The checks that a choice shares, in their order. */
export const chosenChecks = (checks: readonly Check[], choice: Choice): Check[] =>
  checks.filter((check) => {
    const day = dayOf(check)
    return (
      choice.topics.has(topicKey(check)) &&
      (choice.from === '' || day >= choice.from) &&
      (choice.to === '' || day <= choice.to)
    )
  })

export interface ToShare {
  readonly check: Check
  /** The topic as it was marked, and its page. */
  readonly page: SharedPage & { readonly topic: Topic }
}

/** A topic that stood the same at many checks is in the file once. */
export function makeRecallFile(
  { id, name }: Sender,
  shared: readonly ToShare[],
  withText: boolean,
  madeAtMs: number,
): RecallFile {
  const topics: Topic[] = []
  const indexOf = new Map<string, number>()
  const checks = shared.map(({ check, page }): SharedCheck => {
    const written = JSON.stringify(page.topic)
    const topic = indexOf.get(written) ?? topics.push(page.topic) - 1
    indexOf.set(written, topic)
    const { text, report } = page
    // The marker's sentences quote the text: without it they stay at home as well.
    return { check, topic, ...(withText ? { page: { text, report } } : {}) }
  })
  return { app: 'Second Ink', recallFile: 1, pupil: { id, name }, madeAtMs, topics, checks }
}

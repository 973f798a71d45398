/** A pupil's checks -> what the group page shows of them. */
import {
  decidedOutcomes,
  runOf,
  sessionsOf,
  type Check,
  type MarkChange,
  type Session,
} from '../recall'
import type { Topic } from '../syllabus/types'
import { topicKey } from './choose'
import type { GapSummary, PupilCheck, Review, TopicSummary } from './types'

/** A check with the tutor's marks as its latest changes, whether or not the pupil has opened them yet. */
export function withReview(check: Check, review: Review | undefined): Check {
  if (!review) return check
  const marks = review.points.flatMap(({ ref, outcome, atMs }): MarkChange[] =>
    outcome === null ? [] : [{ ref, outcome, by: 'tutor', atMs }],
  )
  return { ...check, changes: [...check.changes.filter(({ by }) => by !== 'tutor'), ...marks] }
}

/** The checks of each topic, in the order in which topics were first checked. */
export function byTopic(checks: readonly PupilCheck[]): Map<string, PupilCheck[]> {
  const groups = new Map<string, PupilCheck[]>()
  for (const one of checks) {
    const key = topicKey(one.check)
    const group = groups.get(key)
    if (group) group.push(one)
    else groups.set(key, [one])
  }
  return groups
}

/** Topics with gap checks alone have no session and are left out. */
export const summarise = (
  checks: readonly PupilCheck[],
  topics: readonly Topic[],
): TopicSummary[] =>
  [...byTopic(checks).values()].flatMap((own) => {
    const sessions = sessionsOf(own.map(({ check }) => check))
    const latest = sessions.at(-1)
    if (!latest) return []
    const topic = topics[own.find(({ check }) => check.id === latest.check.id)?.topic ?? -1]
    const { syllabusId, topicId, topicTitle } = latest.check
    return [
      {
        syllabusId,
        topicId,
        title: topicTitle,
        sessions: sessions.slice(-2).map(({ day, recall }) => ({
          day,
          full: recall.full,
          points: recall.points,
        })),
        run: runOf(sessions).length,
        gaps: gapsIn(latest, topic),
      },
    ]
  })

function gapsIn({ check }: Session, topic: Topic | undefined): GapSummary[] {
  const texts = new Map(topic?.points.map(({ ref, text }) => [ref, text]))
  return decidedOutcomes(check).flatMap(({ ref, outcome }) =>
    outcome === 'full' ? [] : [{ ref, text: texts.get(ref) ?? '', outcome }],
  )
}

/** The topics that Today is made of. */
import {
  howLong,
  type FirstTopic,
  type HowLong,
  type TopicPlace,
  type TopicPlan,
} from '$lib/recall'
import type { ListedSyllabus, TopicOutline } from './library'

export interface TodayTopic extends TopicPlace {
  readonly syllabusTitle: string
  readonly outline: TopicOutline
}

export type TodayPlan = FirstTopic<TodayTopic>

/** In the order of the syllabi and of their topics. */
export const topicsOf = (
  syllabi: readonly Pick<ListedSyllabus, 'id' | 'title' | 'topics'>[],
): TodayTopic[] =>
  syllabi.flatMap(({ id, title, topics }) =>
    topics.map((outline) => ({
      syllabusId: id,
      topicId: outline.id,
      syllabusTitle: title,
      outline,
    })),
  )

export const minutesFor = (plan: TopicPlan<TodayTopic>, secondsPerPoint: number): HowLong =>
  howLong(plan.sessions, plan.topic.outline.points, secondsPerPoint)

/** The id of the control that rates a topic. */
export const controlId = ({ syllabusId, topicId }: TopicPlace): string =>
  `rating ${encodeURIComponent(syllabusId)} ${encodeURIComponent(topicId)}`.replaceAll(' ', '-')

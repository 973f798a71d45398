/** Keeps the student's rating of a topic. */
import type { Rating, Settings, TopicPlace } from '$lib/recall'
import { changeSettings } from '$lib/store'

/** The settings with one topic rated anew; `undefined` takes its rating back. */
export const rated = (
  settings: Settings,
  { syllabusId, topicId }: TopicPlace,
  rating: Rating | undefined,
): Settings => ({
  ...settings,
  ratings: [
    ...settings.ratings.filter((one) => one.syllabusId !== syllabusId || one.topicId !== topicId),
    ...(rating ? [{ syllabusId, topicId, rating }] : []),
  ],
})

export const rate = (place: TopicPlace, rating: Rating | undefined): Promise<Settings> =>
  changeSettings((settings) => rated(settings, place, rating))

/** What the plan page is made of, read once. */
import {
  howLong,
  planToExam,
  whatFirst,
  type Check,
  type Exam,
  type ExamPlan,
  type FirstTopic,
  type Now,
  type Settings,
} from '$lib/recall'
import type { CalendarExam, CalendarTopic } from '$lib/view/calendar-file'
import type { ListedSyllabus } from '../library'

export interface PlanTopic extends CalendarTopic {
  readonly points: number
}

export interface PlanView {
  readonly plan: ExamPlan<PlanTopic>
  readonly topics: readonly FirstTopic<PlanTopic>[]
  /** Of the syllabi in use, today's and those to come, the nearest first. */
  readonly exams: readonly CalendarExam[]
  /** Exams that are over, of syllabi that have none to come. */
  readonly over: readonly CalendarExam[]
}

export function planView(
  syllabi: readonly Pick<ListedSyllabus, 'id' | 'title' | 'topics'>[],
  checks: readonly Check[],
  settings: Settings,
  now: Now,
): PlanView {
  const places = syllabi.flatMap(({ id, title: syllabusTitle, topics }) =>
    topics.map(({ id: topicId, title, points }): PlanTopic => ({
      syllabusId: id,
      topicId,
      title,
      syllabusTitle,
      points,
    })),
  )
  const topics = whatFirst(places, checks, settings, now)
  const plan = planToExam({
    plans: topics,
    minutesOf: ({ sessions, topic }) =>
      howLong(sessions, topic.points, settings.secondsPerPoint).minutes,
    settings,
    now,
  })
  const exams = settings.exams
    .flatMap((exam): (Exam & CalendarExam)[] => {
      const syllabus = syllabi.find(({ id }) => id === exam.syllabusId)
      return syllabus ? [{ ...exam, syllabusTitle: syllabus.title }] : []
    })
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
  const coming = exams.filter(({ day }) => day >= plan.today)
  return {
    plan,
    topics,
    exams: coming,
    over: exams.filter(
      ({ day, syllabusId }) =>
        day < plan.today && !coming.some((exam) => exam.syllabusId === syllabusId),
    ),
  }
}

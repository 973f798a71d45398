/** What the student may set, with what it is until they do. */
import type { Day } from './days'

/**
 * Full sessions in a row that finish a topic.
 * Source: Rawson and Dunlosky (2011), Journal of Experimental Psychology: General 140(3), 283–302: recall to
 * criterion, then relearn three times at widely spaced intervals.
 */
export const SESSIONS_NEEDED = 3

/** Days between the first and the last of them, at least: our reading of "widely spaced" in the same source. */
export const DAYS_APART = 7

/** Time for one point on tonight's list, in seconds. Common practice: about a mark a minute, and time to check it. */
export const SECONDS_PER_POINT = 90

/** Time a day for checks, in minutes, until the student says otherwise. Our own choice: one or two topics. */
export const MINUTES_A_DAY = 30

/** An exam and what it asks. One syllabus may have several, of different topics. */
export interface Exam {
  readonly syllabusId: string
  readonly day: Day
  readonly title?: string
  /** Absent: every topic of the syllabus. */
  readonly topicIds?: readonly string[]
}

/** The student's own rating of a topic. */
export type Rating = 'hard' | 'middling' | 'easy'

export interface TopicRating {
  readonly syllabusId: string
  readonly topicId: string
  readonly rating: Rating
}

export interface Settings {
  readonly schema: 1
  /** A whole number, 1 to 20. */
  readonly sessionsNeeded: number
  /** A whole number of days, 0 to 365. */
  readonly daysApart: number
  /** 10 to 3600. */
  readonly secondsPerPoint: number
  readonly exams: readonly Exam[]
  readonly ratings: readonly TopicRating[]
  /** Minutes a day that the student gives, 5 to 600; absent: `MINUTES_A_DAY`. */
  readonly minutesADay?: number
  /** Shipped syllabi that the student has taken; what they brought is always in use. */
  readonly syllabusIds?: readonly string[]
  /** Whether the status follows the tutor's marks where there are any; absent: it does. */
  readonly tutorMarksCount?: boolean
  /** Whether a point learns from the marks that were changed; absent: it does. */
  readonly learnsFromChanges?: boolean
  /** Random, and made once: what this student's entries in a calendar are known by. */
  readonly calendarId?: string
}

/** The part of the settings that says when a topic is finished. */
export type FinishRule = Pick<Settings, 'sessionsNeeded' | 'daysApart'>

export const defaultSettings: Settings = {
  schema: 1,
  sessionsNeeded: SESSIONS_NEEDED,
  daysApart: DAYS_APART,
  secondsPerPoint: SECONDS_PER_POINT,
  exams: [],
  ratings: [],
}

/** A topic's place: its syllabus and its id there. */
export interface TopicPlace {
  readonly syllabusId: string
  readonly topicId: string
}

export const covers = (exam: Exam, { syllabusId, topicId }: TopicPlace): boolean =>
  exam.syllabusId === syllabusId && (exam.topicIds?.includes(topicId) ?? true)

/** The nearest exam of a topic, today's included; `undefined` where all are over or none is set. */
export const nextExam = (settings: Settings, topic: TopicPlace, today: Day): Exam | undefined =>
  settings.exams
    .filter((exam) => exam.day >= today && covers(exam, topic))
    .reduce<Exam | undefined>(
      (near, exam) => (near && near.day <= exam.day ? near : exam),
      undefined,
    )

export const ratingOf = (settings: Settings, topic: TopicPlace): Rating | undefined =>
  settings.ratings.find(
    (rated) => rated.syllabusId === topic.syllabusId && rated.topicId === topic.topicId,
  )?.rating

/** The exams that are set -> how far off each is, and those that are over. */
import { daysBetween, type Day, type Exam } from '../recall'
import { dayWords } from './dates'
import { counted } from './words'

/** As much of a syllabus as an exam's line needs. */
export interface Examined {
  readonly id: string
  readonly title: string
}

export interface ExamLine {
  readonly exam: Exam
  /** Its own title, else the syllabus's. */
  readonly title: string
  /** Days from today; negative once it is over. */
  readonly days: number
  /** "in 12 days", "tomorrow", "today", "3 days ago". */
  readonly away: string
  /** "Thursday, 3 June 2027". */
  readonly when: string
  /** "all topics", "3 topics". */
  readonly asks: string
}

export interface ExamLines {
  /** The nearest first, today's included. */
  readonly ahead: readonly ExamLine[]
  /** The latest first. */
  readonly over: readonly ExamLine[]
}

/** Of the syllabi given; exams of others are left out. */
export function examLines(
  exams: readonly Exam[],
  syllabi: readonly Examined[],
  today: Day,
): ExamLines {
  const lines = exams
    .flatMap((exam) => {
      const syllabus = syllabi.find(({ id }) => id === exam.syllabusId)
      return syllabus ? [lineOf(exam, syllabus, today)] : []
    })
    .sort((a, b) => a.days - b.days)
  return {
    ahead: lines.filter(({ days }) => days >= 0),
    over: lines.filter(({ days }) => days < 0).reverse(),
  }
}

/** Those over whose syllabus has no exam ahead: its topics go on as if none were set, and that should be said. */
export const overWithoutNext = ({ ahead, over }: ExamLines): ExamLine[] =>
  over.filter(({ exam }) => ahead.every((next) => next.exam.syllabusId !== exam.syllabusId))

function lineOf(exam: Exam, syllabus: Examined, today: Day): ExamLine {
  const days = daysBetween(today, exam.day)
  return {
    exam,
    title: exam.title?.trim() || syllabus.title,
    days,
    away: awayWords(days),
    when: dayWords(exam.day),
    asks: exam.topicIds ? counted(exam.topicIds.length, 'topic') : 'all topics',
  }
}

function awayWords(days: number): string {
  if (days === 0) return 'today'
  if (days === 1) return 'tomorrow'
  if (days === -1) return 'yesterday'
  return days > 0 ? `in ${counted(days, 'day')}` : `${counted(-days, 'day')} ago`
}

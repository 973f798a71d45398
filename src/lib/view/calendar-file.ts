/** Planned checks and exams -> an iCalendar file (RFC 5545). Loads a library: import it where it is asked for. */
import ical, { ICalEventTransparency } from 'ical-generator'
import { isDemoId, type Day, type Exam, type PlannedCheck, type TopicPlace } from '../recall'
import { counted } from './words'

export interface CalendarTopic extends TopicPlace {
  readonly title: string
  readonly syllabusTitle: string
}

export interface CalendarExam extends Exam {
  readonly syllabusTitle: string
}

export interface CalendarContent {
  readonly checks: readonly PlannedCheck<CalendarTopic>[]
  readonly exams: readonly CalendarExam[]
  /** Random, and the same at every file of this student: two who share a calendar must not overwrite each other's entries. */
  readonly calendarId: string
  /** When the file is made. */
  readonly nowMs: number
}

/**
 * All-day events without alarms. The UID of a check is its topic and which session of it it is, that of an exam its syllabus and
 * title, each with the student's own id, because a UID is globally unique (RFC 5545, 3.8.4.7; RFC 7986, 5.3): a file made later replaces the events of an earlier one instead of doubling them. DTSTAMP and SEQUENCE grow with
 * the clock, so that the later file is known as the later.
 */
export function calendarFile({ checks, exams, calendarId, nowMs }: CalendarContent): string {
  const calendar = ical({
    name: 'Second Ink',
    prodId: { company: 'Second Ink', product: 'Plan', language: 'EN' },
  })
  const add = (id: string, day: Day, summary: string, description: string) =>
    calendar.createEvent({
      id: `${id}@${encodeURIComponent(calendarId)}.second-ink`,
      // Without a zone the library writes the UTC date.
      start: new Date(`${day}T00:00:00Z`),
      allDay: true,
      stamp: new Date(nowMs),
      sequence: Math.max(0, Math.floor(nowMs / 60_000)),
      summary,
      description,
      // A check is no reason for others to think that the day is taken.
      transparency: ICalEventTransparency.TRANSPARENT,
    })

  for (const { topic, day, minutes, session } of checks)
    add(
      ['check', topic.syllabusId, topic.topicId, String(session)].map(encodeURIComponent).join('/'),
      day,
      `${demoSign(topic.syllabusId)}Check: ${topic.title}`,
      `${topic.syllabusTitle}. Shut the books and write what you remember: about ${counted(minutes, 'minute')}.`,
    )
  const seen = new Map<string, number>()
  for (const { syllabusId, syllabusTitle, title, day } of byDay(exams)) {
    const named = ['exam', syllabusId, title ?? ''].map(encodeURIComponent).join('/')
    const again = (seen.get(named) ?? 0) + 1
    seen.set(named, again)
    add(
      again === 1 ? named : `${named}/${again}`,
      day,
      `${demoSign(syllabusId)}Exam: ${title ?? syllabusTitle}`,
      syllabusTitle,
    )
  }
  return calendar.toString()
}

const demoSign = (syllabusId: string): string => (isDemoId(syllabusId) ? 'Demo. ' : '')

const byDay = (exams: readonly CalendarExam[]): CalendarExam[] =>
  [...exams].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))

/** The plan on a month: weeks from Monday (ISO 8601), and the days that hold something. */
import { addDays, type Day, type Exam, type PlannedDay, type TopicPlace } from '../recall'

/** 'YYYY-MM'. */
export type Month = string

export interface MonthDay<T extends TopicPlace> {
  readonly day: Day
  readonly planned?: PlannedDay<T>
  readonly exams: readonly Exam[]
}

/** A week of the table; `null` where a day is of another month. */
export type Week<T extends TopicPlace> = readonly (MonthDay<T> | null)[]

export const WEEKDAYS = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const

export const monthOf = (day: Day): Month => day.slice(0, 7)

/** "March 2027". */
export const monthWords = (month: Month): string =>
  new Intl.DateTimeFormat('en-GB', { month: 'long', year: 'numeric', timeZone: 'UTC' }).format(
    Date.parse(`${month}-15T12:00:00Z`),
  )

/** Every month from that of `from` to that of the latest of `days`. */
export function monthsBetween(from: Day, days: readonly Day[]): Month[] {
  const last = monthOf(days.reduce((latest, day) => (day > latest ? day : latest), from))
  const months = [monthOf(from)]
  for (let month = months[0]!; month < last;) {
    month = monthOf(addDays(`${month}-28`, 5))
    months.push(month)
  }
  return months
}

export function weeksOf<T extends TopicPlace>(
  month: Month,
  days: readonly PlannedDay<T>[],
  exams: readonly Exam[],
): Week<T>[] {
  const first = `${month}-01`
  // getUTCDay counts from Sunday.
  const monday = addDays(first, -((new Date(`${first}T12:00:00Z`).getUTCDay() + 6) % 7))
  const weeks: Week<T>[] = []
  for (let day = monday; monthOf(day) <= month; day = addDays(day, 7))
    weeks.push(
      WEEKDAYS.map((_, i) => {
        const date = addDays(day, i)
        return monthOf(date) === month ? dayOf(date, days, exams) : null
      }),
    )
  return weeks
}

/** The days of a month that hold a check or an exam, in order. */
export const fullDaysOf = <T extends TopicPlace>(weeks: readonly Week<T>[]): MonthDay<T>[] =>
  weeks
    .flat()
    .filter(
      (day) => day !== null && (day.planned !== undefined || day.exams.length > 0),
    ) as MonthDay<T>[]

function dayOf<T extends TopicPlace>(
  day: Day,
  days: readonly PlannedDay<T>[],
  exams: readonly Exam[],
): MonthDay<T> {
  const planned = days.find((one) => one.day === day)
  return {
    day,
    ...(planned ? { planned } : {}),
    exams: exams.filter((exam) => exam.day === day),
  }
}

/** A history of 2,000 checks over 60 topics, put where the app keeps its records. */
import type { Page } from '@playwright/test'
import { longHistory, syllabus, SYLLABUS_ID } from '../bench/long-history'
import { putRecords } from './records'

export { SYLLABUS_ID }
export const topicHref = `/topic?syllabus=${SYLLABUS_ID}&topic=topic-7`

const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10)

const settings = {
  schema: 1,
  sessionsNeeded: 3,
  daysApart: 7,
  secondsPerPoint: 90,
  exams: [
    { syllabusId: SYLLABUS_ID, day: inDays(40), title: 'Paper 1' },
    { syllabusId: SYLLABUS_ID, day: inDays(52), title: 'Paper 2', topicIds: ['topic-1'] },
  ],
  ratings: [],
}

export async function seedLongHistory(page: Page): Promise<void> {
  const { checks, pages } = longHistory(Date.now())
  const records: [string, unknown][] = [
    [`syllabus/${syllabus.id}`, syllabus],
    ['settings', settings],
    ...checks.map((check): [string, unknown] => [`check/${check.id}`, check]),
    ...pages.slice(-60).map((one): [string, unknown] => [`page/${one.id}`, one]),
  ]
  await page.goto('/help')
  await putRecords(page, records)
}

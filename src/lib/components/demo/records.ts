/** The demo's pages and their marks -> the records that are kept, with times that end today. Pure. */
import type { Report } from '$lib/marking'
import { addDays, dayAt, DEMO_PREFIX, instantAt, type Check, type Now } from '$lib/recall'
import type { DemoRecords, Page } from '$lib/store'
import { writeSyllabus, type Syllabus, type Topic } from '$lib/syllabus'
import { countWords } from '$lib/view/writing'
import type { DemoHistory, DemoPage, DemoTopic } from './types'

/** A page as it is given to the marker: a gap check has only the points that it asks for. */
export interface DemoJob {
  readonly page: DemoPage
  readonly topic: Topic
  readonly text: string
}

/** Oldest first. Throws where the history names a topic, a point or a line that is not there. */
export const demoJobs = (history: DemoHistory, syllabus: Syllabus): DemoJob[] =>
  history.topics
    .flatMap((demo) => demo.pages.map((page) => jobOf(demo, page, syllabus)))
    .sort((a, b) => b.page.daysAgo - a.page.daysAgo || (a.page.at < b.page.at ? -1 : 1))

function jobOf(demo: DemoTopic, page: DemoPage, syllabus: Syllabus): DemoJob {
  const whole = syllabus.topics.find(({ id }) => id === demo.topicId)
  if (!whole) throw new Error(`The demo's topic ${demo.topicId} is not in ${syllabus.title}.`)
  const text = page.says.split(' ').map((key) => {
    const line = demo.lines[key]
    if (line === undefined) throw new Error(`The demo has no line ${key} of ${demo.topicId}.`)
    return line
  })
  const points = page.gapsOf
    ? whole.points.filter(({ ref }) => page.gapsOf?.includes(ref))
    : whole.points
  return { page, topic: { ...whole, points }, text: text.join('\n') }
}

export interface MarkedJob {
  readonly job: DemoJob
  readonly report: Report
}

/**
 * `marked` are the jobs of `demoJobs` with what the marker gave. Days are counted back from the day of `now` in its zone; no
 * check comes after `now`.
 */
export function demoRecords(
  history: DemoHistory,
  syllabus: Syllabus,
  marked: readonly MarkedJob[],
  now: Now,
): DemoRecords {
  const syllabusId = DEMO_PREFIX + syllabus.id
  const today = dayAt(now.nowMs, now.zone)
  const own: Syllabus = { ...syllabus, id: syllabusId, title: `${syllabus.title} (demo)` }
  return {
    syllabus: {
      schema: 1,
      id: syllabusId,
      source: writeSyllabus(own),
      syllabus: own,
      addedAtMs: now.nowMs,
    },
    checks: marked.map((one, i) => checkOf(one, `${DEMO_PREFIX}check-${i + 1}`, syllabusId, now)),
    papers: history.papers.map(({ daysAgo, ...paper }, i) => ({
      schema: 1,
      id: `${DEMO_PREFIX}paper-${i + 1}`,
      syllabusId,
      day: addDays(today, -daysAgo),
      ...paper,
    })),
    exams: history.exams.map(({ inDays, title, topicIds }) => ({
      syllabusId,
      day: addDays(today, inDays),
      title,
      topicIds,
    })),
    ratings: history.ratings.map((rating) => ({ syllabusId, ...rating })),
  }
}

function checkOf(
  { job, report }: MarkedJob,
  id: string,
  syllabusId: string,
  { nowMs, zone }: Now,
): { check: Check; page: Page } {
  const { page, topic, text } = job
  const day = addDays(dayAt(nowMs, zone), -page.daysAgo)
  const atMs = Math.min(instantAt(day, page.at, zone), nowMs)
  const changes = Object.entries(page.changed ?? {}).map(([ref, outcome]) => ({
    ref,
    outcome,
    by: 'student' as const,
    atMs,
  }))
  const check: Check = {
    schema: 1,
    id,
    kind: page.gapsOf ? 'gap' : 'check',
    syllabusId,
    topicId: topic.id,
    topicTitle: topic.title,
    atMs,
    zone,
    marks: report.points.map(({ ref, outcome }) => ({ ref, outcome })),
    changes,
    marker: report.marker,
    writingMs: page.minutes * 60_000,
    words: countWords(text),
    pastes: page.pasted === undefined ? [] : [{ atMs, length: page.pasted }],
  }
  return { check, page: { schema: 1, id, text, topic, report } }
}

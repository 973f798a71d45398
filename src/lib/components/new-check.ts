/** A marked page -> the two records that are kept of it. */
import { checkTimeMs, type Check, type Now } from '$lib/recall'
import type { Report } from '$lib/marking'
import type { Draft, Page } from '$lib/store'
import type { Topic } from '$lib/syllabus'
import { countWords } from '$lib/view/writing'
import { newId } from './new-id'

export { newId }

export interface Written {
  readonly draft: Draft
  readonly topic: Topic
  readonly report: Report
  /** The topic's checks so far: a clock that was set back must not make a second try pass for the first. */
  readonly earlier: readonly Check[]
  readonly now: Now
}

export function newCheck({ draft, topic, report, earlier, now }: Written): {
  check: Check
  page: Page
} {
  const { syllabusId, topicId, text, writingMs, pastes, aways, awayMs } = draft
  const id = newId()
  const check: Check = {
    schema: 1,
    id,
    kind: 'check',
    syllabusId,
    topicId,
    topicTitle: topic.title,
    atMs: checkTimeMs(earlier, now),
    zone: now.zone,
    marks: report.points.map(({ ref, outcome }) => ({ ref, outcome })),
    changes: [],
    marker: report.marker,
    writingMs,
    words: countWords(text),
    pastes,
    ...(aways === undefined ? {} : { aways, awayMs: awayMs ?? 0 }),
  }
  return { check, page: { schema: 1, id, text, topic, report } }
}

/** A syllabus of 60 topics and thousands of checks of it, as records for the browser's storage. The same every time. */
import type { Outcome } from '../../src/lib/marking'
import type { Check } from '../../src/lib/recall'
import type { KeptSyllabus, Page } from '../../src/lib/store'

export const SYLLABUS_ID = 'the-long-shore'
export const TOPICS = 60
export const CHECKS = 2_000
const POINTS = 24
const DAY_MS = 86_400_000
const OUTCOMES: readonly Outcome[] = ['partial', 'missed', 'missed', 'contradicted']

const topics = Array.from({ length: TOPICS }, (_, t) => ({
  id: `topic-${t + 1}`,
  title: `Stretch ${t + 1} of the shore`,
  points: Array.from({ length: POINTS }, (_, p) => ({
    ref: `${t + 1}.${p + 1}`,
    text: `Point ${p + 1} of stretch ${t + 1}: the shingle is sorted by the waves that reach it.`,
    ideas: [],
  })),
}))

export const syllabus: KeptSyllabus = {
  schema: 1,
  id: SYLLABUS_ID,
  source: '',
  addedAtMs: 0,
  syllabus: { format: 1, id: SYLLABUS_ID, title: 'The long shore', topics },
}

/** A small generator of numbers from 0 to 1, so that every run has the same history. */
function numbers(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296
    return state / 4_294_967_296
  }
}

/** Checks of every topic over the days before `nowMs`, getting better; each with a page of 300 words. */
export function longHistory(nowMs: number, count = CHECKS): { checks: Check[]; pages: Page[] } {
  const next = numbers(7)
  const checks: Check[] = []
  const pages: Page[] = []
  for (let i = 0; i < count; i += 1) {
    const topic = topics[i % TOPICS]!
    const round = Math.floor(i / TOPICS)
    const rounds = count / TOPICS
    const known = 0.3 + (0.72 * round) / rounds
    const marks = topic.points.map(({ ref }) => ({
      ref,
      outcome: next() < known ? ('full' as const) : OUTCOMES[Math.floor(next() * OUTCOMES.length)]!,
    }))
    const id = `check-${String(i).padStart(5, '0')}`
    const atMs = Math.round(nowMs - (rounds - round) * 8 * DAY_MS + (i % TOPICS) * 3_600_000)
    checks.push({
      schema: 1,
      id,
      kind: 'check',
      syllabusId: SYLLABUS_ID,
      topicId: topic.id,
      topicTitle: topic.title,
      atMs,
      zone: 'Europe/London',
      marks,
      changes:
        round % 3 === 0 ? [{ ref: marks[0]!.ref, outcome: 'full', by: 'student', atMs }] : [],
      marker: '1',
      writingMs: 600_000 + Math.floor(next() * 600_000),
      words: 300,
      pastes: [],
    })
    pages.push({
      schema: 1,
      id,
      text: 'The shingle is sorted by the waves that reach it. '.repeat(30),
      topic,
      report: { marker: '1', topic: topic.id, points: [], statements: [], beyond: [] },
    })
  }
  return { checks, pages }
}

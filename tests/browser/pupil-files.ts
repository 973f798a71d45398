/** Recall files as pupils would save them, made of the shipped syllabus. The same numbers give the same file. */
import { topicId } from '../../src/lib/syllabus/slug'
import { shipped } from './app'

const DAY_MS = 86_400_000
const OUTCOMES = ['full', 'missed', 'full', 'partial', 'full', 'contradicted', 'full'] as const

export interface Made {
  readonly id: string
  readonly name: string
  readonly checks: number
  /** A larger one knows less. */
  readonly seed: number
}

const topics = shipped.topics.map(({ title, points }) => ({
  id: topicId(title),
  title,
  points: points.map(({ ref, text }) => ({ ref, text, ideas: [] })),
}))

/** One check a day, the topics in turn, the latest yesterday; with what was written. */
export function pupilFile({ id, name, checks, seed }: Made) {
  const nowMs = Date.now()
  return {
    app: 'Second Ink',
    recallFile: 1,
    pupil: { id, name },
    madeAtMs: nowMs,
    topics,
    checks: Array.from({ length: checks }, (_, c) => checkOf(id, seed, c, nowMs, checks)),
  }
}

function checkOf(pupil: string, seed: number, c: number, nowMs: number, checks: number) {
  const t = c % topics.length
  const { id, title, points } = topics[t]!
  const atMs = nowMs - (checks - c) * DAY_MS
  const marks = points.map(({ ref }, p) => ({
    ref,
    outcome: OUTCOMES[(seed * p + c) % OUTCOMES.length]!,
  }))
  const said = points.map(({ text }) => `${text}\n`)
  const starts = said.map((_, p) => said.slice(0, p).join('').length)
  const spans = points.map(({ text }, p) => ({ start: starts[p]!, end: starts[p]! + text.length }))
  const report = {
    marker: '1.0.0',
    topic: id,
    points: marks.map(({ ref, outcome }, p) => ({
      ref,
      outcome,
      ideas: [{ idea: 'all of it', kind: 'idea', found: outcome === 'full', spans: [spans[p]] }],
      drafted: true,
      nearest: spans[p],
      offered: false,
      sureness: 0.8,
      why: 'You said all of it.',
    })),
    statements: spans,
    beyond: [],
  }
  const [first, second] = marks
  const changed = (ref: string, outcome: string) => ({ ref, outcome, by: 'student', atMs })
  return {
    check: {
      schema: 1,
      id: `${pupil}-${c}`,
      kind: 'check',
      syllabusId: topicId(shipped.title),
      topicId: id,
      topicTitle: title,
      atMs,
      zone: 'Europe/London',
      marks,
      changes: c % 3 === 0 ? [changed(first!.ref, 'full'), changed(second!.ref, 'missed')] : [],
      marker: '1.0.0',
      writingMs: 540_000,
      words: said.join(' ').split(/\s+/).length,
      pastes: c % 4 === 0 ? [{ atMs, length: 40 }] : [],
      aways: c % 2,
      awayMs: (c % 2) * 20_000,
    },
    topic: t,
    page: { text: said.join(''), report },
  }
}

/** As a file that is chosen or dropped. */
export const asUpload = (made: Made) => ({
  name: `recall-${made.id}.json`,
  mimeType: 'application/json',
  buffer: Buffer.from(JSON.stringify(pupilFile(made))),
})

/** Names as they come: long, from right to left, with markup, of one word, with accents. */
export const NAMES = [
  'Mara Quill',
  'Bartholomew Featherstonehaugh-Cholmondeley of Great Yarmouth and Gorleston-on-Sea',
  'يوسف الشاطئ',
  '<img src=x onerror=alert(1)>',
  'דניאל חוף',
  'Þórunn Sjöström',
]

export const sixPupils: readonly Made[] = NAMES.map((name, i) => ({
  id: `pupil-${i}`,
  name,
  checks: 4 + 3 * i,
  seed: i + 1,
}))

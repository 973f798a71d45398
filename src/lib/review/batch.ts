/** Many pages on one topic, marked -> who has what, and what most of them miss. */
import type { Outcome, Report } from '../marking/types'
import type { Topic } from '../syllabus/types'

export interface MarkedText {
  /** The file's name: whose page it is, as far as is known. */
  readonly name: string
  readonly report: Report
}

export interface BatchPage {
  readonly name: string
  readonly full: number
  readonly points: number
  readonly partial: number
  readonly contradicted: number
  /** Points that the marker is in doubt about: a person should look. */
  readonly asks: number
}

export interface BatchPoint {
  readonly ref: string
  readonly text: string
  /** How many pages have it in full. */
  readonly full: number
  /** Names of the pages that do not, in their order. */
  readonly missing: readonly string[]
}

export interface Batch {
  /** Lowest first; of equals by name. */
  readonly pages: readonly BatchPage[]
  /** Most missed first; of equals in the syllabus's order. */
  readonly points: readonly BatchPoint[]
}

export function batchOf(topic: Topic, texts: readonly MarkedText[]): Batch {
  const count = ({ points }: Report, outcome: Outcome) =>
    points.filter((point) => point.outcome === outcome).length
  const pages = texts.map(({ name, report }) => ({
    name,
    full: count(report, 'full'),
    points: report.points.length,
    partial: count(report, 'partial'),
    contradicted: count(report, 'contradicted'),
    asks: report.points.filter(({ offered }) => offered).length,
  }))
  const points = topic.points.map(({ ref, text }) => {
    const isFull = ({ report }: MarkedText) =>
      report.points.some((point) => point.ref === ref && point.outcome === 'full')
    const missing = texts.filter((one) => !isFull(one)).map(({ name }) => name)
    return { ref, text, full: texts.length - missing.length, missing }
  })
  return {
    pages: pages.sort((a, b) => a.full - b.full || a.name.localeCompare(b.name, 'en')),
    points: points.sort((a, b) => a.full - b.full),
  }
}

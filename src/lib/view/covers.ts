/** A report and the marks that stand -> which spans of the page are what to which point. */
import type { Outcome, PointMark, Report, Span } from '../marking/types'
import type { Cover } from './segments'

/** The mark that stands for a point, the student's changes included. */
export type Standing = ReadonlyMap<string, Outcome>

export const coversOf = (report: Report, standing: Standing): Cover[] => [
  ...report.points.flatMap((point) => coversOfPoint(point, standing.get(point.ref))),
  ...report.beyond.map((span): Cover => ({ span, role: 'beyond' })),
]

/**
 * What one point ties to. It follows the mark that stands: a clash that the student set aside is no longer struck
 * through, and a point that the student credits is underlined at the nearest statement.
 */
export function coversOfPoint(point: PointMark, outcome = point.outcome): Cover[] {
  const { ref, clash, nearest } = point
  const as = (role: Cover['role'], spans: readonly Span[]) =>
    spans.map((span): Cover => ({ span, role, ref }))
  switch (outcome) {
    case 'full':
    case 'partial': {
      const said = saidSpans(point)
      return as('said', said.length > 0 ? said : nearest ? [nearest] : [])
    }
    case 'contradicted':
      return clash
        ? [...as('clash', [clash.statement]), ...as('clash-words', [clash.words])]
        : as('clash-words', nearest ? [nearest] : [])
    case 'missed':
      return as('nearest', nearest ? [nearest] : [])
  }
}

/** Where the ideas that were found are said, in the order of the page, each place once. */
export function saidSpans({ ideas }: PointMark): Span[] {
  const places = new Map<string, Span>()
  for (const { found, spans } of ideas)
    if (found) for (const span of spans) places.set(`${span.start}-${span.end}`, span)
  return [...places.values()].sort((a, b) => a.start - b.start || a.end - b.end)
}

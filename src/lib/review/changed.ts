/** What the pupil changed, and what is new since the tutor last looked. */
import type { Outcome, PointMark, Report } from '../marking/types'
import { decidedOutcomes, type Check } from '../recall'
import type { Seen } from './types'

export interface ChangedMark {
  readonly check: Check
  readonly ref: string
  /** What the marker gave. */
  readonly from: Outcome
  /** What the pupil gave. */
  readonly to: Outcome
  /** In the pupil's own favour, against it, or neither (missed and says the opposite earn the same). */
  readonly direction: 'for' | 'against' | 'neither'
}

const WORTH: Readonly<Record<Outcome, number>> = { full: 2, partial: 1, missed: 0, contradicted: 0 }

/** The check without the tutor's marks: what stood between the marker and the pupil. */
export const ofPupil = (check: Check): Check => ({
  ...check,
  changes: check.changes.filter(({ by }) => by === 'student'),
})

/** In the order of the checks, then of the syllabus. A change to the marker's own outcome (a doubt confirmed) is none. */
export const changedMarks = (checks: readonly Check[]): ChangedMark[] =>
  checks
    .filter(({ changes }) => changes.length > 0)
    .flatMap((check) =>
      decidedOutcomes(ofPupil(check)).flatMap(({ ref, outcome, marker }): ChangedMark[] => {
        if (outcome === marker) return []
        const gain = WORTH[outcome] - WORTH[marker]
        const direction = gain > 0 ? 'for' : gain < 0 ? 'against' : 'neither'
        return [{ check, ref, from: marker, to: outcome, direction }]
      }),
    )

/** The sentence of the page that a point's mark turns on: what clashes, else what comes nearest, else what says it. */
export function sentenceOf(text: string, report: Report, ref: string): string {
  const point = report.points.find((mark) => mark.ref === ref)
  const span = point && (point.clash?.statement ?? point.nearest ?? saidIn(point, report))
  return span ? text.slice(span.start, span.end).replace(/\s+/g, ' ').trim() : ''
}

function saidIn({ ideas }: PointMark, { statements }: Report) {
  const said = ideas.find(({ found, spans }) => found && spans.length > 0)?.spans[0]
  return said && (statements.find(({ end }) => end >= said.end) ?? said)
}

export interface Since {
  readonly newChecks: readonly Check[]
  /** Checks seen before in which marks were changed since. */
  readonly changed: readonly Check[]
  /** Checks seen before that the newer file does not have. */
  readonly gone: number
}

export function changesSince(seen: Seen | undefined, checks: readonly Check[]): Since {
  const before = new Map(Object.entries(seen?.checks ?? {}))
  const here = new Set(checks.map(({ id }) => id))
  return {
    newChecks: checks.filter(({ id }) => !before.has(id)),
    changed: checks.filter(({ id, changes }) => (before.get(id) ?? Infinity) < changes.length),
    gone: [...before.keys()].filter((id) => !here.has(id)).length,
  }
}

export const seenNow = (checks: readonly Check[], atMs: number): Seen => ({
  atMs,
  checks: Object.fromEntries(checks.map(({ id, changes }) => [id, changes.length])),
})

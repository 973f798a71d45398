/** The nouns of recall: what is remembered of each check, and what follows from it. Plain, readonly data. */
import type { Outcome } from '../marking/types'

/** Who decided a mark. The tutor's marks arrive with a file of theirs. */
export type Decider = 'marker' | 'student' | 'tutor'

/** A mark somebody changed. Kept beside the marker's, never instead of it; the latest of a decider stands. */
export interface MarkChange {
  readonly ref: string
  /** `null` takes the decider's earlier change back. */
  readonly outcome: Outcome | null
  readonly by: Exclude<Decider, 'marker'>
  readonly atMs: number
}

/** Text that came in by pasting: a fact about the page, not an accusation. */
export interface Paste {
  readonly atMs: number
  /** UTF-16 code units pasted. */
  readonly length: number
}

/**
 * One closed-book attempt at a topic: the small record that histories and lists are made of.
 * The text and the marker's full report are kept apart in a `Page` with the same id.
 */
export interface Check {
  readonly schema: 1
  readonly id: string
  /** A gap check of chosen points never makes a topic full or finished. */
  readonly kind: 'check' | 'gap'
  readonly syllabusId: string
  readonly topicId: string
  readonly topicTitle: string
  /** When it was marked, milliseconds since 1970 UTC. */
  readonly atMs: number
  /** The student's time zone then, an IANA name: the calendar day of a check never moves later. */
  readonly zone: string
  /** The marker's outcome for each point checked, in the syllabus's order. */
  readonly marks: readonly { readonly ref: string; readonly outcome: Outcome }[]
  /** In the order in which they were made. */
  readonly changes: readonly MarkChange[]
  /** The marker's version. */
  readonly marker: string
  /** Time the page was open and in front, in milliseconds. */
  readonly writingMs: number
  readonly words: number
  readonly pastes: readonly Paste[]
  /** Times that the page went out of sight while it was written, and for how long together. Absent: not recorded. */
  readonly aways?: number
  readonly awayMs?: number
  /** Points that were edited since, where any were: under which ref the same point stands today; null: nowhere. */
  readonly edited?: readonly EditedPoint[]
}

export interface EditedPoint {
  readonly ref: string
  readonly now: string | null
}

/** What a session, a topic or the whole is at: see the recall rules. */
export type Status = 'not checked' | 'gaps' | 'full' | 'finished' | 'reopened'

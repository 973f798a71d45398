/**
 * The nouns of marking, in the order in which they arise. Everything here is plain, readonly data.
 * A span is a pair of UTF-16 offsets into the dump exactly as it was typed, end exclusive.
 */

export interface Span {
  readonly start: number
  readonly end: number
}

/** The four marks of the marking rules. */
export type Outcome = 'full' | 'partial' | 'missed' | 'contradicted'

/** One key idea (or step, equation, value) of a point, and whether the dump states it. */
export interface IdeaMark {
  /** As the author wrote it, or as it was drafted. */
  readonly idea: string
  readonly kind: 'idea' | 'step' | 'equation' | 'value'
  readonly found: boolean
  /** Where it is said, in the order of the dump; empty where it was not found. */
  readonly spans: readonly Span[]
}

/** What clashes, for a contradicted point. */
export interface Clash {
  /** The whole statement. */
  readonly statement: Span
  /** The words in it that clash. */
  readonly words: Span
  /** What the syllabus has instead, in its own words. */
  readonly against: string
  readonly kind: 'rejected' | 'negated' | 'opposite' | 'swapped' | 'value' | 'equation' | 'order'
}

export interface PointMark {
  readonly ref: string
  readonly outcome: Outcome
  /** Every idea of the point, in the point's order. */
  readonly ideas: readonly IdeaMark[]
  /** True where the ideas were drafted from the text, not written by an author. */
  readonly drafted: boolean
  /** For a missed or partial point: the statement that comes nearest, if any does. */
  readonly nearest?: Span
  /** Rule 1: the marker is in doubt, and the nearest statement is offered to the student to decide. */
  readonly offered: boolean
  readonly clash?: Clash
  /** How sure the marker is that the point is fully said: 0 (surely not) to 1 (surely). */
  readonly sureness: number
  /** One plain sentence for the student. */
  readonly why: string
}

export interface Report {
  /** The version of the marker that gave these outcomes. */
  readonly marker: string
  readonly topic: string
  /** One for each point, in the syllabus's order. */
  readonly points: readonly PointMark[]
  /** Every statement of the dump, in its order. */
  readonly statements: readonly Span[]
  /** Statements that match no point ("not on this syllabus"), in the dump's order. */
  readonly beyond: readonly Span[]
}

/**
 * The nouns of a syllabus, as they are after reading: plain, readonly, cloneable data, so that they cross
 * to the marking worker and into storage unchanged. The file's notation is described in the README.
 */

/** The only version of the syllabus file format so far. */
export const FORMAT = 1

export interface Syllabus {
  readonly format: 1
  /** Made from the title unless the file gives one; unique among the syllabi of one user. */
  readonly id: string
  readonly title: string
  readonly note?: string
  readonly topics: readonly Topic[]
}

export interface Topic {
  /** Made from the title unless the file gives one; unique within the syllabus. */
  readonly id: string
  readonly title: string
  /** Shown beside the topic: practical work, medicines, … */
  readonly caution?: string
  readonly points: readonly Point[]
}

export interface Point {
  /** Unique within the syllabus. */
  readonly ref: string
  /** Word for word as the syllabus has it. */
  readonly text: string
  /** What a drill asks for the point with; absent: drafted from the text. */
  readonly cue?: string
  /** The key ideas in the mark scheme's notation; empty: they are drafted from the text. */
  readonly ideas: readonly Idea[]
  /** How many of the ideas make full recall; absent: all. */
  readonly any?: number
  /** Statements that lose the point. */
  readonly reject?: readonly string[]
  readonly equation?: Equation
  readonly value?: Value
  /** Ideas that must come in this order. */
  readonly steps?: readonly Idea[]
}

/** One key idea: every part must be said in one statement (`+` in the notation). */
export interface Idea {
  /** As the author wrote it, in the notation; `readIdea` of it gives the parts. */
  readonly written: string
  readonly parts: readonly Part[]
}

/** One part of an idea: any of its wordings will do (`/` in the notation). */
export interface Part {
  readonly wordings: readonly Wording[]
}

/**
 * One wording: words in the author's order; at least one of them is needed. `exact` where the author put it in quotation
 * marks: the needed words are then the term itself, and only optional words may stand before or after it.
 */
export interface Wording {
  readonly words: readonly WordSlot[]
  readonly exact: boolean
}

export interface WordSlot {
  /** As written, without the brackets; no spaces. It may hold signs: `N/kg`, `Na+`, `swash,`. */
  readonly text: string
  /** In `( )`: may be left out. */
  readonly optional: boolean
  /** `oblique(ly)` is one needed slot with the suffix `ly`; an optional slot has none. */
  readonly suffix?: string
}

export interface Equation {
  /** As written: `v = f × λ` or `2Br⁻ → Br₂ + 2e⁻`. */
  readonly written: string
  readonly kind: 'algebraic' | 'chemical'
  /** For each symbol the words that may stand for it; empty for chemical equations. */
  readonly where: Readonly<Record<string, readonly Wording[]>>
}

export interface Value {
  readonly written: string
  readonly number: number
  /** As written; absent where the quantity has none. */
  readonly unit?: string
  /** Half-width of the accepted range, in the same unit, at least 0. */
  readonly tolerance: number
}

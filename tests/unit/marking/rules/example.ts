/** A point as a teacher writes it in a syllabus file. */
export interface PointSource {
  readonly text: string
  readonly ideas?: readonly string[]
  readonly any?: number
  readonly reject?: readonly string[]
  readonly equation?: string
  readonly where?: Readonly<Record<string, string>>
  readonly value?: string
  readonly steps?: readonly string[]
  readonly ref?: string
}

/** One point as it stands in a syllabus file, one page a student wrote, and the mark a strict examiner gives. */
export interface RuleExample {
  readonly subject: string
  /** The topic's title, when it matters. */
  readonly title?: string
  readonly point: PointSource
  /** The topic's other points, when they matter: swapped partners and the like. */
  readonly others?: readonly PointSource[]
  readonly says: string
  readonly outcome: 'full' | 'partial' | 'missed' | 'contradicted'
  /** Words of `says` that the mark rests on; for a contradicted point, the clash. */
  readonly quotes?: string
  /** True where the nearest statement should be offered to the student (rule 1). */
  readonly offered?: boolean
  /** The reason, in a few words; it makes the test's title. */
  readonly why: string
}

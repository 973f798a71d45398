/** Two sets of marks of the same points -> how far they agree. */
import type { Outcome } from '../marking/types'

export const CATEGORIES: readonly Outcome[] = ['full', 'partial', 'missed', 'contradicted']

/** Counts: a row for each category of the first rater, a column for each of the second, in the same order. */
export type Table = readonly (readonly number[])[]

export interface Kappa {
  readonly value: number
  /** Large-sample standard error; the interval is value ± 1.96 of it, within −1 to 1. */
  readonly error: number
  readonly low: number
  readonly high: number
}

export interface Agreement {
  readonly table: Table
  readonly points: number
  /** Points with the same mark. */
  readonly same: number
  /** `undefined` where it has no meaning: no points, or both gave every point one and the same mark. */
  readonly kappa: Kappa | undefined
}

/** The normal deviate that leaves 2.5 % on each side. Source: tables of the normal distribution. */
const Z = 1.959964

export const agreementOf = (table: Table): Agreement => ({
  table,
  points: sum(table.flat()),
  same: sum(table.map((row, i) => row[i] ?? 0)),
  kappa: kappaOf(table),
})

/** Marks of the same points by two raters. */
export function agreementOfMarks(pairs: readonly (readonly [Outcome, Outcome])[]): Agreement {
  const counts = CATEGORIES.map((row) =>
    CATEGORIES.map((column) => pairs.filter(([a, b]) => a === row && b === column).length),
  )
  return agreementOf(counts)
}

/**
 * Cohen's kappa, unweighted: Cohen (1960), Educational and Psychological Measurement 20(1), 37–46. Its standard error
 * for a kappa that is not zero: Fleiss, Cohen and Everitt (1969), Psychological Bulletin 72(5), 323–327.
 */
export function kappaOf(table: Table): Kappa | undefined {
  const n = sum(table.flat())
  if (n === 0) return undefined
  const share = table.map((row) => row.map((count) => count / n))
  const rows = share.map(sum)
  const columns = rows.map((_, j) => sum(share.map((row) => row[j] ?? 0)))
  const at = (list: readonly number[], i: number) => list[i] ?? 0
  const observed = sum(share.map((row, i) => at(row, i)))
  const expected = sum(rows.map((row, i) => row * at(columns, i)))
  const room = 1 - expected
  // Rounding may leave a trace of room where there is none.
  if (room < 1e-12) return undefined

  const value = (observed - expected) / room
  const cells = share.flatMap((row, i) =>
    row.map((p, j) =>
      i === j
        ? p * (room - (at(rows, i) + at(columns, i)) * (1 - observed)) ** 2
        : p * ((1 - observed) * (at(columns, i) + at(rows, j))) ** 2,
    ),
  )
  const rest = (observed * expected - 2 * expected + observed) ** 2
  const error = Math.sqrt(Math.max(0, sum(cells) - rest) / n) / room ** 2
  return {
    value,
    error,
    low: Math.max(-1, value - Z * error),
    high: Math.min(1, value + Z * error),
  }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0)

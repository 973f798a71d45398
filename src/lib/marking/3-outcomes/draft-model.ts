import type { Outcome } from '../types'
import { AUTHORED_CLASSES, DRAFT_CLASSES, DRAFT_SURE } from './draft-weights'

/** The outcomes that a model of the evidence knows, in the order of `DRAFT_CLASSES`. */
export const WEIGHED: readonly Outcome[] = ['full', 'partial', 'missed', 'contradicted']

export interface Weighed {
  readonly outcome: 'full' | 'partial' | 'missed'
  /** The probability that all of the point is said, 0 to 1. */
  readonly full: number
}

/**
 * What the evidence for a drafted point comes to. Full only from `DRAFT_SURE` on; a contradiction is nothing that can be weighed: it
 * needs words that clash.
 */
export function weigh(evidence: readonly number[]): Weighed {
  const [full, partial, missed] = probabilities(DRAFT_CLASSES, evidence) as [number, number, number]
  return { full, outcome: full >= DRAFT_SURE ? 'full' : partial >= missed ? 'partial' : 'missed' }
}

/** The probability that all of a point with ideas of its author's is said. */
export const fullOf = (evidence: readonly number[]): number =>
  probabilities(AUTHORED_CLASSES, evidence)[0]!

export interface ClassWeights {
  readonly bias: number
  readonly weights: readonly number[]
}

/** Multinomial logistic model: the softmax of one sum a class. */
export function probabilities(
  classes: readonly ClassWeights[],
  evidence: readonly number[],
): number[] {
  const sums = classes.map(({ bias, weights }) =>
    evidence.reduce((sum, x, i) => sum + x * weights[i]!, bias),
  )
  const most = Math.max(...sums)
  const parts = sums.map((sum) => Math.exp(sum - most))
  const whole = parts.reduce((a, b) => a + b, 0)
  return parts.map((part) => part / whole)
}

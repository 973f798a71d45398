/** Logistic regression with an L2 penalty, by Newton's method: deterministic, no chance in it. */

export interface Row {
  readonly x: readonly number[]
  readonly y: boolean
  /** How much the row counts; 1 where nothing else is said. */
  readonly weight?: number
}

export interface Model {
  readonly bias: number
  readonly weights: readonly number[]
}

export const logOddsOf = ({ bias, weights }: Model, x: readonly number[]): number =>
  x.reduce((sum, v, i) => sum + weights[i]! * v, bias)

export const probability = (model: Model, x: readonly number[]): number =>
  1 / (1 + Math.exp(-logOddsOf(model, x)))

/**
 * The model of least penalised log loss. `penalty` is on the weights of features scaled to unit variance; the bias is free.
 * Source: Hastie, Tibshirani and Friedman (2009), The Elements of Statistical Learning, 4.4.1 (iteratively reweighted least squares).
 */
export function fit(rows: readonly Row[], penalty: number, steps = 12): Model {
  const size = rows[0]!.x.length
  const scale = scalesOf(rows, size)
  const d = size + 1
  let beta = new Float64Array(d)
  for (let step = 0; step < steps; step += 1) {
    const gradient = new Float64Array(d)
    const hessian = Array.from({ length: d }, () => new Float64Array(d))
    const z = new Float64Array(d)
    z[0] = 1
    for (const { x, y, weight = 1 } of rows) {
      for (let i = 0; i < size; i += 1) z[i + 1] = (x[i]! - scale[i]!.mean) / scale[i]!.deviation
      let score = 0
      for (let i = 0; i < d; i += 1) score += beta[i]! * z[i]!
      const p = 1 / (1 + Math.exp(-score))
      const g = weight * ((y ? 1 : 0) - p)
      const h = weight * Math.max(1e-6, p * (1 - p))
      for (let i = 0; i < d; i += 1) {
        gradient[i]! += g * z[i]!
        const row = hessian[i]!
        const hz = h * z[i]!
        for (let j = 0; j <= i; j += 1) row[j]! += hz * z[j]!
      }
    }
    for (let i = 0; i < d; i += 1) {
      const least = i === 0 ? 1e-9 : penalty
      gradient[i]! -= least * beta[i]!
      hessian[i]![i]! += least
      for (let j = 0; j < i; j += 1) hessian[j]![i] = hessian[i]![j]!
    }
    const move = solve(hessian, gradient)
    beta = beta.map((b, i) => b + move[i]!)
    if (move.every((m) => Math.abs(m) < 1e-7)) break
  }
  const weights = scale.map(({ deviation }, i) => beta[i + 1]! / deviation)
  const bias = scale.reduce((b, { mean }, i) => b - weights[i]! * mean, beta[0]!)
  return { bias, weights }
}

function scalesOf(rows: readonly Row[], size: number) {
  return Array.from({ length: size }, (_, i) => {
    const mean = rows.reduce((sum, { x }) => sum + x[i]!, 0) / rows.length
    const variance = rows.reduce((sum, { x }) => sum + (x[i]! - mean) ** 2, 0) / rows.length
    // A feature that never varies tells nothing; its weight stays 0.
    return { mean, deviation: Math.sqrt(variance) || 1 }
  })
}

/** Gauss elimination with partial pivoting, in place. */
function solve(a: Float64Array[], b: Float64Array): Float64Array {
  const n = b.length
  for (let k = 0; k < n; k += 1) {
    let pivot = k
    for (let i = k + 1; i < n; i += 1) if (Math.abs(a[i]![k]!) > Math.abs(a[pivot]![k]!)) pivot = i
    ;[a[k], a[pivot]] = [a[pivot]!, a[k]!]
    ;[b[k], b[pivot]] = [b[pivot]!, b[k]!]
    for (let i = k + 1; i < n; i += 1) {
      const factor = a[i]![k]! / a[k]![k]!
      if (factor === 0) continue
      for (let j = k; j < n; j += 1) a[i]![j]! -= factor * a[k]![j]!
      b[i]! -= factor * b[k]!
    }
  }
  for (let k = n - 1; k >= 0; k -= 1) {
    for (let j = k + 1; j < n; j += 1) b[k]! -= a[k]![j]! * b[j]!
    b[k]! /= a[k]![k]!
  }
  return b
}

/** Logistic regression with a ridge, by Newton's method (iteratively reweighted least squares). Deterministic. */

export interface Example {
  readonly features: readonly number[]
  readonly right: boolean
  readonly weight: number
}

export interface Model {
  readonly mean: readonly number[]
  readonly deviation: readonly number[]
  readonly weights: readonly number[]
  readonly bias: number
}

const ROUNDS = 30
const ENOUGH = 1e-8

/** `ridge`: the penalty on the squared weights of the standardised features; the bias is free. */
export function fit(examples: readonly Example[], ridge: number): Model {
  const size = examples[0]?.features.length ?? 0
  const whole = examples.reduce((sum, { weight }) => sum + weight, 0)
  const mean = range(size).map(
    (k) => examples.reduce((sum, e) => sum + e.weight * e.features[k]!, 0) / whole,
  )
  const deviation = range(size).map((k) => {
    const square = examples.reduce((sum, e) => sum + e.weight * (e.features[k]! - mean[k]!) ** 2, 0)
    return Math.sqrt(square / whole) || 1
  })
  const rows = examples.map((e) => [
    1,
    ...e.features.map((value, k) => (value - mean[k]!) / deviation[k]!),
  ])
  let solution = new Array<number>(size + 1).fill(0)
  for (let round = 0; round < ROUNDS; round += 1) {
    const gradient = solution.map((w, k) => (k === 0 ? 0 : -ridge * w))
    const hessian = solution.map((_, k) => solution.map((_, l) => (k === l && k > 0 ? ridge : 0)))
    rows.forEach((row, i) => {
      const { right, weight } = examples[i]!
      const p = 1 / (1 + Math.exp(-dot(row, solution)))
      const slope = weight * p * (1 - p)
      for (let k = 0; k <= size; k += 1) {
        gradient[k]! += weight * ((right ? 1 : 0) - p) * row[k]!
        for (let l = 0; l <= size; l += 1) hessian[k]![l]! += slope * row[k]! * row[l]!
      }
    })
    const step = solve(hessian, gradient)
    solution = solution.map((w, k) => w + step[k]!)
    if (Math.max(...step.map(Math.abs)) < ENOUGH) break
  }
  return { mean, deviation, weights: solution.slice(1), bias: solution[0]! }
}

export function logitOf(
  { mean, deviation, weights, bias }: Model,
  features: readonly number[],
): number {
  return features.reduce((sum, v, k) => sum + (weights[k]! * (v - mean[k]!)) / deviation[k]!, bias)
}

const range = (n: number): number[] => [...new Array<undefined>(n)].map((_, i) => i)
const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0)

/** Gaussian elimination with partial pivoting. */
function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i]!])
  const n = rows.length
  for (let k = 0; k < n; k += 1) {
    const pivot = range(n)
      .slice(k)
      .reduce((best, r) => (Math.abs(rows[r]![k]!) > Math.abs(rows[best]![k]!) ? r : best), k)
    ;[rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!]
    for (let r = k + 1; r < n; r += 1) {
      const factor = rows[r]![k]! / rows[k]![k]!
      for (let c = k; c <= n; c += 1) rows[r]![c]! -= factor * rows[k]![c]!
    }
  }
  const x = new Array<number>(n).fill(0)
  for (let k = n - 1; k >= 0; k -= 1) {
    const known = range(n)
      .slice(k + 1)
      .reduce((sum, c) => sum + rows[k]![c]! * x[c]!, 0)
    x[k] = (rows[k]![n]! - known) / rows[k]![k]!
  }
  return x
}

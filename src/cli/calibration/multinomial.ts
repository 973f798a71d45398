import type { ClassWeights } from '../../lib/marking'

export interface ClassRow {
  readonly x: readonly number[]
  /** Which class, from 0. */
  readonly y: number
}

/** Steps of the descent; few rows and many features: stopping here is part of the penalty. */
const STEPS = 400
const RATE = 0.03

/**
 * Multinomial logistic regression with an L2 penalty on the weights of features scaled to unit variance; the biases are free. Adam
 * (Kingma and Ba 2015) on the whole data, from zero: deterministic, no chance in it.
 */
export function fitClasses(
  rows: readonly ClassRow[],
  count: number,
  penalty: number,
): ClassWeights[] {
  const size = rows[0]!.x.length
  const means = column(size, (i) => rows.reduce((sum, { x }) => sum + x[i]!, 0) / rows.length)
  const deviations = column(
    size,
    (i) =>
      // A feature that never varies tells nothing; its weight stays 0.
      Math.sqrt(rows.reduce((sum, { x }) => sum + (x[i]! - means[i]!) ** 2, 0) / rows.length) || 1,
  )
  const scaled = rows.map(({ x }) =>
    Float64Array.from([1, ...x.map((v, i) => (v - means[i]!) / deviations[i]!)]),
  )
  const width = size + 1
  const beta = new Float64Array(width * count)
  const [slow, fast] = [new Float64Array(width * count), new Float64Array(width * count)]
  for (let step = 1; step <= STEPS; step += 1) {
    const gradient = new Float64Array(width * count)
    scaled.forEach((z, r) => {
      const p = softmax(z, beta, count)
      for (let c = 0; c < count; c += 1) {
        const off = p[c]! - (rows[r]!.y === c ? 1 : 0)
        for (let i = 0; i < width; i += 1) gradient[c * width + i]! += off * z[i]!
      }
    })
    for (let k = 0; k < beta.length; k += 1) {
      const g = gradient[k]! + (k % width === 0 ? 0 : penalty * beta[k]!)
      slow[k] = 0.9 * slow[k]! + 0.1 * g
      fast[k] = 0.99 * fast[k]! + 0.01 * g * g
      const move = slow[k]! / (1 - 0.9 ** step)
      beta[k]! -= (RATE * move) / (Math.sqrt(fast[k]! / (1 - 0.99 ** step)) + 1e-8)
    }
  }
  return column(count, (c) => {
    const own = beta.subarray(c * width, (c + 1) * width)
    const weights = column(size, (i) => own[i + 1]! / deviations[i]!)
    return { bias: weights.reduce((b, w, i) => b - w * means[i]!, own[0]!), weights }
  })
}

const column = <T>(size: number, make: (i: number) => T): T[] =>
  Array.from({ length: size }, (_, i) => make(i))

function softmax(z: Float64Array, beta: Float64Array, count: number): number[] {
  const width = z.length
  const sums = column(count, (c) => {
    let sum = 0
    for (let i = 0; i < width; i += 1) sum += z[i]! * beta[c * width + i]!
    return sum
  })
  const most = Math.max(...sums)
  const parts = sums.map((sum) => Math.exp(sum - most))
  const whole = parts.reduce((a, b) => a + b, 0)
  return parts.map((part) => part / whole)
}

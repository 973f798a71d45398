/** How far probabilities can be believed. */

export interface Foretold {
  /** The probability that was given, 0 to 1. */
  readonly p: number
  readonly happened: boolean
}

/** Mean squared error of the probabilities: 0 is perfect. Source: Brier (1950), Monthly Weather Review 78(1), 1–3, for two classes. */
export const brierScore = (all: readonly Foretold[]): number =>
  all.reduce((sum, { p, happened }) => sum + (p - (happened ? 1 : 0)) ** 2, 0) / all.length

/** Mean of −ln of the probability given to what happened. */
export const logLoss = (all: readonly Foretold[]): number =>
  -all.reduce((sum, { p, happened }) => sum + Math.log(Math.max(1e-12, happened ? p : 1 - p)), 0) /
  all.length

export interface Bin {
  readonly from: number
  readonly to: number
  readonly count: number
  /** Mean probability given in the bin, and the share that happened. */
  readonly said: number
  readonly happened: number
}

/** The reliability curve: bins of equal width, the empty ones left out. */
export function reliability(all: readonly Foretold[], bins = 10): Bin[] {
  return Array.from({ length: bins }, (_, b) => {
    const inside = all.filter(({ p }) => Math.min(bins - 1, Math.floor(p * bins)) === b)
    return {
      from: b / bins,
      to: (b + 1) / bins,
      count: inside.length,
      said: inside.reduce((sum, { p }) => sum + p, 0) / inside.length,
      happened: inside.filter(({ happened }) => happened).length / inside.length,
    }
  }).filter(({ count }) => count > 0)
}

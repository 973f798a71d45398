import type { ReadPage } from '../1-statements/page'
import type { ReadyPoint } from '../2-ideas/ready'
import { relatedTo } from '../words/relations'

/**
 * How much each statement is about each point: the weighted share of the point's words that stand in it, 0 to 1. It never gives
 * credit; it decides whose statement a statement is, which one to show as nearest, and what is on no point at all.
 */
export class Aboutness {
  /** By point, then by statement. */
  private readonly shares: readonly Float64Array[]
  /** By statement: the greatest share of any point. */
  readonly best: Float64Array

  constructor(page: ReadPage, points: readonly ReadyPoint[]) {
    this.best = new Float64Array(page.statements.length)
    this.shares = points.map((point) => sharesOf(page, point))
    for (const shares of this.shares) {
      shares.forEach((share, s) => {
        if (share > this.best[s]!) this.best[s] = share
      })
    }
  }

  share(point: number, statement: number): number {
    return this.shares[point]![statement] ?? 0
  }

  /** Is no other point clearly nearer to the statement? */
  belongs(point: number, statement: number): boolean {
    const share = this.share(point, statement)
    return share > 0 && share >= 0.8 * this.best[statement]!
  }

  /** The statement nearest to a point, the first of equals; undefined below `least`. */
  nearest(point: number, least: number): number | undefined {
    let best: number | undefined
    this.shares[point]!.forEach((share, s) => {
      if (share >= least && (best === undefined || share > this.shares[point]![best]!)) best = s
    })
    return best
  }
}

function sharesOf(page: ReadPage, point: ReadyPoint): Float64Array {
  const shares = new Float64Array(page.statements.length)
  const textKeys = new Set(point.textKeys)
  let total = 0
  for (const key of textKeys) total += point.weights.get(key) ?? 0
  if (total === 0) return shares
  for (const [key, weight] of point.weights) {
    const inText = textKeys.has(key) ? weight : weight * 0.5
    const seen = new Set<number>()
    for (const posting of page.postings.get(key) ?? []) seen.add(page.statementOf[posting.from]!)
    for (const s of seen) if (s >= 0) shares[s] = shares[s]! + inText
    if (!textKeys.has(key)) continue
    for (const { keys, sign } of relatedTo(key)) {
      if (keys.length > 1 || sign < 0) continue
      for (const posting of page.postings.get(keys[0]!) ?? []) {
        const s = page.statementOf[posting.from]!
        if (s >= 0 && !seen.has(s)) {
          seen.add(s)
          shares[s] = shares[s]! + inText * 0.7
        }
      }
    }
  }
  for (let s = 0; s < shares.length; s += 1) shares[s] = Math.min(1, shares[s]! / total)
  return shares
}

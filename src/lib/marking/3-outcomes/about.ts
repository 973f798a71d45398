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
  /** The same, not divided by the length of the point: what decides whose a statement is. */
  private readonly masses: readonly Float64Array[]
  /** By statement: the greatest share of any point. */
  readonly best: Float64Array
  private readonly greatest: Float64Array

  constructor(page: ReadPage, points: readonly ReadyPoint[]) {
    this.best = new Float64Array(page.statements.length)
    this.greatest = new Float64Array(page.statements.length)
    /** By statement the number of the word that it was last counted for. */
    const seen = new Int32Array(page.statements.length)
    this.masses = points.map((point) => massesOf(page, point, seen))
    this.shares = points.map((point, p) => {
      const total = wholeOf(point)
      return this.masses[p]!.map((mass) => (total === 0 ? 0 : Math.min(1, mass / total)))
    })
    points.forEach((_, p) => {
      for (let s = 0; s < this.best.length; s += 1) {
        this.best[s] = Math.max(this.best[s]!, this.shares[p]![s]!)
        this.greatest[s] = Math.max(this.greatest[s]!, this.masses[p]![s]!)
      }
    })
  }

  share(point: number, statement: number): number {
    return this.shares[point]![statement] ?? 0
  }

  /** Is no other point clearly nearer to the statement? `least`: how near it must come to the nearest, 0 to 1. */
  belongs(point: number, statement: number, least = 0.8): boolean {
    const mass = this.masses[point]![statement] ?? 0
    return mass > 0 && mass >= least * this.greatest[statement]!
  }

  /** The statement nearest to a point, the first of equals; undefined below `least`. */
  nearest(point: number, least: number): number | undefined {
    const shares = this.shares[point]!
    let best: number | undefined
    for (let s = 0; s < shares.length; s += 1)
      if (shares[s]! >= least && (best === undefined || shares[s]! > shares[best]!)) best = s
    return best
  }
}

function wholeOf(point: ReadyPoint): number {
  let total = 0
  for (const key of new Set(point.textKeys)) total += point.weights.get(key) ?? 0
  return total
}

function massesOf(page: ReadPage, point: ReadyPoint, seen: Int32Array): Float64Array {
  const masses = new Float64Array(page.statements.length)
  const textKeys = new Set(point.textKeys)
  let count = 0
  seen.fill(0)
  for (const [key, weight] of point.weights) {
    const inText = textKeys.has(key) ? weight : weight * 0.5
    count += 1
    const add = (from: string, mass: number) => {
      for (const posting of page.postings.get(from) ?? NOWHERE) {
        const statement = page.statementOf[posting.from]!
        if (statement < 0 || seen[statement] === count) continue
        seen[statement] = count
        masses[statement]! += mass
      }
    }
    add(key, inText)
    if (!textKeys.has(key)) continue
    for (const { keys, sign } of relatedTo(key)) {
      // An opposite is still about the same thing.
      if (keys.length === 1) add(keys[0]!, inText * (sign < 0 ? 0.5 : 0.7))
    }
  }
  return masses
}
const NOWHERE: readonly never[] = []

import type { Claim } from '../2-ideas/claims'
import type { Occurrence } from '../2-ideas/find'
import type { ReadyPoint } from '../2-ideas/ready'
import type { Clash } from '../types'
import type { Case } from './judge'

export interface ClashFound {
  readonly kind: Clash['kind']
  readonly statement: number
  readonly at: readonly { readonly from: number; readonly to: number }[]
  readonly against: string
}

/** From this strength on a turned-round idea or a rejected statement clashes. */
const CLASHES = 0.8

/** The first statement of the page that says what the point rules out, if any does. */
export function findClash(
  open: Case,
  index: number,
  claims: readonly Claim[],
  said: readonly (Occurrence | undefined)[],
): ClashFound | undefined {
  const point = open.topic.points[index]!
  return (
    rejected(open, point) ??
    turnedRound(open, index, point, claims, said) ??
    wrongQuantity(open, index, claims, said)
  )
}

function rejected(open: Case, point: ReadyPoint): ClashFound | undefined {
  for (const { wording } of point.rejects) {
    for (const statement of open.page.statements) {
      for (const o of open.finder.wordingIn(wording, statement)) {
        if (o.sign !== 1 || o.strength < CLASHES || takenBack(open, o)) continue
        return { kind: 'rejected', statement: o.statement, at: o.at, against: point.point.text }
      }
    }
  }
  return undefined
}

function turnedRound(
  open: Case,
  index: number,
  point: ReadyPoint,
  claims: readonly Claim[],
  said: readonly (Occurrence | undefined)[],
): ClashFound | undefined {
  const counted = new Set(said.filter(Boolean))
  for (const claim of claims) {
    if (claim.kind === 'equation' || claim.kind === 'value') continue
    for (const o of claim.occurrences) {
      if (o.sign === 1 || o.strength < CLASHES || counted.has(o) || takenBack(open, o)) continue
      if (claim.occurrences.some((other) => other.sign === 1 && other.statement === o.statement && other.strength >= o.strength)) continue
      const others = claims.filter(
        (other) => other !== claim && other.occurrences.some((x) => x.sign === 1 && x.statement === o.statement && x.strength >= 0.7),
      ).length
      const mine = open.about.belongs(index, o.statement) && open.about.share(index, o.statement) >= 0.4
      if (others === 0 && !(mine && o.content >= 2)) continue
      if (!mine && others < 1) continue
      return { kind: o.turned ?? 'opposite', statement: o.statement, at: o.at, against: point.point.text }
    }
  }
  return undefined
}

function wrongQuantity(
  open: Case,
  index: number,
  claims: readonly Claim[],
  said: readonly (Occurrence | undefined)[],
): ClashFound | undefined {
  for (const [c, claim] of claims.entries()) {
    if (claim.kind !== 'equation' && claim.kind !== 'value') continue
    for (const o of claim.occurrences) {
      if (o.sign === 1 || takenBack(open, o)) continue
      if (claim.occurrences.some((x) => x.sign === 1 && x.statement === o.statement)) continue
      const ideas = claims.filter((other, k) => k !== c && other.occurrences.some((x) => x.sign === 1 && x.statement === o.statement && x.strength >= 0.7)).length
      const others = claims.length - 1
      const enough = claim.kind === 'equation' || (others > 0 && ideas >= Math.max(1, others - 1) && open.about.belongs(index, o.statement))
      if (!enough) continue
      void said
      return { kind: claim.kind, statement: o.statement, at: o.at, against: claim.label }
    }
  }
  return undefined
}

function takenBack(open: Case, o: Occurrence): boolean {
  return o.at.some(({ from }) => open.page.struck[from]! > 0)
}

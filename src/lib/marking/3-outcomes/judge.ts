import { bareTokens } from '../1-statements/bare'
import type { ReadPage } from '../1-statements/page'
import { claimsOf, type Claim } from '../2-ideas/claims'
import { Finder } from '../2-ideas/find'
import type { Occurrence } from '../2-ideas/occurrence'
import type { ReadyPoint, ReadyTopic } from '../2-ideas/ready'
import type { Outcome } from '../types'
import { Aboutness } from './about'
import { findClash, type ClashFound } from './clash'
import { stepsInOrder } from './steps'
import { doubted } from './doubt'
import { Roles } from './exchanged'
import { Subjects } from './subjects'
import { pointEvidence, surenessFrom } from './sureness'
import { DOUBTED, DRAFT_FULL } from './thresholds'
import { carriedOn } from './together'
import { bestWindow, type Window } from './window'

/** Everything that judging one page needs, made once for the page. */
export interface Case {
  readonly page: ReadPage
  readonly topic: ReadyTopic
  readonly finder: Finder
  readonly about: Aboutness
  readonly carried: readonly boolean[]
  readonly bare: Uint8Array
  readonly subjects: Subjects
  /** For each point what it needs and everywhere that the page says it; heaps of key words left out. */
  readonly everyClaim: readonly (readonly Claim[])[]
  /** For each statement the points of which it says something, in their order. */
  readonly pointsIn: readonly (readonly number[])[]
  /** The same without what is said of something else. */
  readonly claims: readonly (readonly Claim[])[]
}

export interface Judgement {
  readonly outcome: Outcome
  readonly claims: readonly Claim[]
  /** For each claim the occurrence that counts, if any. */
  readonly said: readonly (Occurrence | undefined)[]
  readonly clash?: ClashFound
  readonly nearest?: number
  /** The share of the point's words that is said in the best place. */
  readonly cover: number
  readonly sureness: number
  readonly offered: boolean
  /** The outcome follows a mark that was changed before. */
  readonly learnt?: 'accepted' | 'refused'
  /** Full, although not every drafted idea was found: the statement that says the point. */
  readonly inOtherWords?: number
  /** The statement that says the point in an accepted wording. */
  readonly accepted?: number
}

export function openCase(page: ReadPage, topic: ReadyTopic): Case {
  const finder = new Finder(page)
  const bare = bareTokens(page)
  const subjects = new Subjects(page, topic, finder)
  const roles = new Roles(topic, finder, subjects)
  const hedged = doubted(page)
  const sure = (o: Occurrence): Occurrence =>
    hedged.has(o.statement) && o.sign === 1 ? { ...o, strength: o.strength * DOUBTED } : o
  const heaps = bare.includes(1)
  const everyClaim = topic.points.map((point) => {
    const claims = claimsOf(point, finder)
    return heaps ? claims.map((claim) => withoutHeaps(bare, point, claim)) : claims
  })
  const own = (claim: Claim, isForeign: (o: Occurrence) => boolean): Claim => {
    if (claim.occurrences.length === 0) return claim
    const occurrences: Occurrence[] = []
    for (const o of claim.occurrences) {
      if (isForeign(o)) continue
      occurrences.push(claim.kind === 'idea' ? subjects.parted(sure(o)) : sure(o))
    }
    return { ...claim, occurrences }
  }
  return {
    page,
    topic,
    finder,
    about: new Aboutness(page, topic.points),
    carried: carriedOn(page),
    bare,
    subjects,
    everyClaim,
    pointsIn: pointsByStatement(page, everyClaim),
    claims: everyClaim.map((claims, index) => {
      const isForeign = subjects.foreignTo(index)
      return roles.inOrder(
        index,
        claims.map((claim) => own(claim, isForeign)),
      )
    }),
  }
}

function pointsByStatement(
  page: ReadPage,
  everyClaim: readonly (readonly Claim[])[],
): readonly (readonly number[])[] {
  const pointsIn: number[][] = page.statements.map(() => [])
  everyClaim.forEach((claims, index) => {
    for (const { occurrences } of claims)
      for (const { statement } of occurrences) {
        const points = pointsIn[statement]!
        if (points[points.length - 1] !== index) points.push(index)
      }
  })
  return pointsIn
}

/** The judgement of the rules alone; see `verdict.ts` for what else decides a drafted point. */
export function judgeByRule(open: Case, index: number): Judgement {
  const point = open.topic.points[index]!
  const claims = open.claims[index]!
  const best = bestWindow(open, index, claims)
  const order = point.point.steps ? stepsInOrder(open.page, claims) : undefined
  const said = order?.said ?? best?.said ?? claims.map(() => undefined)
  const clash = findClash(open, index, claims, said)
  const count = said.filter(Boolean).length
  const needed = neededOf(point, claims)
  const nearest = mostSaid(said) ?? open.about.nearest(index, 0.25)

  let outcome: Outcome = 'missed'
  if (clash || order?.swapped) outcome = 'contradicted'
  else if (byCover(point) ? draftedFull(claims, best) : needed > 0 && count >= needed)
    outcome = 'full'
  else if (best && countsAsPart(open, point, index, claims, said)) outcome = 'partial'

  const share = needed === 0 ? 0 : Math.min(1, count / needed)
  const cover = best?.cover ?? 0
  const sureness = point.drafted
    ? surenessFrom(pointEvidence(open, index, { cover, clashes: clash !== undefined }))
    : clash
      ? 0
      : share * (best?.strength ?? 0)
  return {
    outcome,
    claims,
    said,
    ...(clash ? { clash } : order?.swapped ? { clash: order.swapped } : {}),
    ...(nearest !== undefined && outcome !== 'full' ? { nearest } : {}),
    cover,
    sureness,
    offered:
      (outcome === 'missed' || outcome === 'partial') &&
      nearest !== undefined &&
      open.about.share(index, nearest) >= 0.5,
  }
}

/** A drafted point is full where most of its words are said, and no idea of weight is left out. */
function draftedFull(claims: readonly Claim[], best: Window | undefined): boolean {
  if (!best || best.cover < DRAFT_FULL) return false
  const whole = claims.reduce((sum, { idea }) => sum + (idea?.weight ?? 1), 0)
  return claims.every(
    ({ idea, kind }, c) =>
      best.said[c] !== undefined || (kind === 'idea' && (idea?.weight ?? 1) < whole * SMALL_IDEA),
  )
}

/** Drafted ideas are weighed together; drafted steps and an equation are all needed, as an author's are. */
export const byCover = ({ drafted, point }: ReadyPoint): boolean =>
  drafted && !point.steps && !point.equation && point.any === undefined

const SMALL_IDEA = 0.15

/** The statement that says most of the ideas that were found; the first of equals. */
export function mostSaid(said: readonly (Occurrence | undefined)[]): number | undefined {
  const counts = new Map<number, number>()
  for (const o of said) if (o) counts.set(o.statement, (counts.get(o.statement) ?? 0) + 1)
  return [...counts].sort((a, b) => b[1] - a[1] || a[0] - b[0])[0]?.[0]
}

function neededOf(point: ReadyPoint, claims: readonly Claim[]): number {
  const extras = claims.filter(
    (claim) => claim.kind === 'equation' || claim.kind === 'value',
  ).length
  return Math.min(point.need, point.ideas.length) + extras
}

// Key words that relate to nothing state nothing, except in a list point, which asks for names.
function withoutHeaps(bare: Uint8Array, point: ReadyPoint, claim: Claim): Claim {
  if (point.point.any !== undefined || claim.kind === 'equation') return claim
  const stated = (o: Occurrence) => o.at.some(({ from }) => !bare[from])
  return {
    ...claim,
    occurrences: claim.occurrences.filter(stated),
    halves: claim.halves.filter(stated),
  }
}

/** Rule of partial: ideas said as part of this point. Two of them speak for themselves; one must stand in a statement about this point. */
function countsAsPart(
  open: Case,
  point: ReadyPoint,
  index: number,
  claims: readonly Claim[],
  said: readonly (Occurrence | undefined)[],
): boolean {
  const got = claims.map((claim, c) =>
    claim.idea?.given ? undefined : (said[c] ?? claim.halves[0]),
  )
  const found = got.filter((o): o is Occurrence => o !== undefined)
  if (found.length === 0) return false
  if (point.point.any !== undefined || (found.length >= 2 && !point.drafted)) return true
  return claims.some((claim, c) => {
    const o = got[c]
    if (!o) return false
    if (claim.kind === 'equation') return true
    const share = open.about.share(index, o.statement)
    return share >= 0.3 && open.about.belongs(index, o.statement)
  })
}

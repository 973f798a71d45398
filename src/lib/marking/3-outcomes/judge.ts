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
import { rolesSwapped } from './roles'
import { Subjects } from './subjects'
import { DRAFT_FULL, SAID, SAID_LOOSE } from './thresholds'
import { carriedOn, windowsAt } from './together'

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
  readonly sureness: number
  readonly offered: boolean
}

export function openCase(page: ReadPage, topic: ReadyTopic): Case {
  const finder = new Finder(page)
  const bare = bareTokens(page)
  const subjects = new Subjects(page, topic, finder)
  const swaps = new Map<string, boolean>()
  // Things in each other's roles turn a statement round, and a second time right (`Saturn is smaller than Jupiter`).
  const inRoles = (index: number, o: Occurrence): Occurrence => {
    const a = subjects.at(o.at[0]!.from)
    const assertion = subjects.assertions[a]
    if (!assertion || o.content < 2) return o
    const id = `${index} ${a}`
    const swapped = swaps.get(id) ?? rolesSwapped(topic, topic.points[index]!, finder, assertion)
    swaps.set(id, swapped)
    if (!swapped) return o
    const { turned: _, ...rest } = o
    return o.sign === 1 ? { ...rest, sign: -1, turned: 'swapped' } : { ...rest, sign: 1 }
  }
  const everyClaim = topic.points.map((point) =>
    claimsOf(point, finder).map((claim) => withoutHeaps(bare, point, claim)),
  )
  return {
    page,
    topic,
    finder,
    about: new Aboutness(page, topic.points),
    carried: carriedOn(page),
    bare,
    subjects,
    everyClaim,
    claims: everyClaim.map((claims, index) =>
      claims.map((claim) => ({
        ...claim,
        occurrences: claim.occurrences
          .filter((o) => !subjects.isForeign(index, o))
          .map((o) => (claim.idea ? inRoles(index, o) : o)),
      })),
    ),
  }
}

export function judge(open: Case, index: number): Judgement {
  const point = open.topic.points[index]!
  const claims = open.claims[index]!
  const best = bestWindow(open, point, index, claims)
  const order = point.point.steps ? stepsInOrder(open.page, claims) : undefined
  const said = order?.said ?? best?.said ?? claims.map(() => undefined)
  const clash = findClash(open, index, claims, said)
  const count = said.filter(Boolean).length
  const needed = neededOf(point, claims)
  const nearest = open.about.nearest(index, 0.25)

  let outcome: Outcome = 'missed'
  if (clash || order?.swapped) outcome = 'contradicted'
  else if (point.drafted ? (best?.cover ?? 0) >= DRAFT_FULL : needed > 0 && count >= needed)
    outcome = 'full'
  else if (best && countsAsPart(open, point, index, claims, said)) outcome = 'partial'

  const share = needed === 0 ? 0 : Math.min(1, count / needed)
  const sureness = clash ? 0 : point.drafted ? (best?.cover ?? 0) : share * (best?.strength ?? 0)
  return {
    outcome,
    claims,
    said,
    ...(clash ? { clash } : order?.swapped ? { clash: order.swapped } : {}),
    ...(nearest !== undefined && outcome !== 'full' ? { nearest } : {}),
    sureness,
    offered:
      (outcome === 'missed' || outcome === 'partial') &&
      nearest !== undefined &&
      open.about.share(index, nearest) >= 0.5,
  }
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

interface Window {
  readonly said: readonly (Occurrence | undefined)[]
  readonly count: number
  readonly strength: number
  /** The share of the point's words that is said, each idea by its weight. */
  readonly cover: number
}

/** The run of statements that says most of the point: most ideas, then the strongest, then the shortest and first. */
function bestWindow(
  open: Case,
  point: ReadyPoint,
  index: number,
  claims: readonly Claim[],
): Window | undefined {
  const starts = new Set<number>()
  for (const claim of claims) {
    for (const o of claim.occurrences) {
      starts.add(o.statement)
      if (o.statement > 0) starts.add(o.statement - 1)
    }
  }
  const wide = point.point.any !== undefined
  let best: Window | undefined
  for (const s of [...starts].sort((a, b) => a - b)) {
    const windows = wide ? [[s, s + 7] as const] : windowsAt(s, open.carried)
    for (const [from, to] of windows) {
      if (!wide && contrasts(claims, from, to)) continue
      const window = readWindow(claims, from, to)
      const value =
        (point.drafted ? window.cover * claims.length : window.count + window.strength * 0.5) +
        open.about.share(index, s) * 0.3
      if (
        (window.count > 0 || (point.drafted && window.cover > 0)) &&
        (!best || value > valueOf(best))
      ) {
        best = window
        bestValue.set(best, value)
      }
    }
  }
  return best
}
const bestValue = new WeakMap<Window, number>()
const valueOf = (window: Window) => bestValue.get(window) ?? 0

// `Above it there is … Below it there is …`: the second statement turns round what the first says, so it does not carry on.
function contrasts(claims: readonly Claim[], from: number, to: number): boolean {
  if (from === to) return false
  return claims.some((claim) => {
    const here = claim.occurrences.filter(
      (o) => o.statement >= from && o.statement <= to && o.strength >= SAID,
    )
    const plus = here.find((o) => o.sign === 1)
    return plus !== undefined && here.some((o) => o.sign === -1 && o.statement !== plus.statement)
  })
}

function readWindow(claims: readonly Claim[], from: number, to: number): Window {
  const inside = (o: Occurrence) => o.statement >= from && o.statement <= to
  const turned = reverseArgument(claims, inside)
  const said = claims.map((claim) => {
    const options = claim.occurrences.filter(
      (o) =>
        inside(o) &&
        o.strength >= (claim.idea?.loose ? SAID_LOOSE : SAID) &&
        (o.sign === 1 || turned.has(o)),
    )
    return options.reduce<Occurrence | undefined>(
      (best, o) => (!best || o.strength > best.strength ? o : best),
      undefined,
    )
  })
  const found = said.filter((o): o is Occurrence => o !== undefined)
  return {
    said,
    cover: coverOf(claims, (o) => inside(o) && (o.sign === 1 || turned.has(o))),
    count: found.length,
    strength: found.length === 0 ? 0 : found.reduce((sum, o) => sum + o.strength, 0) / found.length,
  }
}

function coverOf(claims: readonly Claim[], counts: (o: Occurrence) => boolean): number {
  let got = 0
  let whole = 0
  for (const { occurrences, idea } of claims) {
    const weight = idea?.weight ?? 1
    whole += weight
    got += weight * Math.max(0, ...occurrences.filter(counts).map((o) => o.strength))
  }
  return whole === 0 ? 0 : got / whole
}

/**
 * Rule 9: both sides turned round is the same statement. Where two or more ideas with a direction are said the other way round
 * in the window, and none of those is also said the right way, they count.
 */
function reverseArgument(
  claims: readonly Claim[],
  inside: (o: Occurrence) => boolean,
): ReadonlySet<Occurrence> {
  const turned: Occurrence[] = []
  let straight = 0
  for (const claim of claims) {
    const here = claim.occurrences.filter((o) => inside(o) && o.strength >= SAID && o.directional)
    if (here.some((o) => o.sign === 1)) straight += 1
    else turned.push(...here.filter((o) => o.sign === -1))
  }
  return new Set(straight === 0 && turned.length >= 2 ? turned : [])
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

import { foundIn, type Claim } from '../2-ideas/claims'
import type { Occurrence } from '../2-ideas/occurrence'
import type { Case } from './judge'
import { tellsRelation } from './reverse'
import { SAID, SAID_LOOSE } from './thresholds'
import { longestAt, windowsAt } from './together'

/** What a run of statements says of one point. */
export interface Window {
  /** For each claim the occurrence that counts, if any. */
  readonly said: readonly (Occurrence | undefined)[]
  readonly count: number
  /** Mean strength of what is said. */
  readonly strength: number
  /** The share of the point's words that is said, each idea by its weight. */
  readonly cover: number
}

/** Items of a list may stand this many statements apart. */
const LIST_REACH = 7

/** The run of statements that says most of the point: most ideas, then the strongest, then the shortest and first. */
export function bestWindow(
  open: Case,
  index: number,
  claims: readonly Claim[],
): Window | undefined {
  const { drafted, point } = open.topic.points[index]!
  const wide = point.any !== undefined
  const { starts, most } = promisesOf(open, claims, drafted)
  const aboutness = (s: number) => open.about.share(index, s) * 0.3
  /** No window that begins there is worth more. */
  const atMost = (s: number): number => {
    let sum = STRENGTH_COUNTS + ROUNDING + aboutness(s)
    const last = s + (wide ? LIST_REACH : longestAt(s, open.carried))
    for (let k = s; k <= last; k += 1) sum += most[k]!
    return sum
  }
  let best: { window: Window; value: number; at: number } | undefined
  const read = (s: number) => {
    for (const [from, to] of wide ? [[s, s + LIST_REACH] as const] : windowsAt(s, open.carried)) {
      const here = claims.map((claim) => foundIn(claim, from, to))
      if (!wide && from !== to && contrasts(here)) continue
      const window = readWindow(claims, here, open)
      const { count, cover, strength } = window
      const value =
        (drafted ? cover * claims.length : count + strength * STRENGTH_COUNTS) + aboutness(s)
      const says = count > 0 || (drafted && cover > 0)
      const better = !best || value > best.value || (value === best.value && s < best.at)
      if (says && better) best = { window, value, at: s }
    }
  }
  // Most statements have nothing but one idea that stands everywhere. The most promising is read first: then few of the others can be better.
  let first: number | undefined
  for (const s of starts) if (first === undefined || atMost(s) > atMost(first)) first = s
  if (first !== undefined) read(first)
  for (const s of starts) if (s !== first && (!best || atMost(s) >= best.value)) read(s)
  return best?.window
}

/** Where a window may begin, in order, and how much what is found in each statement adds to the value of one, at the most. */
function promisesOf(
  { page }: Case,
  claims: readonly Claim[],
  drafted: boolean,
): { readonly starts: readonly number[]; readonly most: Float64Array } {
  const begins = new Uint8Array(page.statements.length)
  const most = new Float64Array(page.statements.length + LIST_REACH + 1)
  const gains = gainsOf(drafted, claims)
  for (const [c, claim] of claims.entries()) {
    const least = drafted ? 0 : leastOf(claim)
    let counted = -1
    for (const { statement, strength, sign, directional } of claim.occurrences) {
      if (strength < least) continue
      begins[statement] = 1
      if (statement > 0) begins[statement - 1] = 1
      // What is turned round counts only as one side of a reverse argument.
      if (statement === counted || (sign === -1 && !directional)) continue
      most[statement]! += gains[c]!
      counted = statement
    }
  }
  const starts: number[] = []
  for (let s = 0; s < begins.length; s += 1) if (begins[s]) starts.push(s)
  return { starts, most }
}

/** What each claim adds to the value of a window, at the most. */
function gainsOf(drafted: boolean, claims: readonly Claim[]): readonly number[] {
  const whole = wholeOf(claims)
  return claims.map(({ idea }) =>
    drafted ? (whole === 0 ? 0 : ((idea?.weight ?? 1) / whole) * claims.length) : 1,
  )
}

const wholeOf = (claims: readonly Claim[]): number =>
  claims.reduce((sum, { idea }) => sum + (idea?.weight ?? 1), 0)

/** What the strength of what is said adds to the count of it. */
const STRENGTH_COUNTS = 0.5
const ROUNDING = 1e-9

type Here = readonly (readonly Occurrence[])[]

// `Above it there is … Below it there is …`: the second statement turns round what the first says, so it does not carry on.
function contrasts(here: Here): boolean {
  return here.some((occurrences) => {
    const sure = occurrences.filter((o) => o.strength >= SAID)
    const plus = sure.find((o) => o.sign === 1)
    return plus !== undefined && sure.some((o) => o.sign === -1 && o.statement !== plus.statement)
  })
}

function readWindow(claims: readonly Claim[], here: Here, open: Case): Window {
  const turned = reverseArgument(here, open)
  const counting = here.map((occurrences) =>
    occurrences.filter((o) => o.sign === 1 || turned.has(o)),
  )
  const said = paidOnce(
    claims,
    counting.map((occurrences, c) => {
      const best = strongest(occurrences)
      return best && best.strength >= leastOf(claims[c]!) ? best : undefined
    }),
    counting,
  )
  const found = said.filter((o): o is Occurrence => o !== undefined)
  const weights = claims.map(({ idea }) => idea?.weight ?? 1)
  const whole = weights.reduce((a, b) => a + b, 0)
  const got = counting.reduce(
    (sum, occurrences, c) => sum + weights[c]! * (strongest(occurrences)?.strength ?? 0),
    0,
  )
  return {
    said,
    cover: whole === 0 ? 0 : got / whole,
    count: found.length,
    strength: found.length === 0 ? 0 : found.reduce((sum, o) => sum + o.strength, 0) / found.length,
  }
}

/**
 * One word does not pay for two ideas: an idea whose words are all spent on another, fuller one is said only where it has another
 * place.
 */
function paidOnce(
  claims: readonly Claim[],
  said: readonly (Occurrence | undefined)[],
  counting: Here,
): (Occurrence | undefined)[] {
  const chosen = [...said]
  const isIdea = (c: number) => claims[c]!.kind === 'idea'
  const spent = (o: Occurrence, c: number) =>
    chosen.some(
      (other, d) =>
        other !== undefined &&
        c !== d &&
        isIdea(d) &&
        covers(other, o) &&
        (!covers(o, other) || d < c),
    )
  chosen.forEach((o, c) => {
    if (!o || !isIdea(c) || !spent(o, c)) return
    const least = leastOf(claims[c]!)
    chosen[c] = counting[c]!.find((other) => other.strength >= least && !spent(other, c))
  })
  return chosen
}

const leastOf = ({ idea }: Claim): number => (idea?.loose ? SAID_LOOSE : SAID)

function covers(one: Occurrence, two: Occurrence): boolean {
  return two.at.every((b) => one.at.some((a) => a.from <= b.from && b.to <= a.to))
}

function strongest(occurrences: readonly Occurrence[]): Occurrence | undefined {
  return occurrences.reduce<Occurrence | undefined>(
    (a, b) => (!a || b.strength > a.strength ? b : a),
    undefined,
  )
}

/**
 * Rule 9: both sides turned round is the same statement. Where two or more ideas with a direction are said the other way round
 * in the window, and none of those is also said the right way, they count.
 */
function reverseArgument(here: Here, { page }: Case): ReadonlySet<Occurrence> {
  const turned: Occurrence[] = []
  let straight = 0
  for (const occurrences of here) {
    const directional = occurrences.filter((o) => o.strength >= SAID && o.directional)
    if (directional.some((o) => o.sign === 1)) straight += 1
    else
      turned.push(...directional.filter((o) => o.sign === -1 && tellsRelation(page, o.statement)))
  }
  return new Set(straight === 0 && turned.length >= 2 ? turned : [])
}

import { isDirectionWord } from '../lexicon'
import { foundIn, type Claim } from '../2-ideas/claims'
import type { Occurrence } from '../2-ideas/occurrence'
import type { Clash } from '../types'
import { isDirectional } from '../words/relations'
import { pointsWith } from '../2-ideas/ready'
import type { Case } from './judge'
import { crossedParts } from './crossed'
import { rejectedBy } from './rejected'
import { tellsRelation } from './reverse'
import { swappedPartner } from './swapped'
import { CLASHES, CLASHES_LOOSE, SAID } from './thresholds'

export interface ClashFound {
  readonly kind: Clash['kind']
  readonly statement: number
  readonly at: readonly { readonly from: number; readonly to: number }[]
  readonly against: string
}

/** The first thing on the page that the point rules out, if any: rule 11 has it cost the point even beside a right statement. */
export function findClash(
  open: Case,
  index: number,
  claims: readonly Claim[],
  said: readonly (Occurrence | undefined)[],
): ClashFound | undefined {
  return (
    rejectedBy(open, index) ??
    turnedRound(open, index, claims, said) ??
    wrongQuantity(open, index, claims) ??
    otherYear(open, index, claims) ??
    swappedPartner(open, index) ??
    crossedParts(open, index)
  )
}

function turnedRound(
  open: Case,
  index: number,
  claims: readonly Claim[],
  said: readonly (Occurrence | undefined)[],
): ClashFound | undefined {
  const counted = new Set(said.filter(Boolean))
  const against = open.topic.points[index]!.point.text
  for (const claim of claims) {
    if (claim.kind === 'equation' || claim.kind === 'value') continue
    for (const o of claim.occurrences) {
      if (
        o.sign === 1 ||
        o.strength < (claim.idea?.loose ? CLASHES_LOOSE : CLASHES) ||
        counted.has(o) ||
        takenBack(open, o)
      )
        continue
      if (claim.idea?.loose && o.turned === 'opposite' && hasBoth(open, index, o)) continue
      if (o.slots > 0 && ofAnother(open, index, claims, claim, o)) continue
      if (saidIn(claim, o.statement) || inReverse(open, claims, o.statement)) continue
      if (!isAbout(open, index, claims, claim, o)) continue
      // One word against another (erode for deposit) proves nothing without a second word of the idea.
      const beside = claims.filter((x) => x !== claim && saidIn(x, o.statement)).length
      if (claim.idea?.loose && beside === 0 && isGivenAway(open, o)) continue
      if (o.turned === 'opposite' && o.content < 2 && !o.directional && beside < 2) continue
      if (o.turned === 'negated' && !deniesThePoint(open, index, o)) continue
      return { kind: o.turned ?? 'opposite', statement: o.statement, at: o.at, against }
    }
  }
  return undefined
}

// `first words … last words`: a text with both of two opposites does not say which of them a drafted idea excludes.
function hasBoth(open: Case, index: number, o: Occurrence): boolean {
  const own = open.topic.points[index]!.textKeys
  return o.at.every(({ from }) => own.includes(open.page.keys[from]!))
}

// `demand rises` in a topic on demand: what has a direction there is any of its points' thing.
function isGivenAway({ page, topic }: Case, o: Occurrence): boolean {
  return o.at.every(({ from }) => {
    const key = page.keys[from]!
    return isDirectional(key) || topic.titleKeys.has(key)
  })
}

// The word in the place of this idea's own (demand for supply) belongs to another idea of the point, or the statement is about a point that asks for it.
function ofAnother(
  { page, topic, about }: Case,
  index: number,
  claims: readonly Claim[],
  claim: Claim,
  o: Occurrence,
): boolean {
  const keys = o.at.map(({ from }) => page.keys[from]!).filter((key) => !isDirectional(key))
  const foreign = keys.filter((key) => !asksFor(claim, key))
  if (foreign.some((key) => claims.some((other) => other !== claim && asksFor(other, key))))
    return true
  const asked = topic.points[index]!.weights
  if (foreign.every((key) => asked.has(key))) return false
  return pointsWith(topic, keys[0]!).some(
    (other) =>
      other !== index &&
      about.share(other, o.statement) >= about.share(index, o.statement) &&
      keys.every((key) => topic.points[other]!.weights.has(key)),
  )
}

const asksFor = ({ idea }: Claim, key: string): boolean =>
  idea?.parts.some((part) =>
    part.some(({ units }) => units.some(({ keys }) => keys.includes(key))),
  ) ?? false

// Rule 9: two ideas turned round in one statement are a reverse argument.
function inReverse(open: Case, claims: readonly Claim[], statement: number): boolean {
  if (!tellsRelation(open.page, statement)) return false
  const directional = claims.filter((claim) =>
    foundIn(claim, statement).some((o) => o.directional && o.strength >= SAID),
  )
  const turned = directional.filter((claim) => !saidIn(claim, statement))
  return turned.length >= 2 && turned.length === directional.length
}

// The statement must be about this point: another of its ideas stands there, or no other point is nearer and the idea itself has body.
function isAbout(
  open: Case,
  index: number,
  claims: readonly Claim[],
  claim: Claim,
  o: Occurrence,
): boolean {
  const share = open.about.share(index, o.statement)
  const owned = o.at.every(({ from }) => open.subjects.owns(index, open.subjects.at(from)))
  if (owned && o.content >= 2) return true
  // All the rest of the point is told beside it, and nowhere the right thing: then it is this point that is told.
  const rest = claims.filter((other) => other !== claim)
  const rightly = claim.occurrences.some((x) => x.sign === 1 && x.strength >= SAID)
  if (
    rest.length > 0 &&
    !rightly &&
    o.content >= 2 &&
    o.turned !== 'swapped' &&
    rest.every((other) => saidIn(other, o.statement)) &&
    open.about.belongs(index, o.statement, 0.5)
  )
    return true
  if (tellsSubject(open, index, claims, claim, o)) return true
  if (!open.about.belongs(index, o.statement, 0.9) || share < 0.3) return false
  const others = claims.filter((other) => other !== claim && saidIn(other, o.statement)).length
  return others > 0 || (o.content >= 2 && share >= 0.45) || (!claim.idea?.loose && share >= 0.65)
}

/** From this share on a statement is about a point that another has more words of. */
const ABOUT = 0.4

/**
 * What the point begins with, its subject or its condition, is told rightly beside it, and nothing of it is told that would fit
 * another point better: no other point that the statement is as much about has as great a share said there, with nothing turned round.
 */
function tellsSubject(
  open: Case,
  index: number,
  claims: readonly Claim[],
  claim: Claim,
  o: Occurrence,
): boolean {
  const [first] = claims
  if (!first || first === claim || first.idea?.given || !saidIn(first, o.statement)) return false
  if (!claims.every((other) => saidIn(other, o.statement) || turnedIn(other, o.statement)))
    return false
  const told = (of: readonly Claim[]) =>
    of.filter((other) => saidIn(other, o.statement)).length / Math.max(1, of.length)
  const own = told(claims)
  const share = open.about.share(index, o.statement)
  // Said rightly anywhere it is no slip of the point's own statement.
  const rightly = claim.occurrences.some((x) => x.sign === 1 && x.strength >= SAID)
  return open.pointsIn[o.statement]!.every((p) => {
    const others = open.claims[p]!
    return (
      p === index ||
      told(others) < own ||
      (!rightly && share >= ABOUT && open.about.share(p, o.statement) < share) ||
      others.some((other) => !saidIn(other, o.statement) && turnedIn(other, o.statement))
    )
  })
}

function turnedIn(claim: Claim, statement: number): boolean {
  return foundIn(claim, statement).some((o) => o.sign === -1 && o.strength >= SAID)
}

function saidIn(claim: Claim, statement: number): boolean {
  return foundIn(claim, statement).some((o) => o.sign === 1 && o.strength >= SAID)
}

// One denied word is a denial of the point only where the statement is plainly about it.
function deniesThePoint(open: Case, index: number, o: Occurrence): boolean {
  const owned = o.at.every(({ from }) => open.subjects.owns(index, open.subjects.at(from)))
  const least = o.denied ? 0.55 : 0.4
  if (o.content < 2 && !owned && open.about.share(index, o.statement) < least) return false
  return o.denied ? plainlyDenied(open, o) : true
}

/** What turns a whole statement, and what turns the clause that it stands in. */
const TURNS = /^(?:unless|until)$/
const LIMITS = /^(?:nobody|nothing|wrong|only)$/

// A denial that stands close before what it denies and is the only one of its statement; "unless" and "until" turn it round.
function plainlyDenied({ page }: Case, o: Occurrence): boolean {
  const first = o.at.find(({ from }) => page.negatedBy[from]! >= 0)
  if (!first) return false
  const negator = page.negatedBy[first.from]!
  if (first.from - negator > 4) return false
  for (let i = negator + 1; i < first.from; i += 1)
    if (isDirectionWord(page.tokens[i]!.text)) return false
  const { from, to } = page.statements[o.statement]!
  for (let i = from; i < to; i += 1) {
    const word = page.tokens[i]!.text
    if (TURNS.test(word)) return false
    if (LIMITS.test(word) && page.clauseOf[i] === page.clauseOf[first.from]) return false
  }
  return true
}

function wrongQuantity(
  open: Case,
  index: number,
  claims: readonly Claim[],
): ClashFound | undefined {
  for (const claim of claims) {
    if (claim.kind !== 'equation' && claim.kind !== 'value') continue
    const others = claims.filter((other) => other !== claim)
    for (const o of claim.occurrences) {
      if (o.sign === 1 || takenBack(open, o) || saidIn(claim, o.statement)) continue
      const ideas = others.filter((other) => saidIn(other, o.statement)).length
      const told =
        claim.kind === 'equation' ||
        (ideas >= Math.max(1, others.length - 1) && open.about.belongs(index, o.statement))
      if (told) return { kind: claim.kind, statement: o.statement, at: o.at, against: claim.label }
    }
  }
  return undefined
}

// An idea that is nothing but a year, beside another year where the rest of the point is told.
function otherYear(open: Case, index: number, claims: readonly Claim[]): ClashFound | undefined {
  const { page, about } = open
  for (const claim of claims) {
    const year = /^\d{4}$/.exec(claim.label.trim())?.[0]
    if (!year || claim.kind !== 'idea') continue
    for (const statement of page.statements) {
      const years: number[] = []
      for (let i = statement.from; i < statement.to; i += 1) {
        if (/^1\d{3}$|^20\d{2}$/.test(page.tokens[i]!.text) && page.struck[i] === 0) years.push(i)
      }
      const [other] = years
      if (years.length !== 1 || page.tokens[other!]!.text === year) continue
      const rest = claims.filter((x) => x !== claim && saidIn(x, statement.index)).length
      if (rest * 2 < claims.length - 1 || !about.belongs(index, statement.index, 0.9)) continue
      return {
        kind: 'value',
        statement: statement.index,
        at: [{ from: other!, to: other! + 1 }],
        against: year,
      }
    }
  }
  return undefined
}

export function takenBack(open: Case, o: Occurrence): boolean {
  return o.at.some(({ from }) => open.page.struck[from]! > 0)
}

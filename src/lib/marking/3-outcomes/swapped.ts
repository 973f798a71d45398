import type { Assertion } from '../1-statements/assertions'
import { foundIn, type Claim } from '../2-ideas/claims'
import type { ClashFound } from './clash'
import type { Case } from './judge'
import { termIndex } from './subjects'
import { SAID, SAID_LOOSE } from './thresholds'

/**
 * Rule 10: the term of this point with what belongs to another point ("a tombolo is a spit across a bay"). The subject of an assertion
 * is this point's own term; what is said of it says nothing of this point, but most of another point that has a term of its own.
 */
export function swappedPartner(open: Case, index: number): ClashFound | undefined {
  const term = termIndex(open.topic, index)
  if (term === undefined) return undefined
  const { subjects, page } = open
  for (const place of subjects.places[index]!) {
    if (page.struck[place.from]) continue
    const a = subjects.at(place.from)
    const assertion = subjects.assertions[a]
    if (!assertion || place.from >= assertion.subject.to) continue
    const body = assertion.body
    if (saysOf(open, open.claims[index]!, term, assertion) > 0) continue
    if (!partnersIn(open, a).some((other) => other !== index)) continue
    return {
      kind: 'swapped',
      statement: assertion.statement,
      at: [{ from: place.from, to: place.to }, body],
      against: open.topic.points[index]!.point.text,
    }
  }
  return undefined
}

/** The points of whose ideas most are said in an assertion that does not name them. Every point that it names asks for them. */
function partnersIn(open: Case, a: number): readonly number[] {
  const byAssertion = partners.get(open) ?? new Map<number, readonly number[]>()
  partners.set(open, byAssertion)
  const known = byAssertion.get(a)
  if (known) return known
  const assertion = open.subjects.assertions[a]!
  const made = open.pointsIn[assertion.statement]!.filter((other) => {
    const term = termIndex(open.topic, other)
    const needed = open.topic.points[other]!.ideas.length - 1
    if (term === undefined || needed < 1 || open.subjects.names(other, a)) return false
    // What both points have proves nothing.
    const says = saysOf(open, open.everyClaim[other]!, term, assertion)
    return says >= Math.min(2, needed) && says * 2 >= needed
  })
  byAssertion.set(a, made)
  return made
}
const partners = new WeakMap<Case, Map<number, readonly number[]>>()

/** How many ideas of a point, its term left out, stand in what an assertion says, in more than words that the title gives away. */
function saysOf(
  { page, topic }: Case,
  claims: readonly Claim[],
  term: number,
  { statement, body }: Assertion,
): number {
  return claims.filter(
    (claim, c) =>
      c !== term &&
      foundIn(claim, statement).some(
        (o) =>
          o.sign === 1 &&
          o.strength >= (claim.idea?.loose ? SAID_LOOSE : SAID) &&
          o.at.every(({ from, to }) => from >= body.from && to <= body.to) &&
          o.at.some(({ from }) => !topic.titleKeys.has(page.keys[from]!)),
      ),
  ).length
}

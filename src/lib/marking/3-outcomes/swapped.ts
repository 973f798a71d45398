import type { Claim } from '../2-ideas/claims'
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
    if (saysOf(open.claims[index]!, term, body) > 0) continue
    const partner = [...open.pointsIn[assertion.statement]!].find((other) => {
      const point = open.topic.points[other]!
      if (other === index) return false
      const own = termIndex(open.topic, other)
      if (own === undefined || point.ideas.length < 2) return false
      if (subjects.names(other, a)) return false
      // What both points have proves nothing.
      const says = saysOf(open.everyClaim[other]!, own, body)
      return says >= Math.min(2, point.ideas.length - 1) && says * 2 >= point.ideas.length - 1
    })
    if (partner === undefined) continue
    return {
      kind: 'swapped',
      statement: assertion.statement,
      at: [{ from: place.from, to: place.to }, body],
      against: open.topic.points[index]!.point.text,
    }
  }
  return undefined
}

/** How many ideas of a point, its term left out, stand in what an assertion says. */
function saysOf(
  claims: readonly Claim[],
  term: number,
  body: { readonly from: number; readonly to: number },
): number {
  return claims.filter(
    (claim, c) =>
      c !== term &&
      claim.occurrences.some(
        (o) =>
          o.sign === 1 &&
          o.strength >= (claim.idea?.loose ? SAID_LOOSE : SAID) &&
          o.at.every(({ from, to }) => from >= body.from && to <= body.to),
      ),
  ).length
}

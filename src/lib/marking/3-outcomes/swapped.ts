import { assertionsIn, type Assertion } from '../1-statements/assertions'
import type { Claim } from '../2-ideas/claims'
import type { Occurrence } from '../2-ideas/find'
import { takenBack, type ClashFound } from './clash'
import type { Case } from './judge'
import { SAID } from './thresholds'

/**
 * Rule 10: the term of this point with what belongs to another point ("a tombolo is a spit across a bay"). The subject of an assertion
 * is this point's own term; what is said of it says nothing of this point, but most of another point that has a term of its own.
 */
export function swappedPartner(
  open: Case,
  index: number,
  claims: readonly Claim[],
  said: readonly (Occurrence | undefined)[],
): ClashFound | undefined {
  const term = termOf(open, index)
  if (term === undefined) return undefined
  for (const claim of [claims[term]!]) {
    for (const o of claim.occurrences) {
      if (o.sign !== 1 || o.strength < SAID || takenBack(open, o)) continue
      const assertion = assertionsIn(open.page, open.page.statements[o.statement]!).find((a) => inside(o, a.subject))
      if (!assertion) continue
      if (saysOf(open, index, term, assertion) > 0) continue
      const partner = partnerOf(open, index, assertion)
      if (partner === undefined) continue
      void said
      return {
        kind: 'swapped',
        statement: o.statement,
        at: [...o.at, { from: assertion.body.from, to: assertion.body.to }],
        against: open.topic.points[index]!.point.text,
      }
    }
  }
  return undefined
}

/** The claim that names what the point is about: its exact term, or the first idea where that is a rare word or two. */
function termOf(open: Case, index: number): number | undefined {
  const point = open.topic.points[index]!
  if (point.point.any !== undefined || point.point.steps) return undefined
  const exact = point.ideas.findIndex((idea) => idea.parts.length === 1 && idea.parts[0]!.every((w) => w.exact))
  if (exact >= 0) return exact
  const [first] = point.ideas
  if (!first || first.given || first.parts.length !== 1) return undefined
  const rare = first.parts[0]!.every((w) => w.units.length <= 2 && w.units.some((u) => u.keys.some((k) => (point.weights.get(k) ?? 0) >= 0.6)))
  return rare && point.textKeys.slice(0, 3).some((key) => first.parts[0]!.some((w) => w.units.some((u) => u.keys.includes(key)))) ? 0 : undefined
}

/** How many ideas of a point, its term left out, stand in what an assertion says. */
function saysOf(open: Case, index: number, term: number, { statement, body }: Assertion): number {
  return open.claims[index]!.filter(
    (claim, c) => c !== term && claim.occurrences.some((o) => o.statement === statement && o.strength >= SAID && inside(o, body)),
  ).length
}

function partnerOf(open: Case, index: number, assertion: Assertion): number | undefined {
  for (const [other, point] of open.topic.points.entries()) {
    if (other === index) continue
    const term = termOf(open, other)
    if (term === undefined || point.ideas.length < 2) continue
    const subjectHasIt = open.claims[other]![term]!.occurrences.some((o) => o.statement === assertion.statement && inside(o, assertion.subject))
    if (subjectHasIt) continue
    if (saysOf(open, other, term, assertion) * 2 >= point.ideas.length - 1) return other
  }
  return undefined
}

function inside(o: Occurrence, range: { readonly from: number; readonly to: number }): boolean {
  return o.at.every(({ from, to }) => from >= range.from && to <= range.to)
}

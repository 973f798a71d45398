import type { ReadPage } from '../1-statements/page'
import type { Claim } from '../2-ideas/claims'
import type { Occurrence } from '../2-ideas/find'
import type { ClashFound } from './clash'

/** Steps said in another order than they must come: two that clearly are the wrong way round. */
export function stepsInOrder(
  page: ReadPage,
  claims: readonly Claim[],
  said: readonly (Occurrence | undefined)[],
): { readonly swapped?: ClashFound } {
  const placed = claims
    .map((claim, step) => ({ claim, step, o: said[step] }))
    .filter((p): p is { claim: Claim; step: number; o: Occurrence } => p.claim.kind === 'step' && p.o !== undefined)
    .map((p) => ({ ...p, when: timeOf(page, p.o) }))
  for (let i = 1; i < placed.length; i += 1) {
    const [before, after] = [placed[i - 1]!, placed[i]!]
    if (before.when <= after.when) continue
    // A step that is also said at its right place later or earlier is in order.
    if (couldStand(page, before.claim, after.when, -1) || couldStand(page, after.claim, before.when, 1)) continue
    return {
      swapped: {
        kind: 'order',
        statement: after.o.statement,
        at: after.o.at,
        against: `${before.claim.label}, then ${after.claim.label}`,
      },
    }
  }
  return {}
}

function couldStand(page: ReadPage, claim: Claim, when: number, side: 1 | -1): boolean {
  return claim.occurrences.some(
    (o) => o.sign === 1 && o.strength >= 0.7 && (timeOf(page, o) - when) * side >= 0,
  )
}

/** When a step happens as the page tells it: where it stands, unless "before", "after", "first", "last" say otherwise. */
function timeOf(page: ReadPage, o: Occurrence): number {
  const first = o.at[0]!.from
  const statement = page.statements[o.statement]!
  const clause = page.clauseOf[first]!
  let shift = 0
  for (let i = statement.from; i < statement.to; i += 1) {
    const word = page.tokens[i]!.text
    const near = i <= first && page.clauseOf[i] === clause
    if (near && word === 'after' && page.tokens[i + 1]?.text !== 'that' && page.tokens[i + 1]?.text !== 'this') shift -= 40
    if (near && word === 'before' && page.tokens[i + 1]?.text !== 'that' && page.tokens[i + 1]?.text !== 'this') shift += 40
    if (near && (word === 'finally' || word === 'lastly' || word === 'last')) shift += 1000
    if (page.clauseOf[i] === clause && word === 'first' && i > first) shift -= 1000
  }
  return first + shift
}

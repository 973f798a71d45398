import type { ReadPage } from '../1-statements/page'
import type { Claim } from '../2-ideas/claims'
import { overlap, type Occurrence } from '../2-ideas/occurrence'
import type { ClashFound } from './clash'
import { plainIdea } from './plain-idea'
import { SAID, SAID_LOOSE } from './thresholds'
import { timeOf } from './times'

interface Placed {
  readonly step: number
  readonly o: Occurrence
  readonly when: number
}

/**
 * The steps of a method, in order: the longest run of steps whose places on the page follow one another. Steps that are said, but only
 * where they come too early or too late, are in another order than they must be.
 */
export function stepsInOrder(
  page: ReadPage,
  claims: readonly Claim[],
): { readonly said: readonly (Occurrence | undefined)[]; readonly swapped?: ClashFound } {
  const places = claims.map((claim, step) =>
    claim.kind !== 'step'
      ? []
      : claim.occurrences
          .filter((o) => o.sign === 1 && o.strength >= (claim.idea?.loose ? SAID_LOOSE : SAID))
          .map((o) => ({ step, o, when: timeOf(page, o) })),
  )
  const chain = longestChain(places)
  const said = claims.map((_, step) => chain.find((p) => p.step === step)?.o)
  const left = places.filter((options, step) => options.length > 0 && said[step] === undefined)
  const pairs = left.flat().map((odd) => {
    const neighbour = chain.find((p) => p.step > odd.step) ?? chain[chain.length - 1]!
    return { odd, neighbour }
  })
  const out = pairs.find(
    ({ odd, neighbour }) =>
      chain.length > 0 &&
      // One word for two steps tells nothing of their order.
      !chain.some(({ o }) => overlap(o, odd.o)) &&
      Math.abs(odd.o.statement - neighbour.o.statement) <= TOLD_TOGETHER &&
      !orderInDoubt(page, odd.o, neighbour.o),
  )
  if (!out) return { said }
  const { odd, neighbour } = out
  const [first, second] = odd.step < neighbour.step ? [odd, neighbour] : [neighbour, odd]
  return {
    said,
    swapped: {
      kind: 'order',
      statement: odd.o.statement,
      at: odd.o.at,
      against: `${plainIdea(claims[first.step]!.label)}; then ${plainIdea(claims[second.step]!.label)}`,
    },
  }
}

/** Statements between two steps beyond which the page does not tell them one after the other. */
const TOLD_TOGETHER = 2

/** Words that put a step in another place of the order than it has on the page, in ways that `timeOf` does not always read. */
const OTHERWISE =
  /\b(?:earlier|previously|beforehand|in between|between (?:these|those|them)|at the (?:end|start|beginning)|last of all|end(?:s|ed)? up|second|third|fourth|fifth|only (?:\w+ ){0,4}after|(?:no|none|nothing|never|not)\b[^.;]*\buntil|19\d\d|1[0-8]\d\d|20\d\d|january|february|march|april|may|june|july|august|september|october|november|december)\b/iu

// Where the page orders two steps in such words, it is not plain that their order is wrong.
function orderInDoubt(page: ReadPage, one: Occurrence, two: Occurrence): boolean {
  const [first, last] = [one.statement, two.statement].sort((a, b) => a - b)
  const [from, to] = [page.statements[first!]!, page.statements[last!]!]
  return OTHERWISE.test(page.text.slice(from.start, to.end))
}

interface Chain {
  readonly place: Placed
  readonly before: Chain | undefined
  readonly value: number
}

// Longest by number of steps, then by strength, then the earliest: each step at most once, times rising, no words used twice.
function longestChain(places: readonly (readonly Placed[])[]): Placed[] {
  const chains: Chain[] = []
  let top: Chain | undefined
  for (const place of places.flat()) {
    let before: Chain | undefined
    for (const chain of chains) {
      if (before && chain.value <= before.value) continue
      const { step, when, o } = chain.place
      if (step < place.step && when <= place.when && !shareWords(o, place.o)) before = chain
    }
    const chain = { place, before, value: (before?.value ?? 0) + 1 + place.o.strength * 0.01 }
    chains.push(chain)
    if (!top || chain.value > top.value) top = chain
  }
  const longest: Placed[] = []
  for (let chain = top; chain; chain = chain.before) longest.unshift(chain.place)
  return longest
}

function shareWords(one: Occurrence, two: Occurrence): boolean {
  return (
    one.statement === two.statement &&
    one.at.every((a) => two.at.some((b) => a.from < b.to && b.from < a.to))
  )
}

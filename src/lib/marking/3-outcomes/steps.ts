import type { ReadPage } from '../1-statements/page'
import type { Statement } from '../1-statements/statements'
import type { Claim } from '../2-ideas/claims'
import type { Occurrence } from '../2-ideas/occurrence'
import type { ClashFound } from './clash'
import { plainIdea } from './plain-idea'
import { SAID, SAID_LOOSE } from './thresholds'

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
  const [odd] = left.flat()
  if (!odd || chain.length === 0) return { said }
  const neighbour = chain.find((p) => p.step > odd.step) ?? chain[chain.length - 1]!
  if (orderInDoubt(page, odd.o, neighbour.o)) return { said }
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

/** Words that put a step in another place of the order than it has on the page, in ways that `timeOf` does not always read. */
const OTHERWISE =
  /\b(?:earlier|previously|beforehand|in between|between (?:these|those|them)|at the (?:end|start|beginning)|last of all|end(?:s|ed)? up|second|third|fourth|fifth|only (?:\w+ ){0,4}after|19\d\d|1[0-8]\d\d|20\d\d|january|february|march|april|may|june|july|august|september|october|november|december)\b/iu

// Where the page orders two steps in such words, it is not plain that their order is wrong.
function orderInDoubt(page: ReadPage, one: Occurrence, two: Occurrence): boolean {
  const [first, last] = [one.statement, two.statement].sort((a, b) => a - b)
  const [from, to] = [page.statements[first!]!, page.statements[last!]!]
  return OTHERWISE.test(page.text.slice(from.start, to.end))
}

// Longest by number of steps, then by strength, then the earliest: each step at most once, times rising, no words used twice.
function longestChain(places: readonly (readonly Placed[])[]): Placed[] {
  const all = places.flat()
  const best = new Map<Placed, { chain: Placed[]; value: number }>()
  let top: { chain: Placed[]; value: number } = { chain: [], value: 0 }
  for (const place of all) {
    let before: { chain: Placed[]; value: number } = { chain: [], value: 0 }
    for (const other of all) {
      const known = best.get(other)
      if (
        !known ||
        other.step >= place.step ||
        other.when > place.when ||
        shareWords(other.o, place.o)
      )
        continue
      if (known.value > before.value) before = known
    }
    const value = before.value + 1 + place.o.strength * 0.01
    best.set(place, { chain: [...before.chain, place], value })
    if (value > top.value) top = best.get(place)!
  }
  return top.chain
}

function shareWords(one: Occurrence, two: Occurrence): boolean {
  return (
    one.statement === two.statement &&
    one.at.every((a) => two.at.some((b) => a.from < b.to && b.from < a.to))
  )
}

/**
 * When a step happens as the page tells it: where it stands, unless the student numbered the lines, or "before", "after", "because",
 * "first", "last" say otherwise.
 */
function timeOf(page: ReadPage, o: Occurrence): number {
  const first = o.at[0]!.from
  const last = o.at[o.at.length - 1]!.from
  const statement = page.statements[o.statement]!
  if (statement.number !== undefined) return FAR * statement.number + last
  const clause = page.clauseOf[first]!
  let time =
    last -
    FAR * backwards(page, first) -
    NEARBY * causesBehind(page, statement, first) +
    FAR * ordinalAt(page, first)
  for (let i = statement.from; i < statement.to; i += 1) {
    if (page.clauseOf[i] !== clause) continue
    const word = page.tokens[i]!.text
    const next = page.tokens[i + 1]?.text ?? ''
    const points = !POINTS_BACK.has(next)
    const opens = opensClause(page, statement, i)
    // "Before adding Y, measure X"; "X goes on after Y": the other order than they stand in.
    if (i < first && word === 'before' && points && opens) time += NEARBY
    if (i < first && (word === 'after' || word === 'once') && points && !opens) time -= NEARBY
    if (i > last && word === 'before' && (next === 'anything' || next === 'everything')) {
      time -= 2 * FAR * FAR
    }
    const isLast =
      (word === 'last' && (i + 1 >= statement.to || /^(?:of|thing|\.)$/.test(next))) ||
      (word === 'end' && page.tokens[i - 1]?.text === 'the' && page.tokens[i - 2]?.text === 'at')
    if (word === 'earlier' || word === 'beforehand' || word === 'previously') time -= FAR
    if (word === 'finally' || word === 'lastly' || isLast) time += FAR * FAR
    if (word === 'first' && i > statement.from) time -= FAR * FAR
  }
  return time
}

// The first word of its clause, an `and` or a comma before it left out.
function opensClause(page: ReadPage, statement: Statement, i: number): boolean {
  let k = i - 1
  while (k >= statement.from && (page.tokens[k]!.kind === 'sign' || page.tokens[k]!.text === 'and'))
    k -= 1
  return k < statement.from || page.clauseOf[k] !== page.clauseOf[i]
}

/** More than any clause is long, and more than any page. */
const NEARBY = 40
const FAR = 100_000
const POINTS_BACK = new Set(['that', 'this', 'which', 'any', 'anything', 'everything', ','])
const CAUSES = new Set(['because', 'once'])

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth']

// `Third, … The second is to …`: the last ordinal that opens a clause, up to token `at`, within the last statements; what has none goes on from it.
function ordinalAt(page: ReadPage, at: number): number {
  const statement = page.statementOf[at]!
  const from = page.statements[Math.max(0, statement - 5)]!.from
  for (let i = at; i >= from; i -= 1) {
    const ordinal = ORDINALS.indexOf(page.tokens[i]!.text)
    const own = page.statements[page.statementOf[i]!]
    if (ordinal < 0 || !own) continue
    const k = page.tokens[i - 1]?.text === 'the' ? i - 1 : i
    if (
      /^(?:,|is|you|we|i|the|step|thing)$/.test(page.tokens[i + 1]?.text ?? '') &&
      opensClause(page, own, k)
    )
      return ordinal
  }
  return 0
}

// How often the page has gone back in time by "before that" up to token `at`, within the last statements.
function backwards(page: ReadPage, at: number): number {
  const statement = page.statementOf[at]!
  const from = page.statements[Math.max(0, statement - 5)]!.from
  let count = 0
  for (let i = from; i < at; i += 1) {
    const next = page.tokens[i + 1]?.text
    if (page.tokens[i]!.text === 'before' && (next === 'that' || next === 'this')) count += 1
  }
  return count
}

// "X because Y": Y comes first. How many such clauses run without a break up to the one that token `at` is in.
function causesBehind(page: ReadPage, statement: Statement, at: number): number {
  let count = 0
  for (let i = at; i > statement.from; i -= 1) {
    if (page.clauseOf[i - 1] === page.clauseOf[i]) continue
    if (!CAUSES.has(page.tokens[i]!.text)) break
    count += 1
  }
  return count
}

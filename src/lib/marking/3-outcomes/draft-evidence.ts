import { isDirectionWord, isStopWord } from '../lexicon'
import { rarityOf } from '../lexicon/rarity'
import type { Claim } from '../2-ideas/claims'
import type { ReadyPoint } from '../2-ideas/ready'
import { keyOfToken, wordsForMatching } from '../words/phrases'
import { relatedTo } from '../words/relations'
import { isVerb } from '../words/verbs'
import type { Outcome } from '../types'
import type { Case } from './judge'

/**
 * What tells, beside the likeness of the words, how much of a point a page says, drafted or with its author's ideas: one number for each
 * name, 0 to 1 or nearly so.
 * `here` is the statement most about the point, `near` that and its neighbours, `page` all of the page.
 */
export const DRAFT_EVIDENCE = [
  'ruledFull',
  'ruledPartial',
  'ideasSaid',
  'oneIdea',
  'leastIdea',
  'meanIdea',
  'mostIdea',
  'ideasHalfSaid',
  'ideasThirdSaid',
  'turned',
  'share',
  'shareSquared',
  'coverByShare',
  'beforeRival',
  'belongs',
  'hasValue',
  'wordsHere',
  'thingsHere',
  'doingsHere',
  'directionsHere',
  'ownHere',
  'wordsNear',
  'thingsNear',
  'doingsNear',
  'directionsNear',
  'ownNear',
  'wordsOnPage',
  'thingsOnPage',
  'doingsOnPage',
  'directionsOnPage',
  'ownOnPage',
  'missing',
  'heaviestMissing',
  'rarestMissing',
  'oppositeThere',
  'numberMissing',
  'words',
] as const

/** What the rules found, before anything is weighed. */
export interface Ruled {
  readonly outcome: Outcome
  readonly claims: readonly Claim[]
  readonly saidCount: number
  readonly cover: number
}

export function draftEvidence(open: Case, index: number, ruled: Ruled): number[] {
  const { about, topic } = open
  const point = topic.points[index]!
  const at = about.nearest(index, 0)
  const share = at === undefined ? 0 : about.share(index, at)
  const rival = at === undefined ? 0 : rivalShare(open, index, at)
  const ideas = ideasNear(ruled.claims, at)
  const words = wordsOf(point, topic.titleKeys).map((word) => ({
    ...word,
    places: placesOf(open, word.key, at),
  }))
  const own = words.filter((w) => !w.direction && !w.given)
  const content = own.length > 0 ? own : words
  const things = content.filter((w) => !w.doing)
  const doings = content.filter((w) => w.doing)
  const directions = words.filter((w) => w.direction)
  const missing = things.filter((w) => w.places.near === 0)
  const covers = (['here', 'near', 'page'] as const).flatMap((where) => [
    coverOf(content, where, () => 1),
    coverOf(things, where, (w) => w.rarity),
    coverOf(doings, where, () => 1),
    coverOf(directions, where, () => 1),
    coverOf(content, where, (w) => w.weight + 0.05),
  ])
  return [
    ruled.outcome === 'full' ? 1 : 0,
    ruled.outcome === 'partial' ? 1 : 0,
    ruled.saidCount / Math.max(1, ruled.claims.length),
    ruled.claims.length === 1 ? 1 : 0,
    ideas.least,
    ideas.mean,
    ideas.most,
    ideas.half,
    ideas.third,
    ideas.turned,
    share,
    share * share,
    ruled.cover * share,
    share - rival,
    at !== undefined && about.belongs(index, at) ? 1 : 0,
    point.value ? 1 : 0,
    ...covers,
    Math.min(2, missing.length / 4),
    Math.max(0, ...missing.map((w) => w.weight)),
    Math.max(0, ...missing.map((w) => w.rarity)),
    words.some((w) => w.places.near === 0 && w.places.opposed) ? 1 : 0,
    words.some((w) => w.places.near === 0 && w.number) ? 1 : 0,
    Math.min(2, content.length / 8),
  ]
}

function rivalShare({ about, topic }: Case, index: number, statement: number): number {
  let most = 0
  for (let p = 0; p < topic.points.length; p += 1)
    if (p !== index) most = Math.max(most, about.share(p, statement))
  return most
}

/** How strongly the ideas are said in the statement or beside it; anywhere, where no statement is about the point. */
function ideasNear(claims: readonly Claim[], at: number | undefined) {
  const near = (statement: number) => at === undefined || Math.abs(statement - at) <= 1
  const strongest = (claim: Claim, sign: 1 | -1) => {
    let most = 0
    for (const o of claim.occurrences)
      if (o.sign === sign && near(o.statement)) most = Math.max(most, o.strength)
    return most
  }
  const strengths = claims.map((claim) => strongest(claim, 1))
  const weights = claims.map(({ idea }) => idea?.weight ?? 1)
  const whole = weights.reduce((a, b) => a + b, 0)
  const share = (least: number) =>
    strengths.filter((s) => s >= least).length / Math.max(1, strengths.length)
  return {
    least: strengths.length === 0 ? 0 : Math.min(...strengths),
    most: Math.max(0, ...strengths),
    mean: whole === 0 ? 0 : strengths.reduce((sum, s, i) => sum + s * weights[i]!, 0) / whole,
    half: share(0.5),
    third: share(0.3),
    turned: Math.max(0, ...claims.map((claim) => strongest(claim, -1))),
  }
}

interface Word {
  readonly key: string
  readonly rarity: number
  /** How few points of the topic share it. */
  readonly weight: number
  readonly doing: boolean
  readonly direction: boolean
  readonly number: boolean
  /** The title gives it away. */
  readonly given: boolean
}

const known = new WeakMap<ReadyPoint, readonly Word[]>()

function wordsOf(point: ReadyPoint, given: ReadonlySet<string>): readonly Word[] {
  const made =
    known.get(point) ??
    wordsForMatching(point.point.text)
      .filter(({ kind, text }) => kind === 'number' || (kind === 'word' && !isStopWord(text)))
      .map((token): Word => {
        const key = keyOfToken(token)
        return {
          key,
          rarity: rarityOf(key),
          weight: point.weights.get(key) ?? 0,
          doing: isVerb(token.text),
          direction: isDirectionWord(token.text),
          number: token.kind === 'number',
          given: given.has(key),
        }
      })
  known.set(point, made)
  return made
}

interface Places {
  readonly here: number
  readonly near: number
  readonly page: number
  /** An opposite of it stands near. */
  readonly opposed: boolean
}

/** How surely the word, or one that stands for it, is said in each reach. */
function placesOf(open: Case, key: string, at: number | undefined): Places {
  const reach = (range: (statement: number) => boolean) => {
    let said = strongestAt(open, [key], range)
    let opposed = false
    for (const { keys, sign, strength } of relatedTo(key)) {
      const there = strongestAt(open, keys, range)
      if (there === 0) continue
      if (sign > 0) said = Math.max(said, there * strength)
      else opposed = true
    }
    return { said, opposed }
  }
  const page = reach(() => true)
  if (at === undefined || page.said === 0) {
    const opposed = at !== undefined && page.opposed && reach((s) => Math.abs(s - at) <= 1).opposed
    return { here: 0, near: 0, page: page.said, opposed }
  }
  const near = reach((s) => Math.abs(s - at) <= 1)
  return {
    here: reach((s) => s === at).said,
    near: near.said,
    page: page.said,
    opposed: near.opposed,
  }
}

function strongestAt(
  { page }: Case,
  keys: readonly string[],
  range: (statement: number) => boolean,
): number {
  let least = 1
  for (const key of keys) {
    let most = 0
    for (const { from, strength } of page.postings.get(key) ?? []) {
      const statement = page.statementOf[from]!
      if (statement >= 0 && page.struck[from] !== 2 && range(statement))
        most = Math.max(most, strength)
    }
    if (most === 0) return 0
    least = Math.min(least, most)
  }
  return least
}

function coverOf(
  words: readonly (Word & { readonly places: Places })[],
  where: 'here' | 'near' | 'page',
  weigh: (word: Word) => number,
): number {
  const whole = words.reduce((sum, word) => sum + weigh(word), 0)
  // Nothing to be said is neither said nor left out.
  if (whole === 0) return 0.5
  return words.reduce((sum, word) => sum + weigh(word) * word.places[where], 0) / whole
}

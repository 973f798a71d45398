import type { ReadPage } from '../1-statements/page'

type Range = { readonly from: number; readonly to: number }

/** A wording said in one statement, before its parts are put together. */
export interface Piece {
  /** 0 to 1: how much of it, how surely, how close together. */
  readonly strength: number
  /** Words that stand as their opposites. */
  readonly opposites: number
  /** Those among them that only exclude the word (import for export): turning them round again says something else. */
  readonly slots: number
  /** The page denies it. */
  readonly denied: boolean
  /** The wording itself is a denial (`not used up`). */
  readonly denies: boolean
  /** Token ranges, in order. */
  readonly at: readonly Range[]
  /** It has a word with a direction, so that turning it round is a reverse argument. */
  readonly directional: boolean
  /** It is nothing but words with a direction, which belong to the nearest thing. */
  readonly bound: boolean
  /** Content words that carry it. */
  readonly content: number
}

/** An idea said in one statement. */
export interface Occurrence {
  readonly statement: number
  readonly strength: number
  /** -1 where the statement says the opposite of the idea. */
  readonly sign: 1 | -1
  /** Why the sign is -1. */
  readonly turned: 'negated' | 'opposite' | 'swapped' | undefined
  readonly at: readonly Range[]
  readonly directional: boolean
  readonly content: number
  readonly slots: number
  /** The page denies it; -1 without that: the idea is a denial, and the page leaves the `not` out. */
  readonly denied: boolean
  /** Words that stand as their opposites: 2 may still be the right statement, said in reverse. */
  readonly opposites: number
}

/** Ways to put the parts of an idea together that are looked at in one statement. */
const MOST = 24

/** Every way to say all parts in one statement; parts that only have a direction go with the nearest of the others. */
export function combined(options: readonly (readonly Piece[])[], page: ReadPage): readonly Piece[] {
  if (options.length === 1) return options[0]!
  if (options.some((part) => part.length === 0)) return []
  // What has a direction only is bound last, to what is there.
  const [first, ...others] = [...options].sort(
    (a, b) => Number(a.every((p) => p.bound)) - Number(b.every((p) => p.bound)),
  )
  let whole = first ?? []
  for (const part of others) {
    const pairs: Pair[] = []
    for (const one of whole)
      for (const two of part)
        if (!turnsItself(one, two)) pairs.push({ one, two, apart: spread(one, two, page) })
    const choosy = [...whole, ...part].some((piece) => piece.bound || piece.slots > 0)
    whole = (
      choosy
        ? pairs.filter(({ one, two, apart }) => !pairs.some((p) => boundNearer(p, one, two, apart)))
        : pairs
    )
      .map((pair) => acrossThan(pair, page, joined(pair.one, pair.two, pair.apart)))
      .sort((a, b) => b.strength - a.strength)
      .slice(0, MOST)
  }
  return whole
}

interface Pair {
  readonly one: Piece
  readonly two: Piece
  readonly apart: number
}

// One word for two parts, and for one of them as its opposite, says neither.
function turnsItself(one: Piece, two: Piece): boolean {
  return (
    one.slots + two.slots > 0 &&
    one.at.length === 1 &&
    two.at.length === 1 &&
    one.at[0]!.from === two.at[0]!.from
  )
}

// `slow at first and then faster`: at first goes with slow, not with faster.
function boundNearer(p: Pair, one: Piece, two: Piece, apart: number): boolean {
  if (p.apart >= apart) return false
  return (
    (p.one === one && p.two !== two && excludes(two, p.two)) ||
    (p.two === two && p.one !== one && excludes(one, p.one))
  )
}

// Only one of them can belong to the thing beside it: two degrees, or a word and one that stands in its place (long-term for short-term).
function excludes(one: Piece, two: Piece): boolean {
  return one.bound || one.slots > 0 !== two.slots > 0
}

function joined(one: Piece, two: Piece, apart: number): Piece {
  return {
    strength: Math.min(one.strength, two.strength) * closenessOf(apart),
    opposites: one.opposites + two.opposites,
    slots: one.slots + two.slots,
    denied: one.denied || two.denied,
    denies: one.denies || two.denies,
    at: [...one.at, ...two.at].sort((a, b) => a.from - b.from),
    directional: one.directional || two.directional,
    bound: one.bound && two.bound,
    content: one.content + two.content,
  }
}

/** What a thing behind `than` keeps of its strength with a degree of another clause. */
const OTHER_CLAUSE = 0.6

/** `lumps are larger than powder, so they sink`: a degree of a later clause tells nothing of the thing behind `than`. */
function acrossThan({ one, two }: Pair, page: ReadPage, whole: Piece): Piece {
  if (!whole.directional) return whole
  const [a, b] = [thanBefore(one, page), thanBefore(two, page)]
  if (a < 0 === b < 0 || !(a >= 0 ? two : one).bound) return whole
  const clauseOf = ({ at }: Piece) => page.clauseOf[at[0]!.from]
  return clauseOf(one) === clauseOf(two)
    ? whole
    : { ...whole, strength: whole.strength * OTHER_CLAUSE }
}

/** Tokens behind a `than` that belong to it. */
const BEHIND_THAN = 4

// Where the `than` stands that the piece comes right behind, -1 for none.
function thanBefore({ at }: Piece, { tokens, clauseOf }: ReadPage): number {
  const [first] = at
  if (!first) return -1
  for (let i = first.from - 1; i >= Math.max(0, first.from - BEHIND_THAN); i -= 1) {
    if (clauseOf[i] !== clauseOf[first.from]) return -1
    if (tokens[i]!.text === 'than') return i
  }
  return -1
}

// Of several places the nearest counts, by however little.
function closenessOf(apart: number): number {
  return (apart <= 8 ? 1 : apart <= 16 ? 0.92 : 0.8) - Math.min(apart, 40) * 0.001
}

export function occurrenceOf(piece: Piece, statement: number): Occurrence {
  const { strength, opposites, denied, at, directional, content } = piece
  const sign = signOf(piece)
  return {
    statement,
    strength,
    sign,
    turned: sign === 1 ? undefined : opposites % 2 === 1 ? 'opposite' : 'negated',
    at,
    directional,
    content,
    denied,
    opposites,
    slots: piece.slots,
  }
}

function signOf({ opposites, denied, denies }: Piece): 1 | -1 {
  const turns = opposites + (denied === denies ? 0 : 1)
  return turns % 2 === 0 ? 1 : -1
}

export const saysSomethingElse = ({ opposites, slots }: Piece): boolean =>
  slots > 0 && opposites > slots

/** Places of one idea kept for a statement: its best may be spent on another idea. */
const PLACES = 3

export function bestOfEachSign(found: readonly Piece[]): readonly Piece[] {
  if (found.length < 2) return found
  // `a thick wire has a higher resistance than a thin one`: thick and higher is what is said, thin and higher is not.
  let fewest = Infinity
  for (const { opposites } of found) if (opposites > 0 && opposites < fewest) fewest = opposites
  const best: Piece[] = []
  const turned: Piece[] = []
  for (const piece of found) {
    if (piece.opposites > fewest) continue
    if (signOf(piece) === 1) place(piece, best, PLACES)
    else place(piece, turned, 1)
  }
  best.push(...turned)
  return best
}

// The strongest first, the first of equals before the others.
function place(piece: Piece, best: Piece[], most: number): void {
  let k = best.length
  while (k > 0 && best[k - 1]!.strength < piece.strength) k -= 1
  if (k >= most) return
  best.splice(k, 0, piece)
  if (best.length > most) best.pop()
}

/** Do two occurrences share a word of the page? */
export const overlap = (one: Occurrence, two: Occurrence): boolean =>
  one.at.some((a) => two.at.some((b) => a.from < b.to && b.from < a.to))

/** What a clause border adds to a distance, in tokens. */
const CLAUSE = 4
/** The same for a `than`: what stands behind it is the other thing. */
const OTHER_SIDE = 6

/** Tokens between two ranges; a clause border counts as several. */
export function distance(one: Range, two: Range, page: ReadPage): number {
  const gap = one.from >= two.to ? one.from - two.to : Math.max(0, two.from - one.to)
  const clauses = Math.abs(page.clauseOf[one.from]! - page.clauseOf[two.from]!)
  const compared = gap < NEAR_BY && hasThan(page, one, two) ? OTHER_SIDE : 0
  return gap + clauses * CLAUSE + compared
}

/** Further apart it makes no difference any more. */
const NEAR_BY = 20

function hasThan({ thans }: ReadPage, one: Range, two: Range): boolean {
  const [from, to] = one.from < two.from ? [one.to, two.from] : [two.to, one.from]
  return thans[to]! > thans[from]!
}

function spread(one: Piece, two: Piece, page: ReadPage): number {
  let least = Infinity
  for (const a of one.at) {
    for (const b of two.at) {
      // Two parts in the same word are one word for two things.
      const same = a.from < b.to && b.from < a.to ? 4 : 0
      least = Math.min(least, distance(a, b, page) + same)
    }
  }
  return least
}

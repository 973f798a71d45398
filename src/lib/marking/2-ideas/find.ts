import type { Posting, ReadPage } from '../1-statements/page'
import type { Statement } from '../1-statements/statements'
import { isDirectionKey } from '../words/phrases'
import { GAP, relatedTo } from '../words/relations'
import {
  bestOfEachSign,
  combined,
  distance,
  occurrenceOf,
  saysSomethingElse,
  type Occurrence,
  type Piece,
} from './occurrence'
import type { ReadyIdea, ReadyWording, Unit } from './ready'

/** A unit found at a place, perhaps by a related word. */
export interface Hit extends Posting {
  readonly sign: 1 | -1
  /** A preposition that stands for the word (`price up`): only right beside what it belongs to. */
  readonly near: boolean
  /** An opposite only in the place of the word: not where the word itself stands beside it. */
  readonly slot: boolean
}

/** Below this share of its words a wording is not said. */
const MIN_COVER = 0.62
/** The same for a drafted wording: how much is missing is weighed over the whole point. */
const MIN_LOOSE = 0.3
/** A word with a direction belongs to what stands this near, in its own clause. */
const BINDS_WITHIN = 5
/** The strength of a misspelling that can only be the word; another word that sounds like it has less. */
const MISSPELT = 0.95
/** Words that may stand in the gap of a phrase. */
const GAP_WORDS = 4
/** A preposition belongs to what stands this near. */
const NEAR = 3

/** Finds ideas on one page; look-ups are remembered, because points share words. */
export class Finder {
  private readonly hits = new Map<string, readonly Hit[]>()
  constructor(readonly page: ReadPage) {}

  /** Every statement that says the idea, in any direction: the best of each sign in a statement, or for a step all places. */
  occurrences(idea: ReadyIdea): Occurrence[] {
    return this.candidates(idea).flatMap((index) => {
      const statement = this.page.statements[index]!
      const options = idea.parts.map((part) =>
        inPlace(fullest(part.flatMap((wording) => this.wordingIn(wording, statement))), this.page),
      )
      const found = combined(options, this.page)
        .filter((piece) => !saysSomethingElse(piece))
        .map((piece) => occurrenceOf(piece, index))
      return idea.kind === 'step' ? found : bestOfEachSign(found)
    })
  }

  /** The places in a statement where a wording is said, at least so strongly: one for every place of a main word. */
  wordingIn(
    wording: ReadyWording,
    statement: Statement,
    least = wording.loose ? MIN_LOOSE : MIN_COVER,
  ): readonly Piece[] {
    let [total, there] = [0, 0]
    const local: (readonly Hit[])[] = []
    for (const unit of wording.units) {
      const hits = within(this.hitsOf(unit), statement)
      local.push(hits)
      total += unit.weight
      if (hits.length > 0) there += unit.weight
    }
    if (there < least * total) return NOWHERE
    const pieces: Piece[] = []
    for (const u of anchorsOf(wording)) {
      for (const anchor of local[u]!) {
        const piece = this.around(wording, total, local, u, anchor)
        if (piece && piece.strength >= least) pieces.push(piece)
      }
    }
    return pieces
  }

  /** Statements in which a main word of a wording stands: the only ones that can say it. */
  statementsOf(wording: ReadyWording): ReadonlySet<number> {
    const found = new Set<number>()
    for (const u of anchorsOf(wording)) {
      for (const hit of this.hitsOf(wording.units[u]!)) found.add(this.page.statementOf[hit.from]!)
    }
    found.delete(-1)
    return found
  }

  /** Statements with a hit for every part. */
  private candidates(idea: ReadyIdea): number[] {
    let common: Set<number> | undefined
    for (const part of idea.parts) {
      const own = new Set<number>()
      for (const wording of part) {
        for (const u of anchorsOf(wording)) {
          for (const hit of this.hitsOf(wording.units[u]!))
            own.add(this.page.statementOf[hit.from]!)
        }
      }
      const before: Set<number> | undefined = common
      common = before ? new Set([...before].filter((s) => own.has(s))) : own
      if (common.size === 0) return []
    }
    return [...(common ?? [])].filter((s) => s >= 0).sort((a, b) => a - b)
  }

  private around(
    wording: ReadyWording,
    total: number,
    local: readonly (readonly Hit[])[],
    anchored: number,
    anchor: Hit,
  ): Piece | undefined {
    // `down` may stand for `smaller` beside a thing (price down), never by itself.
    if (anchor.near && !wording.units[anchored]!.near && wording.units.length === 1)
      return undefined
    const placed = new Map<number, Hit>([[anchored, anchor]])
    // First the things, then what has a direction: that belongs to the thing it stands beside in the wording.
    const order = wording.units
      .map((_, u) => u)
      .sort((x, y) => Number(binds(wording.units[x]!)) - Number(binds(wording.units[y]!)))
    for (const u of order) {
      if (u === anchored) continue
      const unit = wording.units[u]!
      const beside = binds(unit)
        ? besides(wording, u)
            .map((k) => placed.get(k))
            .find(Boolean)
        : undefined
      const hit = this.nearest(local[u]!, beside ?? anchor, unit, [...placed.values()])
      if (hit && !(hit.slot && local[u]!.some((other) => other.sign === 1))) placed.set(u, hit)
    }
    let got = 0
    let content = 0
    let directional = false
    for (const [u, hit] of placed) {
      const unit = wording.units[u]!
      got +=
        unit.weight *
        hit.strength *
        (u === anchored || binds(unit) ? 1 : this.closeness(hit, anchor))
      if (unit.weight >= (wording.loose ? 0.6 : 1)) content += 1
      directional ||= unit.directional
    }
    const chosen = [...placed.values()]
    return {
      strength: Math.min(1, got / total),
      opposites: chosen.filter((hit) => hit.sign === -1).length,
      slots: chosen.filter((hit) => hit.sign === -1 && hit.slot).length,
      denied: chosen.some((hit) => this.negatedAt(hit)),
      denies: wording.negated,
      at: chosen.map(({ from, to }) => ({ from, to })).sort((a, b) => a.from - b.from),
      directional,
      bound: wording.units.every((unit) => unit.directional),
      content,
    }
  }

  private negatedAt(hit: Hit): boolean {
    // `no colour` is all of what is meant: its own denial does not deny it.
    for (let k = hit.from; k < hit.to; k += 1)
      if (this.page.negated[k] && !this.deniesItself(hit, k)) return true
    return false
  }

  private deniesItself(hit: Hit, k: number): boolean {
    const by = this.page.negatedBy[k]!
    return by >= hit.from && by < hit.to
  }

  // The nearest place; a word with a direction binds to the nearest of its kind, whichever way that points.
  private nearest(
    hits: readonly Hit[],
    anchor: Hit,
    unit: Unit,
    chosen: readonly Hit[],
  ): Hit | undefined {
    let best: Hit | undefined
    let cost = Infinity
    for (const hit of hits) {
      if (chosen.some((other) => overlaps(other, hit))) continue
      if (overlaps(anchor, hit)) continue
      const far = distance(hit, anchor, this.page)
      if ((unit.near || hit.near || anchor.near) && far > NEAR) continue
      if (unit.directional && far > BINDS_WITHIN) continue
      const own = far + (unit.directional ? 0 : (1 - hit.strength) * 3)
      if (own < cost) {
        best = hit
        cost = own
      }
    }
    return best
  }

  private closeness(one: Posting, two: Posting): number {
    const far = distance(one, two, this.page)
    return far <= 6 ? 1 : far <= 12 ? 0.92 : far <= 20 ? 0.8 : 0.6
  }

  /** Every place of a unit on the page, by its own word and by related ones; what is withdrawn is left out. */
  hitsOf(unit: Unit): readonly Hit[] {
    const id = unit.exact ? `"${unit.phrase}` : unit.phrase
    const known = this.hits.get(id)
    if (known) return known
    // An exact term may be misspelt, but not written as another word.
    const found: Hit[] = this.sequence(unit.keys, 1, 1, false).filter(
      (hit) => !unit.exact || hit.strength >= MISSPELT || hit.carried,
    )
    if (!unit.exact) {
      for (const { keys, strength, sign, slot } of relatedTo(unit.phrase)) {
        for (const hit of this.sequence(keys, strength, sign, slot)) found.push(hit)
      }
    }
    found.sort((a, b) => a.from - b.from || b.strength - a.strength || b.to - a.to)
    const kept = found.filter(
      (hit, i) => i === 0 || found[i - 1]!.from !== hit.from || found[i - 1]!.sign !== hit.sign,
    )
    this.hits.set(id, kept)
    return kept
  }

  private sequence(keys: readonly string[], strength: number, sign: 1 | -1, slot: boolean): Hit[] {
    const near = keys.length === 1 && isDirectionKey(keys[0]!)
    const found: Hit[] = []
    for (const start of this.page.postings.get(keys[0]!) ?? []) {
      if (this.page.struck[start.from] === 2) continue
      let to = start.to
      let sure = start.strength
      let complete = true
      let reach = 1
      for (let k = 1; k < keys.length && complete; k += 1) {
        if (keys[k] === GAP) {
          reach = GAP_WORDS
          continue
        }
        const last = to + reach
        reach = 1
        const next = this.page.postings
          .get(keys[k]!)
          ?.find((p) => (p.from >= to && p.from <= last) || sharesPlace(p, start))
        if (next && this.page.statementOf[next.from] === this.page.statementOf[start.from]) {
          to = next.to
          sure = Math.min(sure, next.strength)
        } else complete = false
      }
      if (!complete) continue
      const carried = start.carried ?? false
      // `>` is no preposition.
      const placed = near && this.page.tokens[start.from]!.kind !== 'sign'
      found.push({
        from: start.from,
        to,
        strength: sure * strength,
        sign,
        near: placed,
        slot,
        carried,
      })
    }
    return found
  }
}

// First letters stand for all words of a term in one place.
const sharesPlace = (one: Posting, two: Posting): boolean =>
  one.carried === true && two.carried === true && one.from === two.from

// `never runs out of cash`: that `cash` is denied says less than that running out of it is.
function fullest(pieces: readonly Piece[]): readonly Piece[] {
  return pieces.filter(
    (piece) =>
      !pieces.some(
        (other) =>
          other.content > piece.content &&
          piece.at.every((a) => other.at.some((b) => b.from <= a.from && a.to <= b.to)),
      ),
  )
}

// Another thing (`client` for `server`) only takes a word's place where the word itself does not stand in the clause.
function inPlace(pieces: readonly Piece[], page: ReadPage): readonly Piece[] {
  if (pieces.every(({ slots }) => slots === 0)) return pieces
  const clauseOf = ({ at }: Piece) => page.clauseOf[at[0]!.from]
  const own = new Set(pieces.filter(({ opposites }) => opposites === 0).map(clauseOf))
  return pieces.filter((piece) => piece.slots === 0 || !own.has(clauseOf(piece)))
}

const binds = (unit: Unit) => unit.directional || unit.near

// The things that a word with a direction may belong to: the next in the wording, then the one before, then the rest.
function besides(wording: ReadyWording, u: number): number[] {
  const things = wording.units.map((_, k) => k).filter((k) => k !== u && !binds(wording.units[k]!))
  const far = (k: number) => (k > u ? k - u : u - k + 0.5)
  return things.sort((x, y) => far(x) - far(y))
}

// The words that the rest is looked for around: the heaviest that have no direction of their own, if there are any.
function anchorsOf(wording: ReadyWording): readonly number[] {
  const known = anchors.get(wording)
  if (known) return known
  const made = makeAnchors(wording)
  anchors.set(wording, made)
  return made
}
const anchors = new WeakMap<ReadyWording, readonly number[]>()

function makeAnchors(wording: ReadyWording): number[] {
  const indices = wording.units.map((_, u) => u)
  const plain = indices.filter((u) => !wording.units[u]!.directional && !wording.units[u]!.near)
  const pool = plain.length > 0 ? plain : indices
  const most = Math.max(...pool.map((u) => wording.units[u]!.weight))
  return pool.filter((u) => wording.loose || wording.units[u]!.weight === most)
}

// Two words in one place are one word for two things, unless a pronoun stands there for both.
function overlaps(one: Hit, two: Hit): boolean {
  return one.from < two.to && two.from < one.to && !(one.carried && two.carried)
}

const NOWHERE: readonly never[] = []

function within(hits: readonly Hit[], { from, to }: Statement): readonly Hit[] {
  if (hits.length === 0) return NOWHERE
  let low = 0
  let high = hits.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (hits[middle]!.from < from) low = middle + 1
    else high = middle
  }
  let end = low
  while (end < hits.length && hits[end]!.from < to) end += 1
  return end === low ? NOWHERE : hits.slice(low, end)
}

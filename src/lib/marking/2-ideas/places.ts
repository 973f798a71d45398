import type { Posting, ReadPage } from '../1-statements/page'
import { isDirectionKey } from '../words/phrases'
import { GAP, relatedTo } from '../words/relations'
import type { Unit } from './ready-idea'

/** A unit found at a place, perhaps by a related word. */
export interface Hit extends Posting {
  readonly sign: 1 | -1
  /** A preposition that stands for the word (`price up`): only right beside what it belongs to. */
  readonly near: boolean
  /** An opposite only in the place of the word: not where the word itself stands beside it. */
  readonly slot: boolean
}

/** The strength of a misspelling that can only be the word; another word that sounds like it has less. */
const MISSPELT = 0.95
/** Words that may stand in the gap of a phrase. */
const GAP_WORDS = 4

interface Found {
  readonly hits: readonly Hit[]
  readonly byStatement: ReadonlyMap<number, readonly Hit[]>
}

/** Where units stand on one page. Each is looked for once, because points share words. */
export class Places {
  private readonly known = new Map<string, Found>()
  private readonly knownExact = new Map<string, Found>()

  constructor(readonly page: ReadPage) {}

  /** Every place of a unit on the page, by its own word and by related ones; what is withdrawn is left out. */
  hitsOf(unit: Unit): readonly Hit[] {
    return this.found(unit).hits
  }

  /** The same by statement, both in the order of the page. */
  byStatement(unit: Unit): ReadonlyMap<number, readonly Hit[]> {
    return this.found(unit).byStatement
  }

  private found(unit: Unit): Found {
    const all = unit.exact ? this.knownExact : this.known
    const known = all.get(unit.phrase)
    if (known) return known
    const hits = this.look(unit)
    const made = { hits, byStatement: this.parted(hits) }
    all.set(unit.phrase, made)
    return made
  }

  private parted(hits: readonly Hit[]): ReadonlyMap<number, readonly Hit[]> {
    const parted = new Map<number, Hit[]>()
    // Hits come in the order of the page, those of one statement together.
    let [statement, there] = [-1, [] as Hit[]]
    for (const hit of hits) {
      const own = this.page.statementOf[hit.from]!
      if (own < 0) continue
      if (own === statement) there.push(hit)
      else parted.set(own, (there = [hit]))
      statement = own
    }
    return parted
  }

  private look(unit: Unit): readonly Hit[] {
    // An exact term may be misspelt, but not written as another word.
    const found: Hit[] = this.sequence(unit.keys, 1, 1, false).filter(
      (hit) => !unit.exact || hit.strength >= MISSPELT || hit.carried,
    )
    if (!unit.exact) {
      for (const { keys, strength, sign, slot } of relatedTo(unit.phrase)) {
        // A pronoun stands for a word, and puts no other in a word's place.
        for (const hit of this.sequence(keys, strength, sign, slot))
          if (!slot || !hit.carried) found.push(hit)
      }
    }
    if (found.length < 2) return found
    found.sort((a, b) => a.from - b.from || b.strength - a.strength || b.to - a.to)
    return found.filter(
      (hit, i) => i === 0 || found[i - 1]!.from !== hit.from || found[i - 1]!.sign !== hit.sign,
    )
  }

  private sequence(
    keys: readonly string[],
    strength: number,
    sign: 1 | -1,
    slot: boolean,
  ): readonly Hit[] {
    const starts = this.page.postings.get(keys[0]!)
    if (!starts) return NOWHERE
    const near = keys.length === 1 && isDirectionKey(keys[0]!)
    const found: Hit[] = []
    for (const start of starts) {
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

const NOWHERE: readonly never[] = []

// First letters stand for all words of a term in one place.
const sharesPlace = (one: Posting, two: Posting): boolean =>
  one.carried === true && two.carried === true && one.from === two.from

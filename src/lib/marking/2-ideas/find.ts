import type { Posting, ReadPage } from '../1-statements/page'
import type { Statement } from '../1-statements/statements'
import { relatedTo } from '../words/relations'
import type { ReadyIdea, ReadyWording, Unit } from './ready'

/** A unit found at a place, perhaps by a related word. */
interface Hit extends Posting {
  readonly sign: 1 | -1
}

/** An idea said in one statement. */
export interface Occurrence {
  readonly statement: number
  /** 0 to 1: how much of the idea, how surely, how close together. */
  readonly strength: number
  /** -1 where the statement says the opposite of the idea: negated, or with an opposite word. */
  readonly sign: 1 | -1
  /** Why the sign is -1. */
  readonly turned?: 'negated' | 'opposite'
  /** Token ranges, in order. */
  readonly at: readonly { readonly from: number; readonly to: number }[]
  /** It has a word with a direction, so that turning it round is a reverse argument. */
  readonly directional: boolean
  /** Content words that carry it. */
  readonly content: number
}

/** Ways to put the parts of an idea together that are looked at in one statement. */
const MOST = 24

/** Below this share of its words a wording is not said. */
const MIN_COVER = 0.62

/** Finds ideas on one page; look-ups are remembered, because points share words. */
export class Finder {
  private readonly hits = new Map<string, readonly Hit[]>()
  constructor(readonly page: ReadPage) {}

  /** Every statement that says the idea, in any direction: the best of each sign in a statement, or for a step all places. */
  occurrences(idea: ReadyIdea): Occurrence[] {
    const all = idea.kind === 'step'
    return this.candidates(idea).flatMap((index) => {
      const found = this.inStatement(idea, this.page.statements[index]!)
      return all ? found : bestOfEachSign(found)
    })
  }

  private candidates(idea: ReadyIdea): number[] {
    // A statement must have a hit for every part.
    let common: Set<number> | undefined
    for (const part of idea.parts) {
      const own = new Set<number>()
      for (const wording of part) {
        const main = heaviest(wording)
        for (const unit of wording.units) {
          if (unit.weight < main.weight) continue
          for (const hit of this.hitsOf(unit)) own.add(this.page.statementOf[hit.from]!)
        }
      }
      const before: Set<number> | undefined = common
      common = before ? new Set([...before].filter((s) => own.has(s))) : own
      if (common.size === 0) return []
    }
    return [...(common ?? [])].filter((s) => s >= 0).sort((a, b) => a - b)
  }

  private inStatement(idea: ReadyIdea, statement: Statement): Occurrence[] {
    let combined: Occurrence[] = [EMPTY(statement.index)]
    for (const part of idea.parts) {
      const options = part.flatMap((wording) => this.wordingIn(wording, statement))
      if (options.length === 0) return []
      combined = combined.flatMap((one) => options.map((two) => joined(one, two, this.page)))
      if (combined.length > MOST) combined = combined.sort((a, b) => b.strength - a.strength).slice(0, MOST)
    }
    return combined
  }

  /** The places in a statement where a wording is said: one for every place of a main word. */
  wordingIn(wording: ReadyWording, statement: Statement): Occurrence[] {
    const found: Occurrence[] = []
    const main = heaviest(wording)
    const total = wording.units.reduce((sum, unit) => sum + unit.weight, 0)
    const local = wording.units.map((unit) => within(this.hitsOf(unit), statement))
    wording.units.forEach((unit, u) => {
      // Any of the main words may be the one that is said; the rest are looked for around it.
      if (unit.weight < main.weight) return
      for (const anchor of local[u]!) {
        const occurrence = this.around(wording, total, local, u, anchor, statement)
        if (occurrence) found.push(occurrence)
      }
    })
    return found
  }

  private around(
    wording: ReadyWording,
    total: number,
    local: readonly (readonly Hit[])[],
    anchored: number,
    anchor: Hit,
    statement: Statement,
  ): Occurrence | undefined {
    const chosen: Hit[] = []
    let got = 0
    let content = 0
    let sign: 1 | -1 = 1
    let opposite = false
    let directional = false
    for (let u = 0; u < wording.units.length; u += 1) {
      const unit = wording.units[u]!
      const hit = u === anchored ? anchor : this.nearest(local[u]!, anchor, unit, chosen)
      if (!hit) continue
      got += unit.weight * hit.strength * (u === anchored ? 1 : this.closeness(hit, anchor))
      chosen.push(hit)
      if (unit.weight >= 1) content += 1
      if (hit.sign === -1) {
        sign = sign === 1 ? -1 : 1
        opposite = true
      }
      directional ||= unit.directional
    }
    const strength = got / total
    if (strength < MIN_COVER) return undefined
    const negated = chosen.some((hit) => this.negatedAt(hit))
    if (negated !== wording.negated) sign = sign === 1 ? -1 : 1
    return {
      statement: statement.index,
      strength: Math.min(1, strength),
      sign,
      ...(sign === -1 ? { turned: opposite ? ('opposite' as const) : ('negated' as const) } : {}),
      at: chosen.map(({ from, to }) => ({ from, to })).sort((a, b) => a.from - b.from),
      directional,
      content,
    }
  }

  private negatedAt(hit: Hit): boolean {
    for (let k = hit.from; k < hit.to; k += 1) if (this.page.negated[k]) return true
    return false
  }

  private nearest(hits: readonly Hit[], anchor: Hit, unit: Unit, chosen: readonly Hit[]): Hit | undefined {
    let best: Hit | undefined
    let cost = Infinity
    for (const hit of hits) {
      if (chosen.some((other) => other.from < hit.to && hit.from < other.to)) continue
      if (hit.from < anchor.to && anchor.from < hit.to) continue
      const distance = this.distance(hit, anchor)
      if (unit.near && distance > 4) continue
      const own = distance + (1 - hit.strength) * 2 + (hit.sign === -1 ? 0.5 : 0)
      if (own < cost) {
        best = hit
        cost = own
      }
    }
    return best
  }

  /** Tokens between two hits; a clause border counts as several. */
  private distance(one: Posting, two: Posting): number {
    const gap = one.from >= two.to ? one.from - two.to : Math.max(0, two.from - one.to)
    return gap + Math.abs(this.page.clauseOf[one.from]! - this.page.clauseOf[two.from]!) * 3
  }

  private closeness(one: Posting, two: Posting): number {
    const distance = this.distance(one, two)
    return distance <= 6 ? 1 : distance <= 12 ? 0.9 : distance <= 20 ? 0.75 : 0.5
  }

  /** Every place of a unit on the page, by its own word and by related ones; what is withdrawn is left out. */
  hitsOf(unit: Unit): readonly Hit[] {
    const id = unit.exact ? `"${unit.phrase}` : unit.phrase
    const known = this.hits.get(id)
    if (known) return known
    const found: Hit[] = this.sequence(unit.keys, 1, 1)
    if (!unit.exact) {
      for (const { keys, strength, sign } of relatedTo(unit.phrase)) {
        for (const hit of this.sequence(keys, strength, sign)) found.push(hit)
      }
    }
    found.sort((a, b) => a.from - b.from || b.strength - a.strength)
    const kept = found.filter((hit, i) => i === 0 || found[i - 1]!.from !== hit.from || found[i - 1]!.sign !== hit.sign)
    this.hits.set(id, kept)
    return kept
  }

  private sequence(keys: readonly string[], strength: number, sign: 1 | -1): Hit[] {
    const first = this.page.postings.get(keys[0]!) ?? []
    const found: Hit[] = []
    for (const start of first) {
      if (this.page.struck[start.from] === 2) continue
      let to = start.to
      let sure = start.strength
      let complete = true
      for (let k = 1; k < keys.length && complete; k += 1) {
        const next = this.page.postings.get(keys[k]!)?.find((p) => p.from >= to && p.from <= to + (k === 1 ? 2 : 1))
        if (next && this.page.statementOf[next.from] === this.page.statementOf[start.from]) {
          to = next.to
          sure = Math.min(sure, next.strength)
        } else complete = false
      }
      if (complete) found.push({ from: start.from, to, strength: sure * strength, sign })
    }
    return found
  }
}

function heaviest(wording: ReadyWording): Unit {
  return wording.units.reduce((best, unit) => (unit.weight > best.weight ? unit : best))
}

function within(hits: readonly Hit[], { from, to }: Statement): Hit[] {
  let low = 0
  let high = hits.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (hits[middle]!.from < from) low = middle + 1
    else high = middle
  }
  const found: Hit[] = []
  for (let i = low; i < hits.length && hits[i]!.from < to; i += 1) found.push(hits[i]!)
  return found
}

const EMPTY = (statement: number): Occurrence => ({
  statement,
  strength: 1,
  sign: 1,
  at: [],
  directional: false,
  content: 0,
})

function joined(one: Occurrence, two: Occurrence, page: ReadPage): Occurrence {
  if (one.at.length === 0) return two
  const apart = spread(one, two, page)
  const sign = (one.sign * two.sign) as 1 | -1
  return {
    statement: two.statement,
    strength: Math.min(one.strength, two.strength) * (apart <= 8 ? 1 : apart <= 16 ? 0.92 : 0.8),
    sign,
    ...(sign === -1 ? { turned: one.turned ?? two.turned ?? 'opposite' } : {}),
    at: [...one.at, ...two.at].sort((a, b) => a.from - b.from),
    directional: one.directional || two.directional,
    content: one.content + two.content,
  }
}

function spread(one: Occurrence, two: Occurrence, page: ReadPage): number {
  let least = Infinity
  for (const a of one.at) {
    for (const b of two.at) {
      const gap = a.from >= b.to ? a.from - b.to : b.from >= a.to ? b.from - a.to : 4
      least = Math.min(least, gap + Math.abs(page.clauseOf[a.from]! - page.clauseOf[b.from]!) * 3)
    }
  }
  return least
}

function bestOfEachSign(found: readonly Occurrence[]): Occurrence[] {
  let plus: Occurrence | undefined
  let minus: Occurrence | undefined
  for (const one of found) {
    if (one.sign === 1) {
      if (!plus || one.strength > plus.strength) plus = one
    } else if (!minus || one.strength > minus.strength) minus = one
  }
  return [plus, minus].filter((o): o is Occurrence => o !== undefined)
}

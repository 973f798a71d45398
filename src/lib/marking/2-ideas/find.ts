import type { ReadPage } from '../1-statements/page'
import type { Statement } from '../1-statements/statements'
import {
  bestOfEachSign,
  combined,
  occurrenceOf,
  saysSomethingElse,
  type Occurrence,
  type Piece,
} from './occurrence'
import { around, planOf, type Plan } from './around'
import { Places, type Hit } from './places'
import type { ReadyIdea, ReadyWording, Unit } from './ready'

export type { Hit } from './places'

/** Below this share of its words a wording is not said. */
const MIN_COVER = 0.62
/** The same for a drafted wording: how much is missing is weighed over the whole point. */
const MIN_LOOSE = 0.3

/** Finds ideas on one page. Only statements with a main word of the idea are ever looked at. */
export class Finder {
  private readonly places: Places
  constructor(readonly page: ReadPage) {
    this.places = new Places(page)
  }

  /** Every statement that says the idea, in any direction: the best of each sign in a statement, or for a step all places. */
  occurrences(idea: ReadyIdea): Occurrence[] {
    const statements = this.candidates(idea)
    if (statements.size === 0) return []
    const parts = idea.parts.map((part) => this.piecesOf(part, statements))
    const occurrences: Occurrence[] = []
    for (const index of [...statements].sort((a, b) => a - b)) {
      const options = parts.map((pieces) => inPlace(fullest(pieces.get(index) ?? NONE), this.page))
      const found = combined(options, this.page)
        .filter((piece) => !saysSomethingElse(piece))
        .map((piece) => occurrenceOf(piece, index))
      for (const o of idea.kind === 'step' ? found : bestOfEachSign(found)) occurrences.push(o)
    }
    return occurrences
  }

  /** The places in a statement where a wording is said, at least so strongly: one for every place of a main word. */
  wordingIn(
    wording: ReadyWording,
    statement: Statement,
    least = wording.loose ? MIN_LOOSE : MIN_COVER,
  ): readonly Piece[] {
    const plan = planOf(wording)
    let there = 0
    const local: (readonly Hit[])[] = []
    for (const unit of wording.units) {
      const hits = this.hitsIn(unit, statement.index)
      local.push(hits)
      if (hits.length > 0) there += unit.weight
    }
    if (there < least * plan.total) return NONE
    return this.piecesAround(plan, local, least)
  }

  private piecesAround(plan: Plan, local: readonly (readonly Hit[])[], least: number): Piece[] {
    const pieces: Piece[] = []
    for (const u of plan.anchors) {
      for (const anchor of local[u]!) {
        const piece = around(plan, local, u, anchor, this.page)
        if (piece && piece.strength >= least) pieces.push(piece)
      }
    }
    return pieces
  }

  /** Statements in which a main word of a wording stands: the only ones that can say it. */
  statementsOf(wording: ReadyWording): ReadonlySet<number> {
    const found = new Set<number>()
    for (const u of planOf(wording).anchors)
      for (const s of this.places.byStatement(wording.units[u]!).keys()) found.add(s)
    return found
  }

  /** Every place of a unit on the page, in its order. */
  hitsOf(unit: Unit): readonly Hit[] {
    return this.places.hitsOf(unit)
  }

  /** The same in one statement. */
  hitsIn(unit: Unit, statement: number): readonly Hit[] {
    return this.places.byStatement(unit).get(statement) ?? NONE
  }

  /** Statements with a main word for every part. */
  private candidates(idea: ReadyIdea): ReadonlySet<number> {
    let common: ReadonlySet<number> = new Set()
    for (const [p, part] of idea.parts.entries()) {
      const own = new Set<number>()
      for (const wording of part)
        for (const u of planOf(wording).anchors)
          for (const s of this.places.byStatement(wording.units[u]!).keys())
            if (p === 0 || common.has(s)) own.add(s)
      if (own.size === 0) return own
      common = own
    }
    return common
  }

  /** What the wordings of a part say, by statement. */
  private piecesOf(
    part: readonly ReadyWording[],
    statements: ReadonlySet<number>,
  ): ReadonlyMap<number, readonly Piece[]> {
    const found = new Map<number, readonly Piece[]>()
    for (const wording of part) {
      for (const s of this.statementsOf(wording)) {
        if (!statements.has(s)) continue
        const pieces = this.wordingIn(wording, this.page.statements[s]!)
        if (pieces.length === 0) continue
        const before = found.get(s)
        found.set(s, before ? [...before, ...pieces] : pieces)
      }
    }
    return found
  }
}

const NONE: readonly never[] = []

// `never runs out of cash`: that `cash` is denied says less than that running out of it is.
function fullest(pieces: readonly Piece[]): readonly Piece[] {
  if (pieces.length < 2) return pieces
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

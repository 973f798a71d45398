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
import type { ReadyIdea, ReadyWording, Unit } from './ready-idea'

export type { Hit } from './places'

/** Below this share of its words a wording is not said. */
const MIN_COVER = 0.62
/** The same for a drafted wording: how much is missing is weighed over the whole point. */
const MIN_LOOSE = 0.3

/** Finds ideas on one page. Only statements with enough words of a wording are ever looked at. */
export class Finder {
  private readonly places: Places
  /** For `saying`: how much of a wording stands in each statement; nothing between two calls. */
  private readonly there: Float64Array

  constructor(readonly page: ReadPage) {
    this.places = new Places(page)
    this.there = new Float64Array(page.statements.length)
  }

  /** Every statement that says the idea, in any direction: the best of each sign in a statement, or for a step all places. */
  occurrences(idea: ReadyIdea): readonly Occurrence[] {
    const parts: PiecesIn[] = []
    let all: PiecesIn | undefined
    for (const part of idea.parts) {
      all = this.piecesOf(part, all)
      if (all.size === 0) return NONE
      parts.push(all)
    }
    if (!all) return NONE
    const occurrences: Occurrence[] = []
    for (const index of [...all.keys()].sort((a, b) => a - b)) {
      const whole = combined(
        parts.map((pieces) => inPlace(fullest(unopposed(pieces.get(index)!)), this.page)),
        this.page,
      )
      const found = whole.some(saysSomethingElse)
        ? whole.filter((piece) => !saysSomethingElse(piece))
        : whole
      for (const piece of idea.kind === 'step' ? found : bestOfEachSign(found))
        occurrences.push(occurrenceOf(piece, index))
    }
    return occurrences
  }

  /** The places in a statement where a wording is said, at least so strongly: one for every place of a main word. */
  wordingIn(
    wording: ReadyWording,
    statement: Statement,
    least = leastOf(wording),
  ): readonly Piece[] {
    const { units } = wording
    const plan = planOf(wording)
    let there = 0
    for (const unit of units)
      if (this.hitsIn(unit, statement.index).length > 0) there += unit.weight
    return there < least * plan.total ? NONE : this.piecesAround(plan, statement.index, least)
  }

  /** The statements with enough words of a wording to say it so strongly, a main word among them: the only ones that can. */
  statementsSaying(wording: ReadyWording, least = leastOf(wording)): readonly number[] {
    const { units } = wording
    const { anchors, total } = planOf(wording)
    const [only] = units
    if (only && units.length === 1) return [...this.places.byStatement(only).keys()]
    const touched: number[] = []
    for (const unit of units) {
      for (const s of this.places.byStatement(unit).keys()) {
        if (this.there[s] === 0) touched.push(s)
        this.there[s]! += unit.weight
      }
    }
    const found: number[] = []
    for (const u of anchors)
      for (const s of this.places.byStatement(units[u]!).keys()) {
        if (this.there[s]! >= least * total) found.push(s)
        this.there[s] = 0
      }
    for (const s of touched) this.there[s] = 0
    return found
  }

  /** Statements in which a main word of a wording stands. */
  statementsOf(wording: ReadyWording): ReadonlySet<number> {
    const found = new Set<number>()
    for (const u of planOf(wording).anchors)
      for (const s of this.places.byStatement(wording.units[u]!).keys()) found.add(s)
    return found
  }

  /** Every statement in which a unit stands, in their order. */
  statementsWith(unit: Unit): Iterable<number> {
    return this.places.byStatement(unit).keys()
  }

  /** Every place of a unit on the page, in its order. */
  hitsOf(unit: Unit): readonly Hit[] {
    return this.places.hitsOf(unit)
  }

  /** The same in one statement. */
  hitsIn(unit: Unit, statement: number): readonly Hit[] {
    return this.places.byStatement(unit).get(statement) ?? NONE
  }

  /** What the wordings of a part say, by statement; only in those where the parts before say something. */
  private piecesOf(part: readonly ReadyWording[], before: PiecesIn | undefined): PiecesIn {
    const found = new Map<number, Piece[]>()
    for (const wording of part) {
      const plan = planOf(wording)
      const least = leastOf(wording)
      for (const s of this.statementsSaying(wording, least)) {
        if (before && !before.has(s)) continue
        const pieces = this.piecesAround(plan, s, least)
        if (pieces.length === 0) continue
        const others = found.get(s)
        if (others) others.push(...pieces)
        else found.set(s, pieces)
      }
    }
    return found
  }

  private piecesAround(plan: Plan, statement: number, least: number): Piece[] {
    const local = plan.wording.units.map((unit) => this.hitsIn(unit, statement))
    const pieces: Piece[] = []
    for (const u of plan.anchors) {
      for (const anchor of local[u]!) {
        const piece = around(plan, local, u, anchor, this.page)
        if (piece && piece.strength >= least) pieces.push(piece)
      }
    }
    return pieces
  }
}

/** What is said in each statement that says anything. */
type PiecesIn = ReadonlyMap<number, readonly Piece[]>

const leastOf = ({ loose }: ReadyWording): number => (loose ? MIN_LOOSE : MIN_COVER)

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

// `shortage / excess demand`: a shortage is no opposite of the excess where it is what the idea asks for.
function unopposed(pieces: readonly Piece[]): readonly Piece[] {
  if (pieces.every(({ opposites }) => opposites === 0)) return pieces
  const plain = pieces.filter(
    ({ opposites, denied, denies }) => opposites === 0 && denied === denies,
  )
  return pieces.filter(
    (piece) =>
      piece.opposites === 0 ||
      !plain.some((other) =>
        other.at.every((a) => piece.at.some((b) => b.from <= a.from && a.to <= b.to)),
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

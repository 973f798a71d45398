import type { Equation } from '../../syllabus/types'
import type { Token } from '../1-statements/tokens'
import type { Span } from '../types'
import type { Phrase } from '../words/phrases'
import {
  expressionOf,
  sameRelation,
  symbolsIn,
  symbolsOf,
  type Expression,
  type Relation,
} from './algebra'
import { differByCase, MOST_SPELT, piecesIn, symbolsSpelt } from './equation-pieces'
import { arranged, runsOf, sidesOf, trimmedSide } from './equation-sides'
import type { Piece } from './equation-words'
import { namesOf } from './quantity-names'

interface Page {
  readonly tokens: readonly Token[]
  readonly keys: readonly string[]
  readonly text: string
}

/** An equation point made ready: the relation and the words for each of its symbols. */
export interface ReadyEquation {
  readonly relation: Relation
  readonly names: ReadonlyMap<string, readonly Phrase[]>
}

/** Undefined where the author's equation itself cannot be read as algebra. */
export function readyEquation(
  equation: Equation,
  tokens: readonly Token[],
  text: string,
): ReadyEquation | undefined {
  const names = namesOf(equation.where)
  const whole = { from: 0, to: tokens.length }
  const [found] = relationsIn(piecesIn(tokens, text, whole, names), tokens)
  return found && { relation: found.relation, names }
}

/** Is every quantity of the equation named among the tokens, by its name or by its letter? Without that nothing can be found there. */
export function mayHold(
  ready: ReadyEquation,
  { tokens, keys, text }: Page,
  { from, to }: { readonly from: number; readonly to: number },
): boolean {
  const { asked, symbols, longest, exactCase } = spellingOf(ready)
  for (const [symbol, phrases] of ready.names) {
    if (phrases.some((phrase) => mayStand(phrase, keys, from, to))) continue
    const letter = symbol.toLowerCase()
    let spelt = false
    for (let i = from; i < to && !spelt; i += 1) {
      const { start, end } = tokens[i]!
      if (asked.has(symbol) && end - start > longest) continue
      const raw = text.slice(start, end)
      spelt =
        raw.toLowerCase().includes(letter) &&
        // A letter that is explained but not in the equation is nowhere spelt.
        (!asked.has(symbol) || symbolsSpelt(raw, symbols, exactCase) !== undefined)
    }
    if (!spelt) return false
  }
  return true
}

interface Spelling {
  /** The symbols that are in the equation, of those that are explained. */
  readonly asked: ReadonlySet<string>
  readonly symbols: readonly string[]
  /** Letters of a run of symbols (`mgh`), at the most. */
  readonly longest: number
  readonly exactCase: boolean
}

function spellingOf(ready: ReadyEquation): Spelling {
  const known = spellings.get(ready)
  if (known) return known
  const symbols = [...ready.names.keys()]
  const made = {
    asked: symbolsIn(ready.relation),
    symbols,
    longest: MOST_SPELT * Math.max(...symbols.map(({ length }) => length)),
    exactCase: differByCase(symbols),
  }
  spellings.set(ready, made)
  return made
}
const spellings = new WeakMap<ReadyEquation, Spelling>()

// All words that the phrase cannot do without; any of them, where it can do without each.
function mayStand({ slots }: Phrase, keys: readonly string[], from: number, to: number): boolean {
  const stands = (key: string) => {
    for (let i = from; i < to; i += 1) if (keys[i] === key) return true
    return false
  }
  const needed = slots.filter(({ optional }) => !optional)
  return needed.length > 0
    ? needed.every(({ key }) => stands(key))
    : slots.some(({ key }) => stands(key))
}

export interface EquationFound {
  readonly right: boolean
  readonly span: Span
}

/** What the tokens `from`..`to` say about `ready`: its equation, and wrong ones over the same quantities. */
export function equationsIn(
  ready: ReadyEquation,
  tokens: readonly Token[],
  text: string,
  range: { readonly from: number; readonly to: number },
): EquationFound[] {
  const wanted = [...symbolsIn(ready.relation)].sort().join()
  const found: EquationFound[] = []
  const pieces = piecesIn(tokens, text, range, ready.names)
  for (const { relation, span } of relationsIn(pieces, tokens)) {
    if ([...symbolsIn(relation)].sort().join() !== wanted) continue
    found.push({ right: sameRelation(relation, ready.relation), span })
  }
  const told = found.length > 0 ? undefined : toldOf(ready, pieces, tokens)
  return told ? [told] : found
}

/** `Density …: it is the ratio of mass to volume`: what it is equal to is told, and the quantity itself is named before. */
function toldOf(
  ready: ReadyEquation,
  pieces: readonly Piece[],
  tokens: readonly Token[],
): EquationFound | undefined {
  const wanted = symbolsIn(ready.relation)
  for (const run of runsOf(pieces)) {
    for (const side of sidesOf(run)) {
      for (const [shorter, expression] of shortened(side, (s, cut) => s.slice(0, s.length - cut))) {
        const symbols = symbolsOf(expression)
        const missing = [...wanted].filter((name) => !symbols.has(name))
        if (missing.length !== 1 || symbols.size !== wanted.size - 1 || symbols.size < 2) continue
        const named = pieces.find(
          (p) =>
            p.to <= shorter[0]!.from &&
            p.is === 'term' &&
            p.term.kind === 'symbol' &&
            p.term.name === missing[0],
        )
        if (!named) continue
        const relation = { left: { kind: 'symbol', name: missing[0]! } as const, right: expression }
        const span = {
          start: tokens[named.from]!.start,
          end: tokens[shorter[shorter.length - 1]!.to - 1]!.end,
        }
        return { right: sameRelation(relation, ready.relation), span }
      }
    }
  }
  return undefined
}

function relationsIn(
  pieces: readonly Piece[],
  tokens: readonly Token[],
): { relation: Relation; span: Span }[] {
  const found: { relation: Relation; span: Span }[] = []
  for (const run of runsOf(pieces)) {
    const sides = sidesOf(run)
    for (let i = 0; i + 1 < sides.length; i += 1) {
      // What follows may go on to something else: the longest beginning of the right side and end of the left that is an expression.
      for (const [left, one] of shortened(sides[i]!, (side, cut) => side.slice(cut))) {
        for (const [right, two] of shortened(sides[i + 1]!, (side, cut) =>
          side.slice(0, side.length - cut),
        )) {
          const first = left[0]!
          const last = right[right.length - 1]!
          found.push({
            relation: { left: one, right: two },
            span: { start: tokens[first.from]!.start, end: tokens[last.to - 1]!.end },
          })
        }
      }
    }
  }
  return found
}

function shortened(
  side: readonly Piece[],
  cutOf: (side: readonly Piece[], cut: number) => readonly Piece[],
) {
  const read: [readonly Piece[], Expression][] = []
  for (let cut = 0; cut < side.length && cut < 24 && read.length < 4; cut += 1) {
    const rest = cutOf(side, cut)
    if (cut > 0 && !partsHere(side, rest)) continue
    const shorter = trimmedSide([...rest])
    const expression = shorter.length === 0 ? undefined : expressionOf(arranged(shorter))
    if (expression) read.push([shorter, expression])
  }
  return read
}

const isOpening = (piece: Piece) =>
  piece.is === 'term' && piece.term.kind === 'op' && piece.term.op === '('

// A side ends only where words stand between: never beside an operator, a number or a quantity of the same expression.
function partsHere(side: readonly Piece[], rest: readonly Piece[]): boolean {
  const word = (piece: Piece | undefined) =>
    piece !== undefined && (piece.is === 'term' ? isOpening(piece) : piece.is !== 'prefix')
  if (rest.length === 0) return false
  return rest[0] === side[0] ? word(side[rest.length]) : word(side[side.length - rest.length - 1])
}

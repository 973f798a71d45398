import type { Equation } from '../../syllabus/types'
import type { Token } from '../1-statements/tokens'
import type { Span } from '../types'
import { keyOfToken, phraseEnd, phraseOf, type Phrase } from '../words/phrases'
import {
  expressionOf,
  sameRelation,
  symbolsIn,
  symbolsOf,
  type Expression,
  type Relation,
  type Term,
} from './algebra'
import { numbersIn } from './numbers'

/** An equation point made ready: the relation and the words for each of its symbols. */
export interface ReadyEquation {
  readonly relation: Relation
  readonly names: ReadonlyMap<string, readonly Phrase[]>
}

type Piece = { readonly from: number; readonly to: number } & (
  | { readonly is: 'term'; readonly term: Term }
  | { readonly is: 'equals' }
  | { readonly is: 'by' | 'and' | 'to' | 'from' | 'fill' | 'gap' }
  | { readonly is: 'prefix'; readonly word: Prefix }
)
type Prefix =
  | 'divide'
  | 'multiply'
  | 'product'
  | 'ratio'
  | 'sum'
  | 'difference'
  | 'subtract'
  | 'root'
  | 'twice'
  | 'half'

const op = (o: Extract<Term, { kind: 'op' }>['op']): Term => ({ kind: 'op', op: o })
const num = (value: number): Term => ({ kind: 'number', value })

// Longest first. A phrase of the mathematics classroom, and what it stands for.
type Word =
  { readonly is: 'term'; readonly term: Term } | { readonly is: 'prefix'; readonly word: Prefix }
const WORDS: readonly (readonly [string, Word])[] = [
  ['divided by', { is: 'term', term: op('/') }],
  ['multiplied by', { is: 'term', term: op('*') }],
  ['multiplied with', { is: 'term', term: op('*') }],
  ['times by', { is: 'term', term: op('*') }],
  ['timesed by', { is: 'term', term: op('*') }],
  ['added to', { is: 'term', term: op('+') }],
  ['take away', { is: 'term', term: op('-') }],
  ['square root of', { is: 'prefix', word: 'root' }],
  ['square root', { is: 'prefix', word: 'root' }],
  ['product of', { is: 'prefix', word: 'product' }],
  ['ratio of', { is: 'prefix', word: 'ratio' }],
  ['sum of', { is: 'prefix', word: 'sum' }],
  ['difference between', { is: 'prefix', word: 'difference' }],
  ['times', { is: 'term', term: op('*') }],
  ['over', { is: 'term', term: op('/') }],
  ['per', { is: 'term', term: op('/') }],
  ['plus', { is: 'term', term: op('+') }],
  ['minus', { is: 'term', term: op('-') }],
  ['less', { is: 'term', term: op('-') }],
  ['divide', { is: 'prefix', word: 'divide' }],
  ['dividing', { is: 'prefix', word: 'divide' }],
  ['divides', { is: 'prefix', word: 'divide' }],
  ['multiply', { is: 'prefix', word: 'multiply' }],
  ['multiplying', { is: 'prefix', word: 'multiply' }],
  ['subtract', { is: 'prefix', word: 'subtract' }],
  ['subtracting', { is: 'prefix', word: 'subtract' }],
  ['take', { is: 'prefix', word: 'subtract' }],
  ['taking', { is: 'prefix', word: 'subtract' }],
  ['twice', { is: 'prefix', word: 'twice' }],
  ['double', { is: 'prefix', word: 'twice' }],
  ['half', { is: 'prefix', word: 'half' }],
  ['squared', { is: 'term', term: op('^') }],
  ['cubed', { is: 'term', term: op('^') }],
]
const WORDS_BY_FIRST = new Map<string, [string[], Word][]>()
for (const [phrase, word] of WORDS) {
  const words = phrase.split(' ')
  WORDS_BY_FIRST.set(words[0]!, [...(WORDS_BY_FIRST.get(words[0]!) ?? []), [words, word]])
}
const EQUALS = new Set(
  'equals equal is are was gives give giving makes make get gets got = -> means find finds finding calculate calculated calculating work works worked'.split(
    ' ',
  ),
)
const FILL = new Set(
  'the a an of its their this that it you we then by can could be found out up from to as your if i they one have ve will unit units each every much many how which always just and also taken all on whole thing answer so'.split(
    ' ',
  ),
)
const SIGNS: Readonly<Record<string, Term>> = {
  '*': op('*'),
  '/': op('/'),
  '÷': op('/'),
  '+': op('+'),
  '-': op('-'),
  '^': op('^'),
  '(': op('('),
  ')': op(')'),
  '√': op('root'),
}
const RAISED: Readonly<Record<string, number>> = { '²': 2, '³': 3 }
const PARTS_OF_ONE: Readonly<Record<string, number>> = {
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
}

/** Undefined where the author's equation itself cannot be read as algebra. */
export function readyEquation(
  equation: Equation,
  tokens: readonly Token[],
  text: string,
): ReadyEquation | undefined {
  const names = new Map(
    Object.entries(equation.where).map(
      ([symbol, wordings]) => [symbol, wordings.map(phraseOf)] as const,
    ),
  )
  const whole = { from: 0, to: tokens.length }
  const [found] = relationsIn(tokens, text, whole, names)
  return found && { relation: found.relation, names }
}

export interface EquationFound {
  readonly right: boolean
  readonly span: Span
}

/** What the tokens `from`..`to` say about `ready`: its equation, a wrong one over the same quantities, or nothing. */
export function equationIn(
  ready: ReadyEquation,
  tokens: readonly Token[],
  text: string,
  range: { readonly from: number; readonly to: number },
): EquationFound | undefined {
  const wanted = [...symbolsIn(ready.relation)].sort().join()
  let wrong: EquationFound | undefined
  for (const { relation, span } of relationsIn(tokens, text, range, ready.names)) {
    if ([...symbolsIn(relation)].sort().join() !== wanted) continue
    if (sameRelation(relation, ready.relation)) return { right: true, span }
    wrong ??= { right: false, span }
  }
  return wrong ?? toldOf(ready, tokens, text, range)
}

/** `Density …: it is the ratio of mass to volume`: what it is equal to is told, and the quantity itself is named before. */
function toldOf(
  ready: ReadyEquation,
  tokens: readonly Token[],
  text: string,
  range: { readonly from: number; readonly to: number },
): EquationFound | undefined {
  const wanted = symbolsIn(ready.relation)
  const pieces = piecesIn(tokens, text, range, ready.names)
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
  tokens: readonly Token[],
  text: string,
  range: { readonly from: number; readonly to: number },
  names: ReadonlyMap<string, readonly Phrase[]>,
): { relation: Relation; span: Span }[] {
  const found: { relation: Relation; span: Span }[] = []
  for (const run of runsOf(piecesIn(tokens, text, range, names))) {
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
    const shorter = trimmedSide([...cutOf(side, cut)])
    const expression = shorter.length === 0 ? undefined : expressionOf(arranged(shorter))
    if (expression) read.push([shorter, expression])
  }
  return read
}

function piecesIn(
  tokens: readonly Token[],
  text: string,
  { from, to }: { readonly from: number; readonly to: number },
  names: ReadonlyMap<string, readonly Phrase[]>,
): Piece[] {
  const keys: string[] = []
  for (let i = from; i < to; i += 1) keys[i] = keyOfToken(tokens[i]!)
  const symbols = [...names.keys()]
  const exactCase = new Set(symbols.map((s) => s.toLowerCase())).size < symbols.length
  // In notes a dash may stand for the equals sign, where there is none.
  const dashRelates = !tokens.slice(from, to).some((t) => t.text === '=' || EQUALS.has(t.text))
  const pieces: Piece[] = []
  for (let i = from; i < to;) {
    const named = longestName(names, keys, tokens, i, to)
    if (named) {
      pieces.push({
        is: 'term',
        term: { kind: 'symbol', name: named.symbol },
        from: i,
        to: named.end,
      })
      i = named.end
      continue
    }
    const token = tokens[i]!
    const raw = text.slice(token.start, token.end)
    if (
      dashRelates &&
      (token.text === ':' || (token.text === '-' && token.apart)) &&
      tokens[i + 1]?.apart
    ) {
      pieces.push({ is: 'equals', from: i, to: i + 1 })
      i += 1
      continue
    }
    const letters = token.kind === 'break' ? undefined : symbolsSpelt(raw, symbols, exactCase)
    if (letters && (symbolic(tokens, text, i, from, to) || letters.length > 1)) {
      for (const name of letters) {
        pieces.push({ is: 'term', term: { kind: 'symbol', name }, from: i, to: i + 1 })
      }
      i += 1
      continue
    }
    const worded = WORDS_BY_FIRST.get(token.text)?.find(([words]) => saysAt(words, tokens, i, to))
    if (worded) {
      const length = worded[0].length
      pieces.push({ ...worded[1], from: i, to: i + length } as Piece)
      if (token.text === 'squared' || token.text === 'cubed') {
        pieces.push({ is: 'term', term: num(token.text === 'squared' ? 2 : 3), from: i, to: i + 1 })
      }
      i += length
      continue
    }
    pieces.push(plainPiece(token, raw, i, pieces))
    if (RAISED[raw] !== undefined) {
      pieces.push({ is: 'term', term: num(RAISED[raw]), from: i, to: i + 1 })
    }
    i += 1
  }
  return pieces
}

function plainPiece(token: Token, raw: string, i: number, before: readonly Piece[]): Piece {
  const at = { from: i, to: i + 1 }
  if (RAISED[raw] !== undefined) return { is: 'term', term: op('^'), ...at }
  if (PARTS_OF_ONE[raw] !== undefined) return { is: 'term', term: num(PARTS_OF_ONE[raw]), ...at }
  if (token.kind === 'number') return { is: 'term', term: num(Number(token.text)), ...at }
  const last = before[before.length - 1]
  if (token.text === 'x' && last?.is === 'term') return { is: 'term', term: op('*'), ...at }
  if (EQUALS.has(token.text)) return { is: 'equals', ...at }
  if (token.text === 'by' || token.text === 'and' || token.text === 'to' || token.text === 'from') {
    return { is: token.text, ...at }
  }
  if (token.kind === 'sign' && SIGNS[token.text])
    return { is: 'term', term: SIGNS[token.text]!, ...at }
  if (token.kind === 'sign' && (token.text === ',' || token.text === '"' || token.text === "'"))
    return { is: 'fill', ...at }
  const [number] = token.kind === 'word' ? numbersIn(token.text) : []
  if (number) return { is: 'term', term: num(number.number), ...at }
  if (FILL.has(token.text)) return { is: 'fill', ...at }
  return { is: 'gap', ...at }
}

function saysAt(
  words: readonly string[],
  tokens: readonly Token[],
  at: number,
  to: number,
): boolean {
  return words.every((word, k) => at + k < to && tokens[at + k]!.text === word)
}

function longestName(
  names: ReadonlyMap<string, readonly Phrase[]>,
  keys: readonly string[],
  tokens: readonly Token[],
  at: number,
  to: number,
): { symbol: string; end: number } | undefined {
  let best: { symbol: string; end: number } | undefined
  for (const [symbol, phrases] of names) {
    for (const phrase of phrases) {
      const end = phraseEnd(phrase, keys, tokens, at, to)
      if (end > (best?.end ?? at)) best = { symbol, end }
    }
  }
  return best
}

// `fλ`, `mgh`: nothing but symbols, one after the other.
function symbolsSpelt(
  raw: string,
  symbols: readonly string[],
  exactCase: boolean,
): string[] | undefined {
  const same = (a: string, b: string) => (exactCase ? a === b : a.toLowerCase() === b.toLowerCase())
  const whole = symbols.find((symbol) => same(symbol, raw))
  if (whole) return [whole]
  const out: string[] = []
  for (let i = 0; i < raw.length;) {
    const next = symbols.find((symbol) => same(symbol, raw.slice(i, i + symbol.length)))
    if (!next) return undefined
    out.push(next)
    i += next.length
  }
  return out.length > 1 && out.length <= 5 ? out : undefined
}

// A lone letter is a quantity only beside a sign of mathematics or another lone letter: `a` is an article.
function symbolic(
  tokens: readonly Token[],
  text: string,
  at: number,
  from: number,
  to: number,
): boolean {
  const raw = text.slice(tokens[at]!.start, tokens[at]!.end)
  if (raw.length > 2 || /[^a-z]/i.test(raw)) return true
  const beside = [tokens[at - 1], tokens[at + 1]].filter(
    (t, k) => t && (k === 0 ? at - 1 >= from : at + 1 < to),
  )
  return beside.some(
    (t) =>
      t !== undefined &&
      (t.kind === 'number' ||
        (t.kind === 'sign' && /[=*/÷+^()√²³]|->|-/.test(t.text)) ||
        ['x', 'times', 'over', 'equals', 'is', 'divided', 'multiplied', 'per', 'by'].includes(
          t.text,
        )),
  )
}

function* runsOf(pieces: readonly Piece[]): Generator<Piece[]> {
  let run: Piece[] = []
  for (const [i, piece] of pieces.entries()) {
    // "The time a download needs is …": a few words between a quantity and the equals sign only describe it.
    const next = pieces.slice(i, i + 4).find((p) => p.is !== 'gap' && p.is !== 'fill')
    const before = [...run].reverse().find((p) => p.is !== 'gap' && p.is !== 'fill')
    const named = before?.is === 'term' && before.term.kind === 'symbol'
    const describes =
      named &&
      (next?.is === 'equals' ||
        (next?.is === 'term' && next.term.kind === 'op' && next.term.op === '/'))
    if (piece.is !== 'gap' || describes) {
      run.push(piece)
      continue
    }
    if (run.length > 2) yield run
    run = []
  }
  if (run.length > 2) yield run
}

// The sides of `v = d / t = 10 / 2`. Where a rule is told (`to find speed, divide distance by time`), the prefix begins a side.
function sidesOf(run: readonly Piece[]): Piece[][] {
  const sides: Piece[][] = [[]]
  const hasEquals = run.some((piece) => piece.is === 'equals')
  for (const piece of run) {
    const side = sides[sides.length - 1]!
    if (piece.is === 'equals') {
      if (side.some((p) => p.is === 'term' || p.is === 'prefix')) sides.push([])
    } else if (
      piece.is === 'prefix' &&
      PARTING.has(piece.word) &&
      side.some((p) => p.is === 'term')
    ) {
      if (!hasEquals || endsOperand(side)) sides.push([piece])
      else side.push(piece)
    } else side.push(piece)
  }
  return sides.map(trimmedSide).filter((side) => side.some((p) => p.is === 'term'))
}

const PARTING = new Set<Prefix>([
  'divide',
  'multiply',
  'product',
  'ratio',
  'sum',
  'difference',
  'subtract',
])

function endsOperand(side: readonly Piece[]): boolean {
  const last = side[side.length - 1]
  return last?.is !== 'term' || last.term.kind !== 'op'
}

// Leading and trailing filler is no part of what is quoted.
function trimmedSide(side: Piece[]): Piece[] {
  const solid = (p: Piece) => p.is === 'term' || p.is === 'prefix'
  const first = side.findIndex(solid)
  const last = side.length - 1 - [...side].reverse().findIndex(solid)
  return first < 0 ? [] : side.slice(first, last + 1)
}

const JOINERS: Readonly<
  Record<Prefix, { by: Piece['is']; op: '/' | '*' | '+' | '-'; swap?: boolean } | undefined>
> = {
  divide: { by: 'by', op: '/' },
  multiply: { by: 'by', op: '*' },
  product: { by: 'and', op: '*' },
  ratio: { by: 'to', op: '/' },
  sum: { by: 'and', op: '+' },
  difference: { by: 'and', op: '-' },
  subtract: { by: 'from', op: '-', swap: true },
  root: undefined,
  twice: undefined,
  half: undefined,
}

/** Infix terms of one side: `divide d by t` becomes d / t; the same quantity named twice over is one. */
function arranged(side: readonly Piece[]): Term[] {
  const prefix = side.findIndex((p) => p.is === 'prefix' && JOINERS[p.word])
  if (prefix >= 0) {
    const joiner = JOINERS[(side[prefix] as Extract<Piece, { is: 'prefix' }>).word]!
    const rest = side.slice(prefix + 1)
    const by = rest.findIndex((p) => p.is === joiner.by || (joiner.by === 'by' && p.is === 'and'))
    if (by > 0) {
      const one = bracketed(arranged(rest.slice(0, by)))
      const two = bracketed(arranged(rest.slice(by + 1)))
      const before = arranged(side.slice(0, prefix))
      return joiner.swap
        ? [...before, ...two, op(joiner.op), ...one]
        : [...before, ...one, op(joiner.op), ...two]
    }
  }
  const terms: Term[] = []
  for (const [i, piece] of side.entries()) {
    // `half x mass`: the sign is there already.
    const signed = side.slice(i + 1).find((p) => p.is === 'term' || p.is === 'prefix')
    const times = signed?.is === 'term' && signed.term.kind === 'op' ? [] : [op('*')]
    if (piece.is === 'prefix') {
      if (piece.word === 'root') terms.push(op('root'))
      else if (piece.word === 'twice') terms.push(num(2), ...times)
      else if (piece.word === 'half') terms.push(num(0.5), ...times)
      continue
    }
    if (piece.is !== 'term') continue
    const last = terms[terms.length - 1]
    const again =
      last?.kind === 'symbol' && piece.term.kind === 'symbol' && last.name === piece.term.name
    if (!again) terms.push(piece.term)
  }
  return terms
}

function bracketed(terms: readonly Term[]): Term[] {
  return [op('('), ...terms, op(')')]
}

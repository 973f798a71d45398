import type { Token } from '../1-statements/tokens'
import { keyOfToken, phraseEnd, type Phrase } from '../words/phrases'
import {
  carriesOn,
  EQUALS,
  FILL,
  num,
  op,
  PARTS_OF_ONE,
  RAISED,
  SIGNS,
  WORDS_BY_FIRST,
  type Piece,
} from './equation-words'
import { numbersIn } from './numbers'

/** The tokens `from`..`to` seen as mathematics: quantities by their names or symbols, numbers, operators, and what is neither. */
export function piecesIn(
  tokens: readonly Token[],
  text: string,
  { from, to }: { readonly from: number; readonly to: number },
  names: ReadonlyMap<string, readonly Phrase[]>,
): Piece[] {
  const keys: string[] = []
  for (let i = from; i < to; i += 1) keys[i] = keyOfToken(tokens[i]!)
  const symbols = [...names.keys()]
  const exactCase = differByCase(symbols)
  // In notes a dash may stand for the equals sign, where there is none.
  const dashRelates = !tokens.slice(from, to).some((t) => t.text === '=' || EQUALS.has(t.text))
  const pieces: Piece[] = []
  for (let i = from; i < to;) {
    // `times` is the operator, also where a quantity is called time.
    const named = tokens[i]!.text === 'times' ? undefined : longestName(names, keys, tokens, i, to)
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
      if (carriesOn(worded[0])) dropGaps(pieces)
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

/** Words after a quantity that only tell more of it: `the product that has formed and divide it by …`. */
const MORE = 5

function dropGaps(pieces: Piece[]): void {
  let k = pieces.length
  while (k > 0 && pieces.length - k < MORE && /^(?:gap|fill)$/.test(pieces[k - 1]!.is)) k -= 1
  if (pieces[k - 1]?.is === 'term') pieces.length = k
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

/** Are there two symbols that only their case tells apart? */
export const differByCase = (symbols: readonly string[]): boolean =>
  new Set(symbols.map((s) => s.toLowerCase())).size < symbols.length

/** Symbols that are written as one word, at the most. */
export const MOST_SPELT = 5

/** `fλ`, `mgh`: nothing but symbols, one after the other; undefined for everything else. */
export function symbolsSpelt(
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
  return out.length > 1 && out.length <= MOST_SPELT ? out : undefined
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

import { table } from '../words/table'
import type { Span } from '../types'

/** The smallest pieces of a dump, with offsets into the text exactly as it was typed. */
export interface Token extends Span {
  readonly kind: 'word' | 'number' | 'sign' | 'break'
  /** Lower case, accents and curly apostrophes plain. For arrows a plain form: `->`, `↑`, `↓`. */
  readonly text: string
  /** White space stands before it. */
  readonly apart: boolean
}

// One alternative a kind, tried in this order. `w/` and `b/c` are whole shorthand words although a
// slash otherwise divides; digits after letters belong to the word (CO2, IPv4).
// After a sign `w/` may be a quotient, but not before a word.
const PIECE =
  /(?<break>\r\n|[\n\r\u2028\u2029])|(?<space>[^\S\n\r\u2028\u2029]+)|(?<short>\bw\/o(?=\s)|\bw\/(?=\s\p{L}[\p{L}\d\u2080-\u2089])|(?<![=*/+^(]\s?)\b(?:w\/(?=\s|[a-z]{3})|b\/c(?=\s)))|(?<word>\p{L}[\p{L}\p{M}\p{Nd}\u2080-\u2089]*(?:['’]\p{L}+)*)|(?<number>\d+(?:,\d{3})*(?:\.\d+)?|\.\d+)|(?<sign><?[-=–—]{1,3}>|~~|\+\/-|[\s\S])/uy

const ARROWS = table<string>({
  '→': '->',
  '⟶': '->',
  '➔': '->',
  '➜': '->',
  '⇒': '->',
  '=>': '->',
  '==>': '->',
  '-->': '->',
  '–>': '->',
  '—>': '->',
  '⇌': '<->',
  '⇋': '<->',
  '↔': '<->',
  '<=>': '<->',
  '⬆': '↑',
  '⇧': '↑',
  '↗': '↑',
  '⬇': '↓',
  '⇩': '↓',
  '↘': '↓',
  '–': '-',
  '—': '-',
  '−': '-',
  '‑': '-',
  '×': '*',
  '·': '*',
  '⋅': '*',
  '∕': '/',
})

const SUBSCRIPTS = /[\u2080-\u2089]/g

/** Lower case without accents, subscripts as digits; the locale never plays a part. */
export function plain(word: string): string {
  return word
    .replace(/’/g, "'")
    .replace(SUBSCRIPTS, (digit) => String(digit.charCodeAt(0) - 0x2080))
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
}

/** Every token of `text` in order. White space is no token. Never throws; any Unicode will do. */
export function tokenise(text: string): Token[] {
  const tokens: Token[] = []
  let apart = true
  for (let at = 0; at < text.length;) {
    if (text[at] === ' ') {
      apart = true
      at += 1
      continue
    }
    const plainEnd = plainWordEnd(text, at)
    if (plainEnd > at) {
      const word = text.slice(at, plainEnd).toLowerCase()
      tokens.push({ kind: 'word', start: at, end: plainEnd, text: word, apart })
      apart = false
      at = plainEnd
      continue
    }
    PIECE.lastIndex = at
    const piece = PIECE.exec(text)!
    at = PIECE.lastIndex
    const kind = kindOf(piece.groups!)
    if (kind === 'space') {
      apart = true
      continue
    }
    const [raw] = piece
    const form = kind === 'word' ? plain(raw) : kind === 'number' ? raw.replaceAll(',', '') : raw
    tokens.push({
      kind,
      start: piece.index,
      end: at,
      text: kind === 'sign' ? (ARROWS[raw] ?? raw) : form,
      apart,
    })
    apart = kind === 'break'
  }
  return tokens
}

function kindOf(groups: Readonly<Record<string, string | undefined>>): Token['kind'] | 'space' {
  if (groups.space !== undefined) return 'space'
  if (groups.break) return 'break'
  if (groups.word ?? groups.short) return 'word'
  return groups.number ? 'number' : 'sign'
}

/**
 * Where the word at `at` ends, if it is nothing but unaccented letters and digits, as nearly all are: the expression for every kind of
 * piece takes ten times as long. `at` itself for everything else.
 */
function plainWordEnd(text: string, at: number): number {
  if (!isLetter(text.charCodeAt(at))) return at
  let end = at + 1
  while (isLetter(text.charCodeAt(end)) || isDigit(text.charCodeAt(end))) end += 1
  // An accent, an apostrophe or a slash may make more of it.
  const next = text.charCodeAt(end)
  return next > 127 || next === APOSTROPHE || next === SLASH ? at : end
}
const APOSTROPHE = 39
const SLASH = 47
const isLetter = (code: number) => (code >= 97 && code <= 122) || (code >= 65 && code <= 90)
const isDigit = (code: number) => code >= 48 && code <= 57

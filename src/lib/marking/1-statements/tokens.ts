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
  /(?<break>\r\n|[\n\r\u2028\u2029])|(?<space>[^\S\n\r\u2028\u2029]+)|(?<short>\bw\/o(?=\s)|\bw\/(?=\s\p{L}[\p{L}\d\u2080-\u2089])|(?<![=*/+^(]\s?)\b(?:w\/(?=\s|[a-z]{3})|b\/c(?=\s)))|(?<word>\p{L}[\p{L}\p{M}\p{Nd}\u2080-\u2089]*(?:['’]\p{L}+)*)|(?<number>\d+(?:,\d{3})*(?:\.\d+)?|\.\d+)|(?<sign><?[-=–—]{1,3}>|~~|\+\/-|[\s\S])/gu

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
  for (const piece of text.matchAll(PIECE)) {
    const groups = piece.groups ?? {}
    const raw = piece[0]
    if (groups.space !== undefined) {
      apart = true
      continue
    }
    const kind = groups.break
      ? 'break'
      : (groups.word ?? groups.short)
        ? 'word'
        : groups.number
          ? 'number'
          : 'sign'
    const form = kind === 'word' ? plain(raw) : kind === 'number' ? raw.replaceAll(',', '') : raw
    tokens.push({
      kind,
      start: piece.index,
      end: piece.index + raw.length,
      text: kind === 'sign' ? (ARROWS[raw] ?? raw) : form,
      apart,
    })
    apart = kind === 'break'
  }
  return tokens
}

import nlp from 'compromise/one'
import { tokenise, type Token } from './tokens'
import type { Span } from '../types'

/** One thing the student said: a sentence, a bullet, a line of notes. */
export interface Statement extends Span {
  readonly index: number
  /** First token and the one after the last, into the dump's tokens. */
  readonly from: number
  readonly to: number
  /** Counts up at blank lines and where notes begin or end: what stands apart belongs apart. */
  readonly paragraph: number
  /** It opened with a bullet or a number. */
  readonly bullet: boolean
  /** The number that the student gave the line, if any. */
  readonly number?: number
}

export interface Statements {
  readonly tokens: readonly Token[]
  readonly statements: readonly Statement[]
}

type Split = (text: string, world: unknown) => string[]
const world = nlp.world() as unknown as {
  methods: { one: { tokenize: { splitSentences: Split } } }
}

// A bullet is a sign or a short number that opens a line; it is not part of what is said.
const BULLET = /^[^\S\n]*(?:(?:[-–—*•◦▪‣·>+]|\(?(?:\d{1,2}|[a-z])[.)])[^\S\n]+)+/u

/** Splits a dump into statements: by lines and bullets first, then by sentences (compromise). */
export function toStatements(text: string): Statements {
  const tokens = tokenise(text)
  const statements: Statement[] = []
  let paragraph = 0
  let token = 0
  let blank = false
  let said = false

  for (const line of linesOf(text)) {
    const body = text.slice(line.start, line.end)
    if (body.trim() === '') {
      blank = true
      continue
    }
    if (blank && said) paragraph += 1
    blank = false
    const bullet = BULLET.exec(body)?.[0].length ?? 0
    let at = line.start + bullet
    let first = true
    const numbered = /(\d{1,2})[.)]/.exec(body.slice(0, bullet))
    for (const sentence of sentencesOf(body.slice(bullet))) {
      const end = at + sentence.length
      while (token < tokens.length && tokens[token]!.start < at) token += 1
      const from = token
      while (token < tokens.length && tokens[token]!.start < end) token += 1
      at = end
      for (const piece of shortPieces(tokens, from, token)) {
        if (
          !tokens.slice(piece.from, piece.to).some((t) => t.kind === 'word' || t.kind === 'number')
        )
          continue
        said = true
        statements.push({
          index: statements.length,
          ...piece,
          paragraph,
          bullet: first && bullet > 0,
          ...(numbered ? { number: Number(numbered[1]) } : {}),
          start: tokens[piece.from]!.start,
          end: tokens[piece.to - 1]!.end,
        })
        first = false
      }
    }
  }
  return { tokens, statements }
}

/**
 * A page without a full stop is still many statements: what is longer than any sentence is parted, at a comma or an `and` where
 * there is one.
 */
function* shortPieces(tokens: readonly Token[], from: number, to: number) {
  let start = from
  while (to - start > LONGEST) {
    let cut = start + LONGEST
    while (cut > start + LONGEST / 2 && !PARTS.has(tokens[cut]!.text)) cut -= 1
    if (cut === start + LONGEST / 2) cut = start + LONGEST
    yield { from: start, to: cut }
    start = cut
  }
  if (to > start) yield { from: start, to }
}

/** In tokens: longer than a long sentence. */
const LONGEST = 120
const PARTS = new Set([',', ';', 'and', 'so', 'then', 'but', 'because'])

function* linesOf(text: string): Generator<Span> {
  const breaks = /\r\n|[\n\r\u2028\u2029]/g
  let start = 0
  for (const hit of text.matchAll(breaks)) {
    yield { start, end: hit.index }
    start = hit.index + hit[0].length
  }
  yield { start, end: text.length }
}

/** Sentences whose concatenation is `line` again. The splitter's time grows with the square of what it is given at once. */
function sentencesOf(line: string): string[] {
  if (line.length > AT_ONCE) {
    const space = line.lastIndexOf(' ', AT_ONCE)
    const cut = space > AT_ONCE / 2 ? space : AT_ONCE
    return [...sentencesOf(line.slice(0, cut)), ...sentencesOf(line.slice(cut))]
  }
  const parts = world.methods.one.tokenize.splitSentences(line, nlp.world())
  // The splitter drops white space of some kinds; offsets matter more than its opinion then.
  return parts.join('') === line ? withoutAbbreviations(parts) : [line]
}

// A full stop behind a shortened word ends no sentence (`conc. of acid`); `no.` only where it counts something.
const SHORTENED =
  /(?:\b(?:approx|conc|temp|max|min|vol|dist|vs|eg|e\.g|ie|i\.e|esp|fig|incl|diff|avg|freq|resp)\.\s*$)/i
const COUNTS = /\bnos?\.\s*$/i

function withoutAbbreviations(parts: readonly string[]): string[] {
  const whole: string[] = []
  for (const part of parts) {
    const before = whole[whole.length - 1]
    const goesOn =
      before !== undefined &&
      ((SHORTENED.test(before) && /^\s*[\p{Ll}\d]/u.test(part)) ||
        (COUNTS.test(before) && /^\s*of\b/i.test(part)))
    if (goesOn) whole[whole.length - 1] = before + part
    else whole.push(part)
  }
  return whole
}
const AT_ONCE = 2_000

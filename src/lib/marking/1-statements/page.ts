import { table } from '../words/table'
import { keyOf, numberKey } from '../words/keys'
import { isSignWord, keyOfToken } from '../words/phrases'
import { numbersIn } from '../quantities/numbers'
import { isStopWord } from '../lexicon'
import type { Vocabulary } from '../words/spelling'
import { carriedSubjects } from './carry'
import { findCorrections } from './corrections'
import { findClauses } from './clauses'
import { readInPlace } from './in-place'
import { findNegations } from './negation'
import { toStatements, type Statement } from './statements'
import type { Token } from './tokens'

/** One place where a key stands: tokens `from`..`to` (exclusive). */
export interface Posting {
  readonly from: number
  readonly to: number
  /** 1 as written; less where a misspelling was read as the word. */
  readonly strength: number
  /** A pronoun or first letters stand here for the word. Several words may share the place. */
  readonly carried?: boolean
}

/** A dump made ready for finding: statements, clauses, what is negated and what is taken back, and where each key stands. */
export interface ReadPage {
  readonly text: string
  readonly tokens: readonly Token[]
  readonly keys: readonly string[]
  readonly statements: readonly Statement[]
  /** The statement each token is in, -1 for breaks and bullets. */
  readonly statementOf: Int32Array
  readonly clauseOf: Int32Array
  /** 1 where the token stands under an odd number of negations. */
  readonly negated: Uint8Array
  /** The word that negates a token, as a token index; -1 where none does. */
  readonly negatedBy: Int32Array
  /** 1 or 2 where the student takes the words back: see `findCorrections`. */
  readonly struck: Uint8Array
  /** How many tokens before each, and before the end, are a `than`: what stands behind it is the other thing. */
  readonly thans: Int32Array
  readonly postings: ReadonlyMap<string, readonly Posting[]>
  /** 1 where a misspelling is read as another word. */
  readonly corrected: Uint8Array
}

/** How sure it is that a pronoun stands for the subject before it. */
const CARRIED = 0.85

const RAISED = table<string>({ '²': '2', '³': '3' })

/** Reads a dump against the vocabulary of a topic: misspellings are read as the words they can only be. */
export function readPage(text: string, vocabulary: Vocabulary): ReadPage {
  const { tokens: pieces, statements } = toStatements(text)
  const typed = pieces.map((token, i): Token => {
    const placed = readInPlace(pieces, i)
    return placed === undefined || (placed !== 'number' && vocabulary.has(token.text))
      ? token
      : { ...token, kind: 'word', text: placed }
  })
  // Shorthand is written out and a misspelling read as the word that it can only be; offsets stay those of the typed text.
  const meant = typed.map((token) =>
    token.kind === 'word' ? vocabulary.correction(vocabulary.expanded(token.text)) : undefined,
  )
  const tokens = typed.map((token, i) => {
    const word = token.kind === 'word' ? (meant[i] ?? vocabulary.expanded(token.text)) : token.text
    return word === token.text ? token : { ...token, text: word }
  })
  const statementOf = new Int32Array(typed.length).fill(-1)
  for (const s of statements) statementOf.fill(s.index, s.from, s.to)

  const postings = new Map<string, Posting[]>()
  const post = (key: string, posting: Posting) => {
    const list = postings.get(key)
    if (list) list.push(posting)
    else postings.set(key, [posting])
  }

  // Where all is in capitals they tell nothing of first letters.
  const shouted = !/[a-z]/.test(text)
  const words = tokens.map((token) => token.text)
  const keys = tokens.map(keyOfToken)
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i]!
    if (token.kind === 'break') continue
    const one = { from: i, to: i + 1, strength: 1 }
    if (token.kind !== 'word') {
      if (token.kind === 'number' || isSignWord(token.text)) post(keys[i]!, one)
      continue
    }
    const word = words[i]!
    const typedAs = text.slice(token.start, token.end)
    for (const key of shouted ? [] : vocabulary.initials(typedAs))
      post(key, { ...one, strength: 0.95, carried: true })
    if (meant[i] !== undefined) post(keys[i]!, { ...one, strength: 0.95 })
    else if (!insideCompound(i)) {
      post(keys[i]!, one)
      for (const other of vocabulary.slips(word)) post(keyOf(other), { ...one, strength: 0.9 })
      const beside = vocabulary.slipBeside(nextContent(i, -1), word, nextContent(i, 1))
      if (beside !== undefined) post(keyOf(beside), { ...one, strength: 0.9 })
    }
    joinPieces(i, one)
  }
  postNumberWords()

  // `zig zag` for zigzag, `riprap` for rip-rap: one word written as two, two as one.
  function joinPieces(i: number, one: Posting): void {
    // cm³ has its exponent as a sign of its own: one word for matching.
    const raised = RAISED[tokens[i + 1]?.text ?? '']
    if (raised && !tokens[i + 1]!.apart)
      post(keyOf(words[i]! + raised), { from: i, to: i + 2, strength: 1 })
    const next = nextWord(i)
    if (next > 0) {
      const whole = words[i]! + words[next]!
      const hyphenated = next === i + 2
      if (hyphenated || vocabulary.has(whole))
        post(keyOf(whole), { from: i, to: next + 1, strength: 1 })
    }
    for (const piece of vocabulary.pieces(words[i]!)) post(keyOf(piece), one)
  }
  // `a thousand` stands at the key of 1000 as well.
  function postNumberWords(): void {
    let at = 0
    for (const { number, start, end, words: inWords } of numbersIn(text)) {
      if (!inWords) continue
      while (at < tokens.length && tokens[at]!.start < start) at += 1
      let to = at + 1
      while (to < tokens.length && tokens[to]!.start < end) to += 1
      if (at < tokens.length && statementOf[at]! >= 0)
        post(numberKey(number), { from: at, to, strength: 1 })
    }
  }
  // The word before or after in the statement that is no function word; '' where there is none.
  function nextContent(i: number, step: -1 | 1): string {
    let k = i + step
    while (tokens[k]?.kind === 'word' && isStopWord(words[k]!)) k += step
    return tokens[k]?.kind === 'word' && statementOf[k] === statementOf[i] ? words[k]! : ''
  }
  // In `SYN-ACK`, where the topic has that word, ACK is not said by itself.
  function insideCompound(i: number): boolean {
    const pair = (k: number) => {
      const next = k >= 0 && tokens[k]?.kind === 'word' ? nextWord(k) : -1
      return next === k + 2 && vocabulary.has(words[k]! + words[next]!) ? next : -1
    }
    return pair(i) > 0 || pair(i - 2) === i
  }
  function nextWord(i: number): number {
    const hyphen = tokens[i + 1]?.text === '-' && !tokens[i + 1]!.apart ? 1 : 0
    const next = i + 1 + hyphen
    return tokens[next]?.kind === 'word' && (hyphen === 0 || !tokens[next]!.apart) ? next : -1
  }
  const clauseOf = findClauses(tokens, words, statements)
  const { negated, negatedBy } = findNegations(tokens, words, statements, clauseOf)
  const struck = findCorrections(tokens, words, statements, clauseOf)
  const page = {
    text,
    tokens,
    keys,
    statements,
    statementOf,
    clauseOf,
    negated,
    negatedBy,
    struck,
    thans: thansBefore(tokens),
    postings,
    corrected: Uint8Array.from(meant, (word) => (word === undefined ? 0 : 1)),
  }
  for (const { at, key } of carriedSubjects(page))
    post(key, { from: at, to: at + 1, strength: CARRIED, carried: true })
  for (const list of postings.values()) list.sort((a, b) => a.from - b.from || a.to - b.to)
  return page
}

function thansBefore(tokens: readonly Token[]): Int32Array {
  const thans = new Int32Array(tokens.length + 1)
  tokens.forEach(({ text }, i) => (thans[i + 1] = thans[i]! + (text === 'than' ? 1 : 0)))
  return thans
}

/** The content keys of a statement: what it is about, without function words. */
export function contentKeys(page: ReadPage, statement: Statement): Set<string> {
  const keys = new Set<string>()
  for (let i = statement.from; i < statement.to; i += 1) {
    const token = page.tokens[i]!
    if (token.kind === 'word' && !isStopWord(token.text)) keys.add(page.keys[i]!)
  }
  return keys
}

import { isDirectionWord, isStopWord } from '../lexicon'
import { isVerb } from '../words/verbs'
import type { Statement } from './statements'
import type { Token } from './tokens'

const MARKS = new Set([',', ';', ':', '(', ')', '-', '->', '<->', '=', '"', '“', '”'])
const JOINERS = new Set([
  'but',
  'whereas',
  'while',
  'whilst',
  'although',
  'though',
  'however',
  'yet',
  'because',
  'since',
  'as',
  'so',
  'therefore',
  'which',
  'when',
  'if',
  'unless',
  'until',
  'then',
  'where',
])
const SUBJECTS = new Set([
  'it',
  'they',
  'he',
  'she',
  'we',
  'you',
  'i',
  'this',
  'that',
  'these',
  'those',
  'the',
  'a',
  'an',
  'its',
  'their',
  'there',
  'in',
  'one',
])

// `and the backwash runs …`, `and oxidation takes place …`: a subject and then a verb, after a verb of its own before.
function opensClause(words: readonly string[], i: number, from: number, to: number): boolean {
  if (SUBJECTS.has(words[i + 1] ?? '') || /^\d/.test(words[i + 1] ?? '')) return true
  if (isVerb(words[i + 1] ?? '')) return false
  const verbAfter = words
    .slice(i + 2, Math.min(to, i + 5))
    .some((word) => isVerb(word) && word.length > 3)
  return verbAfter && words.slice(from, i).some((word) => isVerb(word))
}

// `if you heat it it melts`: the object of one clause, then the subject of the next.
const meets = (words: readonly string[], i: number): boolean =>
  /^(?:it|they|he|she|you|we|there)$/.test(words[i]!) &&
  /^(?:it|them|him|her|us|that|this)$/.test(words[i - 1]!) &&
  !isDirectionWord(words[i - 2] ?? '') &&
  !isStopWord(words[i - 2] ?? 'of')

/**
 * The clause each token stands in, counted through the whole dump. A clause ends at a comma, colon, bracket, dash, arrow or equals
 * sign, and before a joining word; before `and` only where a new subject follows (`and the backwash …`).
 */
export function findClauses(
  tokens: readonly Token[],
  words: readonly string[],
  statements: readonly Statement[],
): Int32Array {
  const clauseOf = new Int32Array(tokens.length).fill(-1)
  let clause = -1
  for (const { from, to } of statements) {
    clause += 1
    // `↑ amplitude` or `amplitude ↑`: an arrow belongs to what it opens or closes, as the first one shows.
    const arrow = tokens.slice(from, to).findIndex((t) => t.text === '↑' || t.text === '↓')
    const opens = arrow === 0 || (arrow > 0 && tokens[from + arrow - 1]!.kind === 'sign')
    for (let i = from; i < to; i += 1) {
      const token = tokens[i]!
      const hyphen = token.text === '-' && !token.apart
      const closed = arrow >= 0 && !opens && i > from && /[↑↓]/.test(tokens[i - 1]!.text)
      const opened = arrow >= 0 && opens && /[↑↓]/.test(token.text)
      if (closed || opened || (token.kind === 'sign' && MARKS.has(token.text) && !hyphen))
        clause += 1
      else if (i > from && token.kind === 'word') {
        if (JOINERS.has(words[i]!) || meets(words, i)) clause += 1
        else if (words[i] === 'and' && opensClause(words, i, from, to)) clause += 1
      }
      clauseOf[i] = clause
    }
  }
  return clauseOf
}

import { isContractedNot } from '../lexicon'
import type { Statement } from './statements'
import type { Token } from './tokens'

/** How far to the right a negation reaches at the most, in tokens. */
const REACH = 9

const NEGATORS = new Set(
  'not no never without nor none nothing nobody neither hardly barely scarcely nowhere w/o non lack lacks lacking absence'.split(
    ' ',
  ),
)
// Verbs that turn what follows into its opposite; `stop` only where something is stopped from something.
const PREVENTERS = new Set(
  'prevent prevents prevented preventing stop stops stopped stopping avoid avoids avoided avoiding fail fails failed refuse refuses'.split(
    ' ',
  ),
)

/** Which tokens are under an odd number of negations, and by which word. "not only" and "not all" do not. */
export function findNegations(
  tokens: readonly Token[],
  words: readonly string[],
  statements: readonly Statement[],
  clauseOf: Int32Array,
): { negated: Uint8Array; negatedBy: Int32Array } {
  const negated = new Uint8Array(tokens.length)
  const negatedBy = new Int32Array(tokens.length).fill(-1)
  for (const { from, to } of statements) {
    for (let i = from; i < to; i += 1) {
      if (tokens[i]!.kind !== 'word') continue
      const length = negatorLength(words, i, to)
      if (length === 0 || turnedLater(words, i, to)) continue
      if (EFFECTS.has(words[i + 1] ?? '') && words[i] === 'no')
        denyBefore(i, from, clauseOf, negated, negatedBy)
      for (let k = i + length; k < to && k < i + length + REACH; k += 1) {
        if (ends(tokens, words, clauseOf, i, k)) break
        negated[k] = 1 - negated[k]!
        negatedBy[k] = i
      }
      i += length - 1
    }
  }
  return { negated, negatedBy }
}

const EFFECTS = new Set(['effect', 'influence', 'impact', 'difference', 'part', 'role'])

// `taxes have no effect on it` denies the taxes.
function denyBefore(
  at: number,
  from: number,
  clauseOf: Int32Array,
  negated: Uint8Array,
  negatedBy: Int32Array,
): void {
  for (let k = at - 1; k >= from && clauseOf[k] === clauseOf[at]; k -= 1) {
    negated[k] = 1 - negated[k]!
    negatedBy[k] = at
  }
}

// `not … until X`, `not … unless X` say that it does happen with X.
function turnedLater(words: readonly string[], i: number, to: number): boolean {
  for (let k = i + 1; k < to; k += 1) if (words[k] === 'until' || words[k] === 'unless') return true
  return false
}

function negatorLength(words: readonly string[], i: number, to: number): number {
  const word = words[i]!
  const next = i + 1 < to ? words[i + 1]! : ''
  if (NEGATORS.has(word)) {
    if (
      (word === 'not' && (next === 'only' || next === 'just' || next === 'all')) ||
      (word === 'no' && next === 'matter' && words[i + 2] === 'how')
    )
      return 0
    // `no. of waves` is a number
    if (word === 'no' && (next === 'of' || (next === '.' && words[i + 2] === 'of'))) return 0
    if (word === 'no' && (next === 'doubt' || next === 'wonder' || next === 'wait')) return 0
    if ((word === 'lack' || word === 'lacks' || word === 'absence') && next === 'of') return 2
    return 1
  }
  if (isContractedNot(word)) return 1
  if (
    (word === 'rather' && next === 'than') ||
    (word === 'instead' && next === 'of') ||
    (word === 'free' && next === 'of')
  )
    return 2
  if (PREVENTERS.has(word)) {
    for (let k = i + 1; k < to && k < i + 7; k += 1)
      if (words[k] === 'from' || /ing$/.test(words[k]!)) return 1
    return word.startsWith('prevent') || word.startsWith('avoid') || word.startsWith('fail') ? 1 : 0
  }
  return 0
}

// A negation ends with its clause; an opening `but` ends it too. A comma inside a list ("no wind, waves or tide") does not reach on:
// the examiner's reading of what was written, not what may have been meant.
function ends(
  tokens: readonly Token[],
  words: readonly string[],
  clauseOf: Int32Array,
  at: number,
  k: number,
): boolean {
  if (clauseOf[k] !== clauseOf[at]) return true
  return tokens[k]!.kind === 'word' && (words[k] === 'but' || words[k] === 'rather')
}

import { isContractedNot, keptApart, joined, spelling } from '../lexicon'
import { stemOf } from '../lexicon/stem'

/**
 * The key of a word: two surface forms have the same key where they are forms of the same word for an
 * examiner (erode, eroded, erosion), and different keys where they are different terms although the
 * stemmer joins them (solute, solution). Porter's stemmer decides, corrected by the lexicon. `doesn't` has the key of `not`.
 */
export function keyOf(surface: string): string {
  const kept = keys.get(surface)
  if (kept !== undefined) return kept
  const key = makeKey(surface)
  // A dump can bring any number of different strings; the memory of them is bounded.
  if (keys.size > 50_000) keys.clear()
  keys.set(surface, key)
  return key
}

const keys = new Map<string, string>()

/** The same, and a number in words has the key of the number. */
export const keyOfWord = (word: string): string => SMALL_NUMBERS.get(word) ?? keyOf(word)

/** One key for a number, however it is written: 1,000 and 1000, 25.0 and 25. */
export const numberKey = (number: number): string => String(number)

/** From two on: `one` is too often no number. */
const SMALL_NUMBERS = new Map(
  'two three four five six seven eight nine ten eleven twelve'
    .split(' ')
    .map((word, i) => [word, numberKey(i + 2)]),
)

function makeKey(surface: string): string {
  if (isContractedNot(surface)) return 'not'
  const word = spelling(possessor(surface))
  const apart = keptApart(word) ?? inflected(word, keptApart)
  if (apart !== undefined) return apart
  if (!/^[a-z]+$/.test(word)) return word
  const known = joined(word) ?? inflected(word, joined)
  if (known !== undefined) return known
  const stem = stemOf(word)
  return joined(stem) ?? stem
}

/** Without the ending of the possessive: `water's`, `waves'`. */
function possessor(surface: string): string {
  return surface.replace(/'s$|'$/, '')
}

// The lexicon lists a word with its plain inflections at the most; this finds the ones that it does not.
function inflected(word: string, look: (word: string) => string | undefined): string | undefined {
  for (const [ending, instead] of INFLECTIONS) {
    if (!word.endsWith(ending)) continue
    const base = word.slice(0, -ending.length) + instead
    const found = look(base)
    if (found !== undefined && base.length > 2) return found
  }
  return undefined
}

const INFLECTIONS: readonly (readonly [string, string])[] = [
  ['ies', 'y'],
  ['es', ''],
  ['s', ''],
  ['ing', ''],
  ['ing', 'e'],
  ['ed', ''],
  ['ed', 'e'],
]

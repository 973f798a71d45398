import { isKnown, isStopWord } from '../lexicon'
import { keyOfToken, wordsForMatching } from './phrases'

/** Terms that a student may shorten to their first letters: SA for surface area, STM for short-term memory. */
export type Initials = ReadonlyMap<string, readonly string[]>

const LEAST = 2
const MOST = 4

/**
 * For each group of first letters, in lower case, the keys of the term that it can only be. `terms`: phrases of the topic. Letters that
 * stand for two terms, or are a word of the topic, stand for neither.
 */
export function initialsOf(terms: Iterable<string>, has: (word: string) => boolean): Initials {
  const found = new Map<string, readonly string[] | undefined>()
  for (const term of terms) {
    const words = term.toLowerCase().match(/[a-z]+(?:-[a-z]+)*/g) ?? []
    for (let from = 0; from < words.length; from += 1) {
      for (let to = from + 1; to <= Math.min(words.length, from + MOST); to += 1) {
        const run = words.slice(from, to)
        if (run.some((word) => word.length < 3 || isStopWord(word))) break
        const letters = run.flatMap((word) => word.split('-').map((half) => half[0])).join('')
        if (letters.length < LEAST || letters.length > MOST || has(letters)) continue
        const keys = run.flatMap((word) => wordsForMatching(word).map(keyOfToken))
        const other = found.has(letters) && found.get(letters)?.join(' ') !== keys.join(' ')
        found.set(letters, other ? undefined : keys)
      }
    }
  }
  return new Map([...found].filter((entry): entry is [string, string[]] => entry[1] !== undefined))
}

/** May what was typed be first letters: capitals, or three letters and more that are no word? */
export function looksLikeInitials(typed: string): boolean {
  if (typed.length < LEAST || typed.length > MOST) return false
  return /^[A-Z]+$/.test(typed) || (/^[a-z]{3,}$/.test(typed) && !isKnown(typed))
}

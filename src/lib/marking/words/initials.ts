import { isKnown, isStopWord } from '../lexicon'
import { once } from '../lexicon/once'
import { keyOfToken, wordsForMatching } from './phrases'

/** Terms that a student may shorten to their first letters: SA for surface area, STM for short-term memory. */
export interface Initials {
  /** The keys of the term that these first letters can only be; [] otherwise. */
  of(typed: string): readonly string[]
}

const LEAST = 2
const MOST = 4

/** `terms`: phrases of the topic. Letters that stand for two terms, or are a word of the topic, stand for neither. */
export function initialsOf(terms: readonly string[], has: (word: string) => boolean): Initials {
  const found = new Map<string, readonly string[]>()
  const runs = once(() => runsByLetters(terms))
  // `short-term memory / STM`: its author says what the letters stand for.
  const whole = once(() => new Set(terms.map((term) => term.toLowerCase())))
  return {
    of(typed) {
      if (typed.length < LEAST || typed.length > MOST) return NONE
      const letters = typed.toLowerCase()
      const known = found.get(letters)
      if (known) return known
      const spelt = runs().get(letters)
      if (!spelt || (has(letters) && !whole().has(letters))) return NONE
      const keys = onlyOne(spelt) ?? NONE
      found.set(letters, keys)
      return keys
    },
  }
}
const NONE: readonly never[] = []

/** For each group of first letters the runs of words that have them, each once. */
function runsByLetters(terms: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const runs = new Map<string, string[]>()
  for (const term of new Set(terms)) {
    const words = term.toLowerCase().match(/[a-z]+(?:-[a-z]+)*/g) ?? []
    for (let from = 0; from < words.length; from += 1) {
      for (let to = from + 1; to <= Math.min(words.length, from + MOST); to += 1) {
        const last = words[to - 1]!
        if (last.length < 3 || isStopWord(last)) break
        const run = words.slice(from, to).join(' ')
        const letters = run
          .split(/[ -]/)
          .map((word) => word[0])
          .join('')
        if (letters.length < LEAST || letters.length > MOST) continue
        const known = runs.get(letters)
        if (!known) runs.set(letters, [run])
        else if (!known.includes(run)) known.push(run)
      }
    }
  }
  return runs
}

/** The keys that all of the runs share; undefined where they do not. */
function onlyOne(runs: readonly string[]): readonly string[] | undefined {
  const [first, ...others] = runs.map((run) =>
    run.split(' ').flatMap((word) => wordsForMatching(word).map(keyOfToken)),
  )
  return others.every((keys) => keys.join(' ') === first?.join(' ')) ? first : undefined
}

/** May what was typed be first letters: capitals, or three letters and more that are no word? */
export function looksLikeInitials(typed: string): boolean {
  if (typed.length < LEAST || typed.length > MOST) return false
  return /^[A-Z]+$/.test(typed) || (/^[a-z]{3,}$/.test(typed) && !isKnown(typed))
}

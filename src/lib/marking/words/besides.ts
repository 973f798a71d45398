import levenshtein from 'natural/lib/natural/distance/levenshtein_distance.js'
import { isDirectionWord, isStopWord, lookAlikes } from '../lexicon'
import { keyOf } from './keys'

/** Shorter words are one letter off from too many others. */
const SHORTEST = 5
/** A longer real word is a term of its own (insulation for insolation). */
const LONGEST_SLIP = 6

/** Which words of a topic stand beside which in its phrases. */
export class Besides {
  private readonly after = new Map<string, Set<string>>()
  private readonly before = new Map<string, Set<string>>()

  constructor(phrases: readonly string[]) {
    for (const phrase of phrases) {
      const words = phrase.toLowerCase().match(/[a-z]+/g) ?? []
      const kept = words.filter((word) => !isStopWord(word))
      kept.slice(1).forEach((word, i) => {
        note(this.after, keyOf(kept[i]!), word)
        note(this.before, keyOf(word), kept[i]!)
      })
    }
  }

  /** The word one letter off from `word` that stands between these two, or beside one of them; undefined where there is none. */
  find(before: string, word: string, after: string): string | undefined {
    const [behind, ahead] = [this.after.get(keyOf(before)), this.before.get(keyOf(after))]
    const found = new Set(
      [...(behind ?? []), ...(ahead ?? [])].filter((w) => oneLetterOff(word, w)),
    )
    return found.size === 1 ? [...found][0] : undefined
  }
}

function note(map: Map<string, Set<string>>, key: string, word: string): void {
  const there = map.get(key)
  if (there) there.add(word)
  else map.set(key, new Set([word]))
}

function oneLetterOff(word: string, term: string): boolean {
  return (
    term.length >= SHORTEST &&
    word.length <= LONGEST_SLIP &&
    term[0] === word[0] &&
    Math.abs(term.length - word.length) <= 1 &&
    !isDirectionWord(term) &&
    keyOf(term) !== keyOf(word) &&
    levenshtein.DamerauLevenshteinDistance(word, term, { restricted: true }) === 1 &&
    !lookAlikes(term).includes(word)
  )
}

import DoubleMetaphone from 'natural/lib/natural/phonetics/double_metaphone.js'
import levenshtein from 'natural/lib/natural/distance/levenshtein_distance.js'
import {
  isDirectionWord,
  isKnown,
  isStopWord,
  lookAlikes,
  shorthandFor,
  soundAlikes,
} from '../lexicon'
import { initialsOf, looksLikeInitials } from './initials'
import { keyOf } from './keys'

/** The words of a topic, for reading what a student typed as what it can only mean. */
export interface Vocabulary {
  /** Student's shorthand written out: `temp` is temperature, unless the topic itself has the short form. */
  expanded(word: string): string
  /** The word that a misspelling can only be; undefined where it is a word itself, or two terms are as near. */
  correction(word: string): string | undefined
  /** Words of the topic that this real word is a slip for: beech for beach. */
  slips(word: string): readonly string[]
  /** Is it a word of the topic, a hyphenated one written as one included (zigzag)? */
  has(word: string): boolean
  /** The keys of the term whose first letters these can only be; [] otherwise. */
  initials(typed: string): readonly string[]
  /** The two words of the topic that a student wrote as one; [] otherwise. */
  pieces(word: string): readonly string[]
}

const sounds = new DoubleMetaphone()

interface Entry {
  readonly word: string
  readonly letters: number
  readonly sound: string
}

/** `terms`: the words of the topic in any form; `common`: plain words that a misspelling may also be; `phrases`: its terms of several words. */
export function vocabularyOf(
  terms: ReadonlySet<string>,
  common: readonly string[],
  phrases: readonly string[] = [],
): Vocabulary {
  const initials = initialsOf(phrases, (word) => terms.has(word))
  const words = [...terms].filter((word) => word.length > 3)
  // A term that is not of the topic is no less likely to be meant than the one that is.
  const rivals = words.flatMap(lookAlikes).filter((word) => !terms.has(word))
  const own = entriesOf([...words, ...new Set(rivals)])
  const general = entriesOf(common.filter((word) => word.length > 3 && !terms.has(word)))
  const generalWords = new Set(common)
  const corrections = new Map<string, string | undefined>()

  // `equilib`, `constr`: the beginning of one word of the topic only.
  const beginning = (word: string): string | undefined => {
    const whole = own
      .filter(
        (entry) =>
          terms.has(entry.word) &&
          entry.word.length > word.length + (word.length > 6 ? 0 : 1) &&
          entry.word.startsWith(word),
      )
      .map((entry) => entry.word)
    return whole.length > 0 && new Set(whole.map(keyOf)).size === 1 ? whole[0] : undefined
  }
  const correct = (word: string): string | undefined => {
    if (word.length === 3 && !terms.has(word) && !isKnown(word)) return beginning(word)
    if (
      word.length < 4 ||
      terms.has(word) ||
      generalWords.has(word) ||
      !/^[a-z']+$/.test(word) ||
      isKnown(word)
    )
      return undefined
    return beginning(word) ?? nearest(word, own, general)
  }
  return {
    expanded: (word) => (terms.has(word) ? word : (shorthandFor(word) ?? word)),
    correction(word) {
      if (!corrections.has(word)) corrections.set(word, correct(word))
      return corrections.get(word)
    },
    slips: (word) =>
      terms.has(word)
        ? []
        : soundAlikes(word).filter(
            (other) => terms.has(other) && !isStopWord(other) && !isDirectionWord(other),
          ),
    has: (word) => terms.has(word),
    initials: (typed) =>
      looksLikeInitials(typed) ? (initials.get(typed.toLowerCase()) ?? []) : [],
    pieces(word) {
      if (word.length < 6 || terms.has(word)) return []
      for (let cut = 3; cut <= word.length - 3; cut += 1) {
        const [one, two] = [word.slice(0, cut), word.slice(cut)]
        if (terms.has(one) && terms.has(two)) return [one, two]
      }
      return []
    },
  }
}

function entriesOf(words: readonly string[]): Entry[] {
  return words.map((word) => ({ word, letters: lettersOf(word), sound: soundOf(word) }))
}

function soundOf(word: string): string {
  return /^[a-z']+$/.test(word) ? sounds.process(word)[0] : ''
}

// One bit a letter: two words that differ in more letters than the edits allow cannot be near.
function lettersOf(word: string): number {
  let bits = 0
  for (let i = 0; i < word.length; i += 1) bits |= 1 << (word.charCodeAt(i) % 31)
  return bits
}

function bitCount(bits: number): number {
  let n = bits
  let count = 0
  while (n) {
    n &= n - 1
    count += 1
  }
  return count
}

/** Edits that leave no doubt which word is meant, by its length; one more where it sounds the same. */
function editsAllowed(length: number): number {
  return length < 5 ? 1 : length < 8 ? 2 : length < 12 ? 3 : 4
}

// `unencrypted` is no slip for `encrypted`: a prefix makes another word.
function prefixed(longer: string, shorter: string): boolean {
  return (
    longer.endsWith(shorter) &&
    /^(?:un|in|im|il|ir|non|dis|de|re|pre|post|anti|mis|sub|super|inter|intra|hyper|hypo|under|over|out|up|down|ex|en|a|an)$/.test(
      longer.slice(0, longer.length - shorter.length),
    )
  )
}

interface Near {
  readonly word: string
  readonly cost: number
  readonly edits: number
}

function nearest(
  word: string,
  own: readonly Entry[],
  general: readonly Entry[],
): string | undefined {
  const letters = lettersOf(word)
  const sound = soundOf(word)
  let best: Near | undefined
  let rival: Near | undefined
  const look = (entries: readonly Entry[], isOwn: boolean) => {
    for (const entry of entries) {
      const allowed = editsAllowed(Math.min(word.length, entry.word.length))
      if (Math.abs(entry.word.length - word.length) > allowed + 1) continue
      if (bitCount(entry.letters ^ letters) > 2 * allowed + 1) continue
      if (prefixed(word, entry.word) || prefixed(entry.word, word)) continue
      const edits = levenshtein.DamerauLevenshteinDistance(word, entry.word, { restricted: true })
      const alike = sound !== '' && entry.sound === sound
      const limit = alike ? allowed + (isOwn && word.length > 5 ? 1 : 0) : Math.max(1, allowed - 1)
      if (edits > limit) continue
      // Sound settles what edits leave equal; the first letter is rarely wrong.
      const cost =
        edits - (alike ? 0.6 : 0) + (entry.word[0] === word[0] ? 0 : 0.5) + (isOwn ? 0 : 0.3)
      if (!best || cost < best.cost) {
        if (best && keyOf(best.word) !== keyOf(entry.word)) rival = best
        best = { word: entry.word, cost, edits }
      } else if (keyOf(entry.word) !== keyOf(best.word) && (!rival || cost < rival.cost)) {
        rival = { word: entry.word, cost, edits }
      }
    }
  }
  look(own, true)
  look(general, false)
  if (!best) return undefined
  // As close to another word: no one can say which is meant.
  if (rival && rival.cost - best.cost < 0.25) return undefined
  // Between two terms that look alike sound settles nothing.
  if (rival && rival.edits <= best.edits && lookAlikes(best.word).includes(rival.word))
    return undefined
  return best.word
}

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
import { once } from '../lexicon/once'
import { initialsOf, looksLikeInitials } from './initials'
import { Besides } from './besides'
import { keyOf } from './keys'

/** The words of a topic, for reading what a student typed as what it can only mean. */
export interface Vocabulary {
  /** Student's shorthand written out: `temp` is temperature, unless the topic itself has the short form. */
  expanded(word: string): string
  /** The word that a misspelling can only be; undefined where it is a word itself, or two terms are as near. */
  correction(word: string): string | undefined
  /** Words of the topic that this real word is a slip for: beech for beach. */
  slips(word: string): readonly string[]
  /**
   * The word of the topic that a real word is one letter off from, where the words beside it are those that stand beside it in the
   * topic: `mail sever` is the mail server.
   */
  slipBeside(before: string, word: string, after: string): string | undefined
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
  /** What is compared: the word, or the word without its ending. */
  readonly form: string
  readonly letters: number
}

/** `terms`: the words of the topic in any form; `common`: gives the plain words that a misspelling may also be; `phrases`: its terms of several words; `sentences`: its points. */
export function vocabularyOf(
  terms: ReadonlySet<string>,
  common: () => readonly string[],
  phrases: readonly string[] = [],
  sentences: readonly string[] = [],
): Vocabulary {
  const initials = initialsOf(phrases, (word) => terms.has(word))
  const besides = once(() => new Besides([...phrases, ...sentences]))
  const corrections = new Map<string, string | undefined>()
  // Only a word that is none asks for these.
  const own = once(() => {
    const words = [...terms].filter((word) => word.length > 3)
    // A term that is not of the topic is no less likely to be meant than the one that is.
    const rivals = words.flatMap(lookAlikes).filter((word) => !terms.has(word))
    return entriesOf([...words, ...new Set(rivals)])
  })
  const bases = once(() => basesOf(own()))
  const others = once(() => generalOf(common()).entries.filter((entry) => !terms.has(entry.word)))

  // `equilib`, `constr`: the beginning of one word of the topic only.
  const beginning = (word: string): string | undefined => {
    const whole = own()
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
      !/^[a-z']+$/.test(word) ||
      isKnown(word) ||
      generalOf(common()).words.has(word)
    )
      return undefined
    return beginning(word) ?? nearest(word, own(), bases(), others())
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
    slipBeside: (before, word, after) =>
      terms.has(word) || word.length < 4 || isStopWord(word) || isDirectionWord(word)
        ? undefined
        : besides().find(before, word, after),
    has: (word) => terms.has(word),
    initials(typed) {
      const keys = initials.of(typed)
      return keys.length > 0 && looksLikeInitials(typed) ? keys : NONE
    },
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

const NONE: readonly never[] = []

const entriesOf = (words: readonly string[]): Entry[] => words.map((word) => entryOf(word, word))

interface General {
  readonly words: ReadonlySet<string>
  readonly entries: readonly Entry[]
}

/** The common words are the same for every topic. */
function generalOf(common: readonly string[]): General {
  const known = generals.get(common)
  if (known) return known
  const made = {
    words: new Set(common),
    entries: entriesOf(common.filter((word) => word.length > 3)),
  }
  generals.set(common, made)
  return made
}
const generals = new WeakMap<readonly string[], General>()

function entryOf(word: string, form: string): Entry {
  return { word, form, letters: lettersOf(form) }
}

/** Shorter ones are too near to one another. */
const SHORTEST_BASE = 4

// The words without their endings, one for each: a student misspells a form of the word that the topic does not have.
function basesOf(words: readonly Entry[]): Entry[] {
  const found = new Map<string, Entry>()
  for (const { word } of words) {
    const base = withoutEnding(word)
    if (base.length >= SHORTEST_BASE && !found.has(base)) found.set(base, entryOf(word, base))
  }
  return [...found.values()]
}

const withoutEnding = (word: string): string =>
  word.replace(/(?:ing|ed|es|e|s)$/, '').replace(/([bdgmnprt])\1$/, '$1')

function soundOf(word: string): string {
  const known = soundsOf.get(word)
  if (known !== undefined) return known
  const sound = /^[a-z']+$/.test(word) ? sounds.process(word)[0] : ''
  if (soundsOf.size > 20_000) soundsOf.clear()
  soundsOf.set(word, sound)
  return sound
}
const soundsOf = new Map<string, string>()

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

/** What an ending of its own costs: a word of the topic as it stands is nearer. */
const OTHER_ENDING = 0.25

function nearest(
  word: string,
  own: readonly Entry[],
  bases: readonly Entry[],
  general: readonly Entry[],
): string | undefined {
  let best: Near | undefined
  let rival: Near | undefined
  const look = (typed: string, entries: readonly Entry[], isOwn: boolean, further: number) => {
    const letters = lettersOf(typed)
    const sound = soundOf(typed)
    for (const entry of entries) {
      const { form } = entry
      const allowed = editsAllowed(Math.min(typed.length, form.length))
      if (Math.abs(form.length - typed.length) > allowed + 1) continue
      if (bitCount(entry.letters ^ letters) > 2 * allowed + 1) continue
      if (prefixed(typed, form) || prefixed(form, typed)) continue
      const edits = levenshtein.DamerauLevenshteinDistance(typed, form, { restricted: true })
      if (edits > allowed + 1) continue
      const alike = sound !== '' && soundOf(form) === sound
      const limit = alike ? allowed + (isOwn && typed.length > 5 ? 1 : 0) : Math.max(1, allowed - 1)
      if (edits > limit) continue
      // Sound settles what edits leave equal; the first letter is rarely wrong.
      const cost =
        edits - (alike ? 0.6 : 0) + (form[0] === typed[0] ? 0 : 0.5) + (isOwn ? 0 : 0.3) + further
      if (!best || cost < best.cost) {
        if (best && keyOf(best.word) !== keyOf(entry.word)) rival = best
        best = { word: entry.word, cost, edits }
      } else if (keyOf(entry.word) !== keyOf(best.word) && (!rival || cost < rival.cost)) {
        rival = { word: entry.word, cost, edits }
      }
    }
  }
  look(word, own, true, 0)
  const base = withoutEnding(word)
  if (base !== word && base.length >= SHORTEST_BASE) look(base, bases, true, OTHER_ENDING)
  look(word, general, false, 0)
  if (!best) return undefined
  // As close to another word: no one can say which is meant.
  if (rival && rival.cost - best.cost < 0.25) return undefined
  // Between two terms that look alike sound settles nothing.
  if (rival && rival.edits <= best.edits && lookAlikes(best.word).includes(rival.word))
    return undefined
  return best.word
}

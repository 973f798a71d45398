import { oppositeRows, synonymRows } from '../lexicon'
import { keyOfToken, wordsForMatching } from './phrases'

/** Another way to say a word: the keys of its words in order, and what it does to the meaning. */
export interface Related {
  readonly keys: readonly string[]
  /** How surely it means the same, 0 to 1. */
  readonly strength: number
  /** -1 where it is the opposite: saying it instead turns the statement round. */
  readonly sign: 1 | -1
  /** An opposite only where it stands in the place of the word (anode for cathode). */
  readonly slot: boolean
}

const SYNONYM = 0.9
const SAME_SIDE = 0.85
const OPPOSITE = 0.85

interface Table {
  readonly related: ReadonlyMap<string, readonly Related[]>
  /** Phrases of several words that have relations: first key -> whole phrases, longest first. */
  readonly phrases: ReadonlyMap<string, readonly (readonly string[])[]>
  readonly directional: ReadonlySet<string>
}

let made: Table | undefined

/** The identity of a word or a phrase of several words in these tables. */
export function phraseKey(keys: readonly string[]): string {
  return keys.join(' ')
}

/** What may stand for `phrase` (a `phraseKey`), itself left out: synonyms, and opposites with sign -1. */
export function relatedTo(phrase: string): readonly Related[] {
  return table().related.get(phrase) ?? []
}

/** Does the word have an opposite that turns a statement round (increase, above, gain)? */
export function isDirectional(phrase: string): boolean {
  return table().directional.has(phrase)
}

/** The longest phrase of the tables that starts at `at`; at least two words, or undefined. */
export function knownPhraseAt(keys: readonly string[], at: number): readonly string[] | undefined {
  return table()
    .phrases.get(keys[at]!)
    ?.find((phrase) => phrase.every((key, i) => keys[at + i] === key))
}

function table(): Table {
  return (made ??= build())
}

function build(): Table {
  const related = new Map<string, Map<string, Related>>()
  const phrases = new Map<string, string[][]>()
  const directional = new Set<string>()

  const keysOf = (words: string) => wordsForMatching(words).map(keyOfToken)
  const relate = (
    one: readonly string[],
    two: readonly string[],
    strength: number,
    sign: 1 | -1,
    slot = false,
  ) => {
    const from = phraseKey(one)
    const to = phraseKey(two)
    if (from === to) return
    const known = related.get(from) ?? new Map<string, Related>()
    related.set(from, known)
    const before = known.get(to)
    // A synonym outweighs a looser tie; an opposite outweighs both: doubt is a miss.
    if (!before || sign < before.sign || (sign === before.sign && strength > before.strength)) {
      known.set(to, { keys: two, strength, sign, slot })
    }
  }
  const remember = (phrase: string[]) => {
    if (phrase.length < 2) return
    const list = phrases.get(phrase[0]!) ?? []
    if (!list.some((known) => phraseKey(known) === phraseKey(phrase))) list.push(phrase)
    phrases.set(phrase[0]!, list)
  }

  for (const group of synonymRows()) {
    const members = group.map(keysOf).filter((keys) => keys.length > 0)
    members.forEach(remember)
    for (const one of members) for (const two of members) relate(one, two, SYNONYM, 1)
  }
  for (const { sides, sameSide, slot, degree } of oppositeRows()) {
    const members = sides.map((side) => side.map(keysOf).filter((keys) => keys.length > 0))
    members.flat().forEach(remember)
    members.forEach((side, i) =>
      side.forEach((one) => {
        if (degree) directional.add(phraseKey(one))
        members.forEach((other, k) =>
          other.forEach((two) => {
            if (i !== k) relate(one, two, OPPOSITE, -1, slot)
            else if (sameSide) relate(one, two, SAME_SIDE, 1)
          }),
        )
      }),
    )
  }
  for (const list of phrases.values()) list.sort((a, b) => b.length - a.length)
  return {
    related: new Map([...related].map(([key, map]) => [key, [...map.values()]])),
    phrases,
    directional,
  }
}

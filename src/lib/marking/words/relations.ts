import { isKnown, oppositeRows, plainRows, synonymRows } from '../lexicon'
import { keyOf } from './keys'
import { keyOfToken, wordsForMatching } from './phrases'

/** Another way to say a word: the keys of its words in order, and what it does to the meaning. */
export interface Related {
  /** `GAP` among them: a few other words may stand there (make GAP weak: `made the acid weaker`). */
  readonly keys: readonly string[]
  /** How surely it means the same, 0 to 1. */
  readonly strength: number
  /** -1 where it is the opposite: saying it instead turns the statement round. */
  readonly sign: 1 | -1
  /** An opposite only where it stands in the place of the word (anode for cathode). */
  readonly slot: boolean
}

/** Stands in a phrase for up to a few words that are not its own. */
export const GAP = '…'

const SYNONYM = 0.9
/** A technical word said in plain ones. */
const PLAINLY = 0.85
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
  const listed = table().related.get(phrase) ?? []
  const formed = byForm(phrase)
  return formed.length === 0 ? listed : [...listed, ...formed]
}

/** What the form of a word says of its relations: colourless is without colour, and unsuitable is the opposite of suitable. */
function byForm(phrase: string): readonly Related[] {
  const known = formed.get(phrase)
  if (known) return known
  const made = privative(phrase)
  // Phrases come from syllabi, of which there may be any number.
  if (formed.size > 20_000) formed.clear()
  formed.set(phrase, made)
  return made
}
const formed = new Map<string, readonly Related[]>()

const WITHOUT = [
  ['no'],
  ['without'],
  ['not', 'have'],
  ['not', 'any'],
  ['lose', 'it'],
  ['free', 'of'],
]

function privative(phrase: string): readonly Related[] {
  if (phrase.includes(' ')) return []
  const less = /^(.{4,})less$/.exec(phrase)?.[1]
  if (less !== undefined && isKnown(less)) {
    const own = keyOf(less)
    return WITHOUT.map((words) => ({
      keys: [...words.map(keyOf), own],
      strength: SYNONYM,
      sign: 1,
      slot: false,
    }))
  }
  if (phrase.length < 4 || !/^[a-z]+$/.test(phrase)) return []
  const base = /^(?:un|non)(.{4,})$/.exec(phrase)?.[1]
  const opposites = [`un${phrase}`, `non${phrase}`, ...(base && isKnown(base) ? [base] : [])]
  return opposites.map((key) => ({ keys: [key], strength: OPPOSITE, sign: -1, slot: false }))
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

const AUXILIARIES = new Set(
  'do does did can could will would is are was were be has have had should must'.split(' '),
)

// `does not let` is looked for by its `not`, as `doesn't let` has no other.
function keysOfWords(words: string): string[] {
  const keys = wordsForMatching(words).map((token) => ({ token, key: keyOfToken(token) }))
  return keys
    .filter(({ token }, i) => !(keys[i + 1]?.key === 'not' && AUXILIARIES.has(token.text)))
    .map(({ key }) => key)
}

function build(): Table {
  const related = new Map<string, Map<string, Related>>()
  const phrases = new Map<string, string[][]>()
  const directional = new Set<string>()

  const keysOf = (words: string) =>
    words
      .split(GAP)
      .map(keysOfWords)
      .reduce<string[]>((all, part) => (all.length === 0 ? part : [...all, GAP, ...part]), [])
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
  for (const { word, plainly } of plainRows()) {
    const one = keysOf(word)
    remember(one)
    for (const two of plainly.map(keysOf)) if (two.length > 0) relate(one, two, PLAINLY, 1)
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

import { isKnown } from '../lexicon'
import { keyOf } from './keys'
import {
  buildTable,
  listedFor,
  phrasesFrom,
  type Related,
  type RelationTable,
} from './relation-table'
export { GAP, phraseKey, type Related } from './relation-table'

/** How surely a word means what its form says. */
const BY_FORM = 0.9
const OPPOSITE_FORM = 0.85

/** What may stand for `phrase` (a `phraseKey`), itself left out: synonyms, and opposites with sign -1. */
export function relatedTo(phrase: string): readonly Related[] {
  const known = related.get(phrase)
  if (known) return known
  const made = [...listedFor(phrase, table()), ...byForm(phrase)]
  // Phrases come from syllabi, of which there may be any number.
  if (related.size > 20_000) related.clear()
  related.set(phrase, made)
  return made
}
const related = new Map<string, readonly Related[]>()

const WITHOUT = [
  ['no'],
  ['without'],
  ['not', 'have'],
  ['not', 'any'],
  ['lose', 'it'],
  ['free', 'of'],
]

/** What the form of a word says of its relations: colourless is without colour, and unsuitable is the opposite of suitable. */
function byForm(phrase: string): readonly Related[] {
  if (phrase.includes(' ')) return []
  const less = /^(.{4,})less$/.exec(phrase)?.[1]
  if (less !== undefined && isKnown(less)) {
    const own = keyOf(less)
    return WITHOUT.map((words) => ({
      keys: [...words.map(keyOf), own],
      strength: BY_FORM,
      sign: 1,
      slot: false,
    }))
  }
  if (phrase.length < 4 || !/^[a-z]+$/.test(phrase)) return []
  const base = /^(?:un|non)(.{4,})$/.exec(phrase)?.[1]
  const opposites = [`un${phrase}`, `non${phrase}`, ...(base && isKnown(base) ? [base] : [])]
  return opposites.map((key) => ({ keys: [key], strength: OPPOSITE_FORM, sign: -1, slot: false }))
}

/** Does the word have an opposite that turns a statement round (increase, above, gain)? */
export function isDirectional(phrase: string): boolean {
  return table().directional.has(phrase)
}

/** The longest phrase of the tables that starts at `at`; at least two words, or undefined. */
export function knownPhraseAt(keys: readonly string[], at: number): readonly string[] | undefined {
  const first = keys[at]!
  if (!table().phrases.has(first)) return undefined
  let listed = longestFirst.get(first)
  if (!listed) longestFirst.set(first, (listed = phrasesFrom(first, table())))
  return listed.find((phrase) => phrase.every((key, i) => keys[at + i] === key))
}
const longestFirst = new Map<string, readonly (readonly string[])[]>()

function table(): RelationTable {
  return (made ??= buildTable())
}
let made: RelationTable | undefined

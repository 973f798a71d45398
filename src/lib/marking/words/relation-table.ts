import { oppositeRows, plainRows, synonymRows } from '../lexicon'
import { keyOfWord } from './keys'
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

/** The identity of a word or a phrase of several words in these tables. */
export function phraseKey(keys: readonly string[]): string {
  return keys.join(' ')
}

const SYNONYM = 0.9
/** A technical word said in plain ones. */
const PLAINLY = 0.85
const SAME_SIDE = 0.85
const OPPOSITE = 0.85

type Relation = Omit<Related, 'keys'>

/** A line of the lexicon: what stands in one of its sides may be related to what stands in the same or in the others. */
interface Line {
  /** The phrase keys of the members of each side. */
  readonly sides: readonly (readonly string[])[]
  /** How the members of one side are related to each other, and to those of another side; undefined: not at all. */
  readonly same: Relation | undefined
  readonly other: Relation | undefined
  /** Only the first side is related to the others, not they to it. */
  readonly oneWay: boolean
}

/**
 * The lexicon's relations by keys. Only which lines a phrase stands in is kept, and what is looked up is made of that: few phrases are ever
 * asked for, and a worker begins with reading all of it.
 */
export interface RelationTable {
  readonly lines: ReadonlyMap<string, readonly Line[]>
  /** The phrase keys of phrases of several words that have relations, by their first key. */
  readonly phrases: ReadonlyMap<string, readonly string[]>
  readonly directional: ReadonlySet<string>
}

/** What the lines that a phrase stands in say of it. */
export function listedFor(phrase: string, { lines }: RelationTable): Related[] {
  const found = new Map<string, Related>()
  for (const { sides, same, other, oneWay } of lines.get(phrase) ?? []) {
    sides.forEach((side, from) => {
      for (const one of side) {
        if (one !== phrase) continue
        sides.forEach((others, to) => {
          const relation = from === to ? same : oneWay && from > 0 ? undefined : other
          if (!relation) return
          for (const two of others) {
            if (two === phrase) continue
            const before = found.get(two)
            if (!before || outweighs(relation, before))
              found.set(two, { keys: two.split(' '), ...relation })
          }
        })
      }
    })
  }
  return [...found.values()]
}

// A synonym outweighs a looser tie; an opposite outweighs both: doubt is a miss.
function outweighs(one: Relation, two: Relation): boolean {
  return one.sign < two.sign || (one.sign === two.sign && one.strength > two.strength)
}

/** The phrases of several words that begin with a key, longest first. */
export function phrasesFrom(key: string, { phrases }: RelationTable): (readonly string[])[] {
  const listed = [...new Set(phrases.get(key))].map((phrase) => phrase.split(' '))
  return listed.sort((a, b) => b.length - a.length)
}

const alike = (strength: number): Relation => ({ strength, sign: 1, slot: false })
const OPPOSED = { strength: OPPOSITE, sign: -1, slot: false } as const
const OPPOSED_IN_PLACE = { strength: OPPOSITE, sign: -1, slot: true } as const

export function buildTable(): RelationTable {
  const lines = new Map<string, Line[]>()
  const phrases = new Map<string, string[]>()
  const directional = new Set<string>()
  const add = (line: Line) => {
    for (const side of line.sides)
      for (const phrase of side) {
        const known = lines.get(phrase)
        if (!known) lines.set(phrase, [line])
        else if (known[known.length - 1] !== line) known.push(line)
      }
  }
  const remember = (side: readonly string[]) => {
    for (const phrase of side) {
      const space = phrase.indexOf(' ')
      if (space < 0) continue
      const first = phrase.slice(0, space)
      const known = phrases.get(first)
      if (known) known.push(phrase)
      else phrases.set(first, [phrase])
    }
  }

  const synonyms = alike(SYNONYM)
  for (const row of synonymRows()) {
    const sides = [phraseKeysOf(row)]
    remember(sides[0]!)
    add({ sides, same: synonyms, other: undefined, oneWay: false })
  }
  const plainly = alike(PLAINLY)
  for (const { word, plainly: said } of plainRows()) {
    const sides = [phraseKeysOf([word]), phraseKeysOf(said)]
    remember(sides[0]!)
    add({ sides, same: undefined, other: plainly, oneWay: true })
  }
  const sideBySide = alike(SAME_SIDE)
  for (const { sides: written, sameSide, slot, degree } of oppositeRows()) {
    const sides = written.map(phraseKeysOf)
    sides.forEach(remember)
    if (degree) for (const phrase of sides.flat()) directional.add(phrase)
    const other = slot ? OPPOSED_IN_PLACE : OPPOSED
    add({ sides, same: sameSide ? sideBySide : undefined, other, oneWay: false })
  }
  return { lines, phrases, directional }
}

function phraseKeysOf(phrases: readonly string[]): string[] {
  const keys: string[] = []
  for (const phrase of phrases) {
    const key = WORD.test(phrase) ? keyOfWord(phrase) : phraseKey(keysOf(phrase))
    if (key !== '') keys.push(key)
  }
  return keys
}
const WORD = /^[a-z]+$/

function keysOf(words: string): readonly string[] {
  if (!words.includes(GAP)) return keysOfWords(words)
  return words
    .split(GAP)
    .map(keysOfWords)
    .reduce<readonly string[]>(
      (all, part) => (all.length === 0 ? part : [...all, GAP, ...part]),
      [],
    )
}

const AUXILIARIES = new Set(
  'do does did can could will would is are was were be has have had should must'.split(' '),
)
const PLAIN = /^[a-z]+(?: [a-z]+)*$/

// `does not let` is looked for by its `not`, as `doesn't let` has no other.
function keysOfWords(phrase: string): string[] {
  const tokens = PLAIN.test(phrase) ? undefined : wordsForMatching(phrase)
  const words = tokens ? tokens.map(({ text }) => text) : phrase.split(' ')
  const keys = tokens ? tokens.map(keyOfToken) : words.map(keyOfWord)
  return keys.filter((_, i) => !(keys[i + 1] === 'not' && AUXILIARIES.has(words[i]!)))
}

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

interface Member {
  readonly phrase: string
  readonly keys: readonly string[]
}

/** A line of the lexicon: what stands in one of its sides may be related to what stands in the same or in the others. */
interface Line {
  readonly sides: readonly (readonly Member[])[]
  /** How a member of one side is related to a member of another or of the same; undefined: not at all. */
  readonly relation: (from: number, to: number) => Omit<Related, 'keys'> | undefined
}

/** The lexicon's relations by keys. Only which lines a phrase stands in is kept: few phrases are ever asked for. */
export interface RelationTable {
  readonly lines: ReadonlyMap<string, readonly Line[]>
  /** Phrases of several words that have relations: first key -> whole phrases, longest first. */
  readonly phrases: ReadonlyMap<string, readonly (readonly string[])[]>
  readonly directional: ReadonlySet<string>
}

/** What the lines that a phrase stands in say of it. */
export function listedFor(phrase: string, { lines }: RelationTable): Related[] {
  const found = new Map<string, Related>()
  for (const { sides, relation } of lines.get(phrase) ?? []) {
    sides.forEach((side, from) => {
      for (const one of side) {
        if (one.phrase !== phrase) continue
        sides.forEach((others, to) => {
          const related = relation(from, to)
          if (!related) return
          for (const other of others) {
            if (other.phrase === phrase) continue
            const before = found.get(other.phrase)
            if (!before || outweighs(related, before))
              found.set(other.phrase, { keys: other.keys, ...related })
          }
        })
      }
    })
  }
  return [...found.values()]
}

// A synonym outweighs a looser tie; an opposite outweighs both: doubt is a miss.
function outweighs(one: Omit<Related, 'keys'>, two: Related): boolean {
  return one.sign < two.sign || (one.sign === two.sign && one.strength > two.strength)
}

export function buildTable(): RelationTable {
  const lines = new Map<string, Line[]>()
  const phrases = new Map<string, (readonly string[])[]>()
  const directional = new Set<string>()
  const add = (line: Line) => {
    for (const { phrase } of line.sides.flat()) {
      const known = lines.get(phrase)
      if (!known) lines.set(phrase, [line])
      else if (known[known.length - 1] !== line) known.push(line)
    }
  }
  const remember = ({ keys }: Member) => {
    if (keys.length < 2) return
    const known = phrases.get(keys[0]!)
    if (known) known.push(keys)
    else phrases.set(keys[0]!, [keys])
  }

  const synonyms = { strength: SYNONYM, sign: 1, slot: false } as const
  for (const row of synonymRows()) {
    const members = membersOf(row)
    members.forEach(remember)
    add({ sides: [members], relation: () => synonyms })
  }
  const plainly = { strength: PLAINLY, sign: 1, slot: false } as const
  for (const row of plainRows()) {
    const [word, said] = [membersOf([row.word]), membersOf(row.plainly)]
    word.forEach(remember)
    add({ sides: [word, said], relation: (from, to) => (from < to ? plainly : undefined) })
  }
  for (const { sides: written, sameSide, slot, degree } of oppositeRows()) {
    const sides = written.map(membersOf)
    sides.flat().forEach(remember)
    if (degree) for (const { phrase } of sides.flat()) directional.add(phrase)
    const same = sameSide ? ({ strength: SAME_SIDE, sign: 1, slot: false } as const) : undefined
    const opposite = { strength: OPPOSITE, sign: -1, slot } as const
    add({ sides, relation: (from, to) => (from === to ? same : opposite) })
  }
  for (const [first, list] of phrases) phrases.set(first, longestFirst(list))
  return { lines, phrases, directional }
}

function longestFirst(phrases: readonly (readonly string[])[]): (readonly string[])[] {
  const once = new Map(phrases.map((keys) => [phraseKey(keys), keys] as const).reverse())
  const kept = phrases.filter((keys) => once.get(phraseKey(keys)) === keys)
  return kept.sort((a, b) => b.length - a.length)
}

function membersOf(phrases: readonly string[]): Member[] {
  return phrases
    .map(keysOf)
    .filter((keys) => keys.length > 0)
    .map((keys) => ({ phrase: phraseKey(keys), keys }))
}

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

/**
 * The lexicon, read once from its data files; see the README beside it for what each holds and where it came from.
 * Everything here is about surface forms: lower-case words as typed. Keys are made of them in `words/keys.ts`.
 */
import { joined as joinedData } from './joined'
import { keptApart as keptApartData } from './kept-apart'
import { wordsOf as wordsOfCoded } from './front-coded'
import { isKnownWord } from './known'
import { lookAlikes as lookAlikesData } from './look-alikes'
import { opposites } from './opposites'
import { formulaRows } from './formula'
import { plainWords } from './plain-words'
import { once } from './once'
import { rowsOf, wordsOf } from './rows'
import { shorthand } from './shorthand'
import { soundAlikes as soundAlikeData } from './sound-alikes'
import { stemOf } from './stem'
import { spellings } from './spellings'
import {
  directional,
  fillers as fillerData,
  negations as negationData,
  stopWords,
} from './stop-words'
import { scienceSynonyms, synonyms } from './synonyms'
import { nounsOrVerbs, verbForms } from './verb-forms'

const stops = wordsOf(stopWords)
const fillers = wordsOf(fillerData)
const directions = wordsOf(directional)
const negations = wordsOf(negationData)

export const isStopWord = (word: string): boolean => stops.has(word)
/** Words that carry little: they may be left out, but help where they are said. */
export const isFiller = (word: string): boolean => fillers.has(word)
export const fillerWords = (): readonly string[] => [...fillers]
/** up, into, behind …: they count only beside the words that they belong to. */
export const isDirectionWord = (word: string): boolean => directions.has(word)
export const directionWords = (): readonly string[] => [...directions]
export const isNegation = (word: string): boolean => negations.has(word) || word.endsWith("n't")

const contracted = new Set(
  'cannot cant dont doesnt didnt isnt arent wasnt werent wont wouldnt couldnt shouldnt hasnt havent hadnt aint neednt mustnt'.split(
    ' ',
  ),
)
/** A verb and its `not` in one word: doesn't, also without the apostrophe, and cannot. */
export const isContractedNot = (word: string): boolean =>
  word.endsWith("n't") || contracted.has(word)

const american = new Map<string, string>()
for (const row of rowsOf(spellings)) {
  const [british, ...others] = row.split('=').map((word) => word.trim())
  for (const other of others) american.set(other, british!)
}
/** The British spelling of a word; the word itself where there is no other. */
export function spelling(word: string): string {
  const listed = american.get(word)
  if (listed !== undefined) return listed
  // -ize, -izing, -ization: every word that has them is one with -ise (but size, prize, seize).
  if (
    word.length > 6 &&
    /iz(?:e[ds]?|ing|ation|ations|er|ers)$/.test(word) &&
    !/(?:size|prize|seize|capsize)/.test(word)
  ) {
    return word.replace(/iz(?=(?:e[ds]?|ing|ations?|ers?)$)/, 'is')
  }
  return word
}

const apart = new Map<string, string>()
for (const row of rowsOf(keptApartData)) {
  for (const slot of row.split(',')) {
    const forms = slot
      .split('=')
      .map((word) => word.trim())
      .filter(Boolean)
    for (const form of forms) if (!apart.has(form)) apart.set(form, `=${forms[0]}`)
  }
}
/** The key of a word that shares a stem with a different term; undefined for every other word. */
export const keptApart = (word: string): string | undefined => apart.get(word)

const joinedKeys = new Map<string, string>()
for (const row of rowsOf(joinedData)) {
  const forms = row
    .split('=')
    .map((word) => word.trim())
    .filter(Boolean)
  const stems = forms.map((form) => (/^[a-z]+$/.test(form) ? stemOf(form) : form))
  // A form that is kept apart from others of its stem, or that an earlier line has, gives its key to the whole line.
  const own = forms.map((form) => apart.get(form)).find((k) => k !== undefined)
  const key =
    own ?? stems.map((stem) => joinedKeys.get(stem)).find((k) => k !== undefined) ?? stems[0]!
  forms.forEach((form, i) => {
    if (apart.has(form)) return
    if (!joinedKeys.has(form)) joinedKeys.set(form, key)
    // A short stem may be another word (ate is stemmed to at, overate to over); the stem of a kept-apart word belongs to several.
    const another = stops.has(stems[i]!) || directions.has(stems[i]!) || joinedKeys.has(stems[i]!)
    if (stems[i]!.length > 3 && own === undefined && !another) joinedKeys.set(stems[i]!, key)
  })
}
/** The common key of forms that the stemmer leaves apart; asked with a word, then with its stem. */
export const joined = (wordOrStem: string): string | undefined => joinedKeys.get(wordOrStem)

const short = new Map<string, string>()
for (const row of rowsOf(shorthand)) {
  const [forms = '', full = ''] = row.split('=').map((part) => part.trim())
  for (const form of forms.split(',')) if (form.trim()) short.set(form.trim(), full)
}
/** Student's shorthand written out. */
export const shorthandFor = (word: string): string | undefined => short.get(word)

const alike = new Map<string, string[]>()
for (const row of rowsOf(soundAlikeData)) {
  const forms = row
    .split('=')
    .map((word) => word.trim())
    .filter(Boolean)
  for (const form of forms) {
    alike.set(form, [...(alike.get(form) ?? []), ...forms.filter((other) => other !== form)])
  }
}
/** Words that are written for one another by slips that leave no doubt: beech for beach. */
export const soundAlikes = (word: string): readonly string[] => alike.get(word) ?? []

const lookingAlike = new Map<string, string[]>()
for (const row of rowsOf(lookAlikesData)) {
  const words = row.split(',').map((word) => word.trim())
  for (const word of words) {
    lookingAlike.set(word, [
      ...(lookingAlike.get(word) ?? []),
      ...words.filter((other) => other !== word),
    ])
  }
}
/** Other terms that a misspelling of the word may mean as well: meiosis for mitosis. */
export const lookAlikes = (word: string): readonly string[] => lookingAlike.get(word) ?? []

/** Groups of words and phrases that an examiner accepts for one another. An abbreviation that is also a word (AIDS) stays out. */
export const synonymRows = once((): readonly (readonly string[])[] => {
  const rows = [...rowsOf(synonyms), ...rowsOf(scienceSynonyms)].map((row) => row.split(','))
  return [...rows, ...formulaRows()].map((row) => {
    const phrases: string[] = []
    for (const written of row) {
      const phrase = written.trim()
      const plain = phrase.toLowerCase()
      const abbreviation = phrase !== plain && /^[A-Z]+$/.test(phrase)
      if (phrase !== '' && !(abbreviation && isKnown(plain))) phrases.push(plain)
    }
    return phrases
  })
})

/** Technical and formal words with plain ones that say the same; the plain ones are not said by the technical word. */
export function plainRows(): { word: string; plainly: readonly string[] }[] {
  return plainWords.flatMap(rowsOf).map((row) => {
    const [word = '', said = ''] = row.toLowerCase().split('=')
    return {
      word: word.trim(),
      plainly: said
        .split(',')
        .map((phrase) => phrase.trim())
        .filter(Boolean),
    }
  })
}

export interface OppositeRow {
  /** Members of different sides exclude each other. */
  readonly sides: readonly (readonly string[])[]
  /** Members of one side may stand for one another. */
  readonly sameSide: boolean
  /** Opposites only where they describe the same thing (nouns such as anode and cathode). */
  readonly slot: boolean
  /** Degrees and directions, which belong to the nearest thing beside them. */
  readonly degree: boolean
}

export const oppositeRows = once((): readonly OppositeRow[] =>
  rowsOf(opposites).map((row) => {
    const slot = row.startsWith('!')
    const degree = row.startsWith('^')
    const body = row.replace(/^[!^]\s*/, '')
    const phrases = (side: string) =>
      side
        .split(',')
        .map((p) => p.trim().toLowerCase())
        .filter(Boolean)
    return body.startsWith('~')
      ? { sides: phrases(body.slice(1)).map((p) => [p]), sameSide: false, slot: true, degree }
      : { sides: body.split('><').map(phrases), sameSide: true, slot, degree }
  }),
)

const MATHS =
  'divided divide dividing multiplied multiply multiplying times equals squared cubed square root product ratio minus plus double halve twice'.split(
    ' ',
  )
const CONTRACTIONS =
  'doesnt didnt isnt wasnt arent werent wont cant dont wouldnt couldnt shouldnt hasnt havent hadnt because which where when there their'.split(
    ' ',
  )
/** Plain words of the lexicon: what a misspelt word may be, beside the terms of the topic. */
export const commonWords = once((): readonly string[] => [
  ...new Set(
    [
      ...synonymRows().flat(),
      ...oppositeRows().flatMap((row) => row.sides.flat()),
      ...stops,
      ...fillers,
      ...directions,
      ...MATHS,
      ...CONTRACTIONS,
    ]
      .flatMap((phrase) => phrase.split(/[\s-]+/))
      .filter((word) => /^[a-z]{4,}$/.test(word)),
  ),
])

/** Every word of the lines that stand for words of a page, each once. */
export const lexiconWords = (): readonly string[] => [
  ...new Set(
    [
      ...synonymRows().flat(),
      ...plainRows().flatMap(({ word, plainly }) => [word, ...plainly]),
      ...oppositeRows().flatMap(({ sides }) => sides.flat()),
      joinedData,
    ].flatMap((phrase) => phrase.match(/[a-z]+/g) ?? []),
  ),
]

/** Is it an English word as it stands, in its base form or inflected by rule? */
export function isKnown(word: string): boolean {
  return isKnownWord(word) || stops.has(word) || apart.has(word)
}

const verbs = once(() => wordsOfCoded(verbForms))
const either = once(() => wordsOfCoded(nounsOrVerbs))
/** Is it a form of a verb, and nothing else? */
export const isVerbForm = (word: string): boolean => verbs().has(word)
/** Is it a noun or a verb by its place: pushes, runs, moves? */
export const isNounOrVerb = (word: string): boolean => either().has(word)

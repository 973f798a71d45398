import stemmer from 'natural/lib/natural/stemmers/porter_stemmer.js'
import { once } from './once'
import { stems } from './stems'

/** The Porter stem of a lower-case word. Those of the lexicon's own words are looked up: all of them are needed to begin with. */
export const stemOf = (word: string): string => known().get(word) ?? stemmer.stem(word)

export const known = once(decoded)

function decoded(): ReadonlyMap<string, string> {
  const found = new Map<string, string>()
  let word = ''
  for (const entry of stems.matchAll(/([A-Z])([a-z]*)(?:(\d)([a-z]*))?/g)) {
    const [, shared = '', rest = '', drops, ending = ''] = entry
    word = word.slice(0, shared.charCodeAt(0) - 65) + rest
    found.set(word, drops === undefined ? word : word.slice(0, -Number(drops)) + ending)
  }
  return found
}

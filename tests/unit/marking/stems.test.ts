import stemmer from 'natural/lib/natural/stemmers/porter_stemmer.js'
import { expect, test } from 'vitest'
import { lexiconWords } from '../../../src/lib/marking'
import { known, stemOf } from '../../../src/lib/marking/lexicon/stem'

// Source: M. F. Porter (1980), "An algorithm for suffix stripping", Program 14(3), as natural has it.
test('the stems that are looked up are those that the stemmer makes', () => {
  const wrong = [...known()].filter(([word, stem]) => stemmer.stem(word) !== stem)
  expect(known().size).toBeGreaterThan(5_000)
  expect(wrong).toEqual([])
})

test('most words of the lexicon are looked up', () => {
  const words = lexiconWords().filter((word) => word.length > 2)
  const missing = words.filter((word) => !known().has(word))
  expect(missing.length).toBeLessThan(words.length / 10)
})

test.each([
  ['relational', 'relat', "of Porter's own examples"],
  ['generalizations', 'gener', 'the same, in four steps'],
  ['constructor', 'constructor', 'nothing that every object has'],
])('%s: %s, %s', (word, stem) => expect(stemOf(word)).toBe(stem))

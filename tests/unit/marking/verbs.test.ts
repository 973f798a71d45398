import nlp from 'compromise/two'
import { describe, expect, test } from 'vitest'
import { FrontCoded } from '../../../src/lib/marking/lexicon/front-coded'
import { isKnownWord } from '../../../src/lib/marking/lexicon/known'
import { isVerb, maybeVerb } from '../../../src/lib/marking/words/verbs'
import { frontCoded } from '../../../src/cli/lexicon/front-coding'

// Source: the lexicon of compromise 14, https://github.com/spencermountain/compromise (MIT).
const model = nlp.model() as {
  one: { lexicon: Readonly<Record<string, string | readonly string[]>> }
  two: { switches: Readonly<Record<string, string>> }
}
const { lexicon } = model.one
const VERB = /^(?:Copula|Modal|Auxiliary|PastTense|PresentTense|Gerund|Infinitive|Participle)$/
const single = Object.keys(lexicon).filter((word) => /^[a-z]+(?:'[a-z]+)?$/.test(word))
const tags = (word: string) => [lexicon[word] ?? []].flat()

describe('verbs', () => {
  test('the words of the lexicon are verbs exactly where it says so', () => {
    const wrong = single.filter(
      (word) => isVerb(word) !== (word.endsWith("n't") || tags(word).some((tag) => VERB.test(tag))),
    )
    expect(single.length).toBeGreaterThan(15_000)
    expect(wrong).toEqual([])
  })

  test('a noun or a verb by its place exactly where it says so', () => {
    const wrong = [...single, ...Object.keys(model.two.switches)].filter(
      (word) =>
        maybeVerb(word) !==
        /Verb/.test(Object.hasOwn(model.two.switches, word) ? model.two.switches[word]! : ''),
    )
    expect(wrong).toEqual([])
  })

  test.each([
    ['coachs', true, 'a form that the lexicon does not list'],
    ['bees', false, 'no form of be'],
    ["hasn't", true, 'a verb with its not'],
    ['constructor', false, 'nothing that every object has'],
    ['', false, 'no word'],
  ])('%s: %s, %s', (word, verb) => expect(isVerb(word)).toBe(verb))
})

describe('front coding', () => {
  test('holds every word that went in, and no other', () => {
    const words = [
      "'tis",
      'a',
      'ab',
      'abandon',
      'abandons',
      'ax',
      'b',
      'ba',
      'be',
      'bee',
      'bees',
      'zoo',
    ]
    const coded = new FrontCoded(frontCoded(words))
    expect(words.filter((word) => !coded.has(word))).toEqual([])
    expect(
      ['', 'aba', 'abandone', 'c', 'zo', 'zoos', '__proto__'].filter((word) => coded.has(word)),
    ).toEqual([])
  })

  test.each(['aardvark', 'beach', 'zygote'])('%s is a known word', (word) =>
    expect(isKnownWord(word)).toBe(true),
  )
})

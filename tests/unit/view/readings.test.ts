import { describe, expect, test } from 'vitest'
import {
  ideaReading,
  neededReading,
  valueReading,
  wordsReading,
} from '../../../src/lib/view/readings'

test.each([
  { idea: 'gravity', says: 'gravity' },
  { idea: 'waves / swash', says: 'either waves or swash' },
  { idea: 'wave / swash + at an angle', says: 'either wave or swash, and: at an angle' },
  { idea: 'groyne / jetty / sea wall', says: 'one of: groyne, jetty or sea wall' },
  { idea: '"backwash"', says: 'the term “backwash” itself' },
  { idea: '"backwash" / back-wash', says: 'either the term “backwash” itself or back-wash' },
  { idea: '(at the) waterline', says: 'either waterline or at the waterline' },
  { idea: 'oblique(ly)', says: 'either oblique or obliquely' },
  { idea: 'place / drop + (at the) waterline', says: 'either place or drop, and: either waterline or at the waterline' },
  { idea: '(the) wave(s) (break)', says: '(the) wave(s) (break)' },
  { idea: 'Na+ ions', says: 'Na+ ions' },
  { idea: 'waves /', says: undefined },
  { idea: '(waves', says: undefined },
  { idea: '', says: undefined },
])('the idea $idea is read: $says', ({ idea, says }) => { expect(ideaReading(idea)).toBe(says) }) // prettier-ignore

test.each([
  { value: '9.8 N/kg ± 0.2', says: 'between 9.6 and 10 N/kg' },
  { value: '1.30', says: 'between 1.295 and 1.305' },
  { value: '100 % ± 0', says: '100 % and nothing else' },
  { value: '-20 °C ± 1', says: 'between -21 and -19 °C' },
  { value: 'fast', says: undefined },
])('the value $value is read: $says', ({ value, says }) => {
  expect(valueReading(value)).toBe(says)
})

test('the words for a symbol', () => {
  expect(wordsReading('wave speed / speed')).toBe('either wave speed or speed')
  expect(wordsReading('a + b')).toBeUndefined()
})

describe('how many are needed', () => {
  test.each([
    { any: '', ideas: 1, says: 'This one is needed.' },
    { any: '', ideas: 3, says: 'All 3 are needed.' },
    { any: '2', ideas: 4, says: 'Any 2 of these 4 are enough.' },
    { any: '5', ideas: 4, says: undefined },
    { any: 'two', ideas: 4, says: undefined },
  ])('"$any" of $ideas: $says', ({ any, ideas, says }) => {
    expect(neededReading(any, ideas)).toBe(says)
  })
})

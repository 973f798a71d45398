import fc from 'fast-check'
import { expect, test } from 'vitest'
import { clockText, countWords } from '../../../src/lib/view/writing'

test.each([
  { text: '', words: 0, why: 'an empty page' },
  { text: ' \n\t ', words: 0, why: 'blanks only' },
  { text: 'waves come in', words: 3, why: 'plain words' },
  { text: '  waves\n\ncome\tin ', words: 3, why: 'any blanks between' },
  { text: 'swash - backwash', words: 2, why: 'a dash alone is no word' },
  { text: 'swash → up-drift', words: 2, why: 'an arrow is none, a hyphenated word is one' },
  { text: '9.8 N/kg', words: 2, why: 'numbers and units count' },
  { text: 'λ été 海', words: 3, why: 'letters of any script' },
])('$words words: $why', ({ text, words }) => {
  expect(countWords(text)).toBe(words)
})

test('pages put together have as many words as both, with a blank between', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.string({ unit: 'grapheme' }), (a, b) => {
      expect(countWords(`${a} ${b}`)).toBe(countWords(a) + countWords(b))
    }),
  )
})

test.each([
  { ms: 0, clock: '0:00' },
  { ms: 999, clock: '0:00' },
  { ms: 65_000, clock: '1:05' },
  { ms: 59 * 60_000 + 59_999, clock: '59:59' },
  { ms: 3_600_000, clock: '1:00:00' },
  { ms: 3_600_000 * 11 + 61_000, clock: '11:01:01' },
  { ms: -5, clock: '0:00' },
])('$ms ms on the clock is $clock', ({ ms, clock }) => {
  expect(clockText(ms)).toBe(clock)
})

import { table } from './table'
import type { Wording } from '../../syllabus/types'
import type { Token } from '../1-statements/tokens'
import { tokenise } from '../1-statements/tokens'
import { directionWords } from '../lexicon'
import { keyOf, keyOfWord, numberKey } from './keys'

/** A wording as keys in the author's order; optional words may be left out. */
export interface Phrase {
  readonly slots: readonly { readonly key: string; readonly optional: boolean }[]
}

const SKIPPED = new Set(['the', 'a', 'an', 'of', 'its', 'their', "it's", 'in', 'for', 'that'])

/** A wording for matching word by word. A suffix in brackets never changes the key: both forms share it. */
export function phraseOf(wording: Wording): Phrase {
  return {
    slots: wording.words.flatMap((slot) =>
      tokenise(slot.text)
        .filter((token) => token.text !== '-')
        .map((token) => ({
          key: keyOfToken(token),
          optional: slot.optional || SKIPPED.has(token.text),
        })),
    ),
  }
}

/** The key of any token: signs that stand for a word have that word's key. */
export function keyOfToken(token: Token): string {
  if (token.kind === 'number') return numberKey(Number(token.text))
  return keyOfWord(token.kind === 'sign' ? (SIGN_WORDS[token.text] ?? token.text) : token.text)
}

const SIGN_WORDS = table<string>({
  '%': 'percentage',
  '↑': 'increase',
  '↓': 'decrease',
  '+': 'and',
  '&': 'and',
  '@': 'at',
  '>': 'above',
  '<': 'below',
  '->': 'become',
  '÷': 'divide',
  '/': 'divide',
  '*': 'multiply',
})

/**
 * The tokens of a text that matching looks at, hyphenated words as one (`zig-zag` is zigzag, `cm³` is cm3).
 */
export function wordsForMatching(text: string): Token[] {
  const tokens = tokenise(text.replaceAll('²', '2').replaceAll('³', '3'))
  const words: Token[] = []
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i]!
    const [hyphen, next] = [tokens[i + 1], tokens[i + 2]]
    if (
      token.kind === 'word' &&
      hyphen?.text === '-' &&
      !hyphen.apart &&
      next?.kind === 'word' &&
      !next.apart
    ) {
      words.push({ ...token, text: token.text + next.text, end: next.end })
      i += 2
    } else if (token.kind === 'word' || token.kind === 'number' || isSignWord(token.text))
      words.push(token)
  }
  return words
}

/** Is the key that of a preposition of direction, which counts only beside what it belongs to? */
export const isDirectionKey = (key: string): boolean => directionKeys.has(key)
const directionKeys = new Set(directionWords().map(keyOf))

/** Signs that stand for a word. */
export const isSignWord = (text: string): boolean => Object.hasOwn(SIGN_WORDS, text)

/** The token after `phrase` where it starts at token `at`, or -1. Articles in between are passed over. */
export function phraseEnd(
  phrase: Phrase,
  keys: readonly string[],
  tokens: readonly Token[],
  at: number,
  to: number,
): number {
  let next = at
  let matched = 0
  for (const slot of phrase.slots) {
    let look = next
    while (matched > 0 && look < to && keys[look] !== slot.key && skippable(tokens[look]!))
      look += 1
    if (look < to && keys[look] === slot.key) {
      next = look + 1
      matched += 1
    } else if (!slot.optional) return -1
  }
  return matched === 0 ? -1 : next
}

function skippable(token: Token): boolean {
  return token.text === '-' || SKIPPED.has(token.text)
}

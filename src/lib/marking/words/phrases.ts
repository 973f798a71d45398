import type { Wording } from '../../syllabus/types'
import type { Token } from '../1-statements/tokens'
import { tokenise } from '../1-statements/tokens'
import { keyOf } from './keys'

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
  return keyOf(SIGN_WORDS[token.text] ?? token.text)
}

const SIGN_WORDS: Readonly<Record<string, string>> = {
  '%': 'percentage',
  '↑': 'increase',
  '↓': 'decrease',
}

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
    while (matched > 0 && look < to && keys[look] !== slot.key && skippable(tokens[look]!)) look += 1
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

import type { Token } from '../1-statements/tokens'
import { isDirectionWord, isFiller, isNegation, isStopWord } from '../lexicon'

/** Words with which another clause begins. */
export const BORDERS: ReadonlySet<string> = new Set(
  'that which who what where when whereas while because since so but although if unless until whose than'.split(
    ' ',
  ),
)
/** Forms of `be` and `have`, and what goes before a verb: they tell nothing themselves. */
export const COPULAS: ReadonlySet<string> = new Set(
  'is are was were means be been has have had can could will would may might must should'.split(
    ' ',
  ),
)
/** Prepositions that carry meaning at the head of an idea. */
export const GOES: ReadonlySet<string> = new Set(
  'up down out away above below before after without behind under over inside outside beyond back off against between'.split(
    ' ',
  ),
)

/** Does the word carry an idea: no function word, no filler, no mere direction? */
export function isContent(token: Token): boolean {
  return (
    token.kind === 'number' ||
    (token.kind === 'word' &&
      !isStopWord(token.text) &&
      !isFiller(token.text) &&
      !isDirectionWord(token.text) &&
      !BORDERS.has(token.text) &&
      !isNegation(token.text))
  )
}

/** `short-term` stays one word. */
export function hyphenated(tokens: readonly Token[]): Token[] {
  const out: Token[] = []
  for (const token of tokens) {
    const before = out[out.length - 1]
    const joins = before && !token.apart && (token.text === '-' || before.text.endsWith('-'))
    if (joins && before.kind === 'word' && (token.kind === 'word' || token.text === '-')) {
      out[out.length - 1] = { ...before, text: before.text + token.text, end: token.end }
    } else out.push(token)
  }
  return out
}

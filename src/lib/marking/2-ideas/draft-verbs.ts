import type { Token } from '../1-statements/tokens'
import { isDirectionWord, isNegation, isStopWord } from '../lexicon'
import { isVerb, maybeVerb } from '../words/verbs'
import { COPULAS } from './draft-words'

/** What may begin the object of a verb. */
export const DETERMINERS: ReadonlySet<string> = new Set(
  'the a an its their his her our your this these those each every all some any no more less fewer most it them us'.split(
    ' ',
  ),
)

/** Is the word at `i` a verb by its own form, or by the object that follows it? */
export function isPlainVerb(tokens: readonly Token[], i: number): boolean {
  const [before, token, next] = [tokens[i - 1], tokens[i]!, tokens[i + 1]]
  const { text } = token
  if (COPULAS.has(text) || isNegation(text)) return true
  if (next?.kind !== 'word' || /ing$/.test(text) || isDirectionWord(text)) return false
  if (DETERMINERS.has(text) || isStopWord(text) || doesNext(text, next, tokens[i + 2])) return false
  const joint = isJoint(before)
  if (!joint && isStopWord(before!.text)) return false
  if (isVerb(text)) return true
  if (!DETERMINERS.has(next.text)) return false
  return /[^aiousy]s$/.test(text) || (maybeVerb(text) && (joint || /s$/.test(before!.text)))
}

// `rock forms`, `fetch is`: the next word is the verb.
const doesNext = (text: string, next: Token, then: Token | undefined): boolean =>
  COPULAS.has(next.text) ||
  (isVerb(next.text) && /s$/.test(next.text) && !/s$/.test(text)) ||
  (maybeVerb(next.text) &&
    /[^s]s$/.test(next.text) &&
    DETERMINERS.has(then?.text ?? '') &&
    !/s$/.test(text))

/** What may stand right before a verb whose subject came earlier. */
const isJoint = (before: Token | undefined): boolean =>
  before === undefined || /^(?:and|then)$|ly$/.test(before.text)

/** The same, or by number: a thing and what it does (`a wave transfers`, `groynes trap`). */
export function isVerbAt(tokens: readonly Token[], i: number): boolean {
  if (isPlainVerb(tokens, i)) return true
  const [before, { text }, next] = [tokens[i - 1], tokens[i]!, tokens[i + 1]]
  if (next?.kind !== 'word' || COPULAS.has(next.text) || /^(?:of|and|or)$/.test(next.text))
    return false
  if (/ing$/.test(text) || isStopWord(text) || isDirectionWord(text)) return false
  if (isJoint(before)) return isDirectionWord(next.text) && /[^s]s$/.test(text)
  if (isStopWord(before!.text) || !maybeVerb(text)) return false
  const agrees = /s$/.test(before!.text) ? !/s$/.test(text) : /[^s]s$/.test(text)
  return agrees && !isPlainVerb(tokens, i + 1)
}

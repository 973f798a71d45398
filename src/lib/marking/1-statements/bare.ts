import { isDirectionWord, isNegation } from '../lexicon'
import { isVerb } from '../words/verbs'
import type { ReadPage } from './page'

const RELATIONS = new Set(['=', '->', '<->', ':', '>', '<', '↑', '↓', '÷', '*'])
const PARTS = new Set([',', ';', '/', '.', '&', '+'])
const WORDS_THAT_RELATE = new Set(
  'then next finally first lastly afterwards because since so therefore than like as if when where which that who of by with without from to into between for during before after more less most least fewer each every per about around'.split(
    ' ',
  ),
)
/** A verb that does something here: a plain form (`register`, `place`) before a comma or at the end is a noun in a list. */
export function isVerbAt(page: ReadPage, i: number): boolean {
  const word = page.tokens[i]!.text
  if (!isVerb(word)) return false
  if (/(?:ed|ing|s|n't)$/.test(word) || word.length < 4) return true
  const next = page.tokens[i + 1]
  return next?.kind === 'word' || next?.kind === 'number' || AUXILIARY.has(word)
}
const AUXILIARY = new Set('were have been does must will would could should might shall'.split(' '))

/**
 * 1 for every token of a bare statement: key words that relate to nothing, no verb, no sign or word that ties one to another. Such a
 * heap of words states nothing. A bare word in a statement that does relate (`straight back (gravity)`) belongs to what is said there.
 */
export function bareTokens(page: ReadPage): Uint8Array {
  const bare = new Uint8Array(page.tokens.length)
  for (const { from, to } of page.statements) if (isBare(page, from, to)) bare.fill(1, from, to)
  return bare
}

// One word between commas does nothing, even if it is a verb elsewhere.
function alone(page: ReadPage, from: number, to: number, i: number): boolean {
  const [before, after] = [page.tokens[i - 1], page.tokens[i + 1]]
  return (i === from || before?.kind === 'sign') && (i + 1 >= to || after?.kind === 'sign')
}

function isBare(page: ReadPage, from: number, to: number): boolean {
  const parts = page.tokens
    .slice(from, to)
    .filter((t) => t.kind === 'sign' && PARTS.has(t.text)).length
  for (let i = from; i < to; i += 1) {
    const token = page.tokens[i]!
    if (token.kind === 'number') return false
    if (token.kind === 'sign') {
      // A colon or a dash before a list only heads it.
      const heads = parts >= 2 && (token.text === ':' || token.text === '-')
      if (RELATIONS.has(token.text) && !heads) return false
      if (token.text === '-' && token.apart && i > from && !heads) return false
      continue
    }
    if (alone(page, from, to, i)) continue
    if (token.kind !== 'word') continue
    const word = token.text
    if (
      isVerbAt(page, i) ||
      isNegation(word) ||
      isDirectionWord(word) ||
      WORDS_THAT_RELATE.has(word)
    )
      return false
    // A comparative or superlative compares something with something.
    if (word.length > 5 && /(?:er|est)$/.test(word) && page.keys[i] !== word) return false
  }
  return true
}

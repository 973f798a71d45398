import { isDirectionWord, isNegation, isStopWord } from '../lexicon'
import { isVerb, maybeVerb } from '../words/verbs'
import type { ReadPage } from './page'

const RELATIONS = new Set(['=', '->', '<->', ':', '>', '<', '↑', '↓', '÷', '*'])
const PARTS = new Set([',', ';', '/', '.', '&', '+'])
const WORDS_THAT_RELATE = new Set(
  'then next finally first lastly afterwards because since so therefore than like as if when where which that who of by with without from to into between for during before after more less most least fewer each every per about around'.split(
    ' ',
  ),
)
/**
 * A verb that does something here: a plain form (`register`, `place`) before a comma or at the end is a noun in a list, and a word that
 * may be either (`pushes`) is a verb behind a subject that fits it: the swash pushes, the waves push.
 */
export function isVerbAt(page: ReadPage, i: number): boolean {
  const word = page.tokens[i]!.text
  const next = page.tokens[i + 1]
  const goesOn = next?.kind === 'word' || next?.kind === 'number'
  if (isVerb(word)) {
    if (/(?:ed|ing|s|n't)$/.test(word) || word.length < 4) return true
    return goesOn || AUXILIARY.has(word)
  }
  const before = page.tokens[i - 1]
  if (!goesOn || !maybeVerb(word) || before?.kind !== 'word' || next.text === 'of') return false
  if (SUBJECTS.has(before.text)) return true
  if (isStopWord(before.text) || isDirectionWord(before.text)) return false
  return word.endsWith('s') !== before.text.endsWith('s')
}
const SUBJECTS = new Set('i you we they it he she who which that to this these those'.split(' '))
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

// Word after word without the small words that make a sentence: prose has four in ten, hurried notes two.
function isHeap(page: ReadPage, from: number, to: number): boolean {
  let words = 0
  let small = 0
  for (let i = from; i < to; i += 1) {
    const token = page.tokens[i]!
    if (token.kind === 'sign' && RELATIONS.has(token.text)) return false
    if (token.kind !== 'word') continue
    words += 1
    if (isStopWord(token.text) || isDirectionWord(token.text) || isNegation(token.text)) small += 1
  }
  return words >= HEAP_WORDS && small < words * HEAP_SMALL
}
const HEAP_WORDS = 9
const HEAP_SMALL = 0.12

// One word between commas does nothing, even if it is a verb elsewhere.
function alone(page: ReadPage, from: number, to: number, i: number): boolean {
  const [before, after] = [page.tokens[i - 1], page.tokens[i + 1]]
  return (i === from || before?.kind === 'sign') && (i + 1 >= to || after?.kind === 'sign')
}

function isBare(page: ReadPage, from: number, to: number): boolean {
  if (isHeap(page, from, to)) return true
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

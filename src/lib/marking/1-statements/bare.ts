import nlp from 'compromise/two'
import { isDirectionWord, isNegation } from '../lexicon'
import type { ReadPage } from './page'
import type { Statement } from './statements'

const RELATIONS = new Set(['=', '->', '<->', ':', '>', '<', '↑', '↓', '+', '/', '*'])
const WORDS_THAT_RELATE = new Set(
  'because since so therefore than like as if when where which that who of by with without from to into between for during before after more less most least fewer each every per about around'.split(' '),
)
const model = nlp.model() as { one: { lexicon: Readonly<Record<string, string | readonly string[]>> } }

/** Does compromise's lexicon know the word as a form of a verb, and only a form that cannot be a plain noun? */
export function isVerb(word: string): boolean {
  if (/n't$/.test(word)) return true
  const tag = Object.hasOwn(model.one.lexicon, word) ? model.one.lexicon[word] : undefined
  const tags = typeof tag === 'string' ? [tag] : (tag ?? [])
  return tags.some((t) => /^(?:Copula|Modal|Auxiliary|PastTense|PresentTense|Gerund|Infinitive|Participle)$/.test(t))
}

/**
 * 1 for every token in a bare stretch: key words between commas that relate to nothing (no verb, no sign or word that ties
 * one to another). Such a heap of words states nothing.
 */
export function bareTokens(page: ReadPage): Uint8Array {
  const bare = new Uint8Array(page.tokens.length)
  for (const statement of page.statements) {
    let from = statement.from
    for (let i = statement.from; i <= statement.to; i += 1) {
      const parted = i === statement.to || (page.tokens[i]!.kind === 'sign' && /^[,;()/&!?.]$/.test(page.tokens[i]!.text))
      if (!parted) continue
      if (isBare(page, statement, from, i)) bare.fill(1, from, i)
      from = i + 1
    }
  }
  return bare
}

function isBare(page: ReadPage, statement: Statement, from: number, to: number): boolean {
  let words = 0
  for (let i = from; i < to; i += 1) {
    const token = page.tokens[i]!
    if (token.kind === 'number') return false
    if (token.kind === 'sign') {
      if (RELATIONS.has(token.text)) return false
      if (token.text === '-' && token.apart && i > from) return false
      continue
    }
    if (token.kind !== 'word') continue
    words += 1
    const word = token.text
    if (isVerb(word) || isNegation(word) || isDirectionWord(word) || WORDS_THAT_RELATE.has(word)) return false
    if (word.length > 5 && /(?:er|est)$/.test(word) && page.keys[i] !== word) return false
  }
  void statement
  return words > 0
}

import type { ReadPage } from '../1-statements/page'
import { byFirstWord } from '../words/first-words'

const HEDGES = byFirstWord([
  'maybe',
  'perhaps',
  'possibly',
  'unsure',
  'not sure',
  'not certain',
  'i guess',
  'dunno',
  "can't remember",
  'cant remember',
  'or something',
  'no idea',
  "don't know",
  'dont know',
])

/**
 * Rule 1: statements that the student doubts in so many words. What is doubted is not said; a statement that is nothing but the doubt
 * ("not sure") doubts the one before it.
 */
export function doubted(page: ReadPage): ReadonlySet<number> {
  const found = new Set<number>()
  for (const { index, from, to } of page.statements) {
    const at = hedgeAt(page, from, to)
    if (at < 0) continue
    found.add(index)
    if (to - from <= 4 && index > 0) found.add(index - 1)
  }
  return found
}

function hedgeAt(page: ReadPage, from: number, to: number): number {
  for (let i = from; i < to; i += 1) {
    const hedges = HEDGES.get(page.tokens[i]!.text)
    if (
      hedges?.some((hedge) =>
        hedge.every((word, k) => i + k < to && page.tokens[i + k]!.text === word),
      )
    )
      return i
  }
  return -1
}

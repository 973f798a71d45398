import { isStopWord } from '../lexicon'
import { isVerb } from './bare'
import type { ReadPage } from './page'
import type { Statement } from './statements'

/** Something is said of something: the tokens of the subject, and those of what is said. Ends are exclusive. */
export interface Assertion {
  readonly statement: number
  readonly subject: { readonly from: number; readonly to: number }
  readonly body: { readonly from: number; readonly to: number }
}

const RELATES = new Set(['=', ':', '->'])

/** The assertions of a statement: one for each clause that has a subject before a verb or a sign that relates (`swash = up the beach`). */
export function assertionsIn(page: ReadPage, statement: Statement): Assertion[] {
  const starts: { at: number; verb: number }[] = []
  let clauseStart = statement.from
  let taken = false
  for (let i = statement.from; i < statement.to; i += 1) {
    if (i > statement.from && page.clauseOf[i] !== page.clauseOf[i - 1]) {
      const sign = page.tokens[i]!
      if (RELATES.has(sign.text) || (sign.text === '-' && sign.apart)) {
        if (!taken && hasContent(page, clauseStart, i)) {
          starts.push({ at: clauseStart, verb: i })
          taken = true
        }
        continue
      }
      if (page.tokens[i]!.text !== '(') {
        clauseStart = i
        taken = false
      }
    }
    if (taken || page.tokens[i]!.kind !== 'word') continue
    if (isVerb(page.tokens[i]!.text) && hasContent(page, clauseStart, i)) {
      starts.push({ at: clauseStart, verb: i })
      taken = true
    }
  }
  return starts.map(({ at, verb }, k) => ({
    statement: statement.index,
    subject: { from: at, to: verb },
    body: { from: verb, to: starts[k + 1]?.at ?? statement.to },
  }))
}

function hasContent(page: ReadPage, from: number, to: number): boolean {
  for (let i = from; i < to; i += 1) {
    const token = page.tokens[i]!
    if (token.kind === 'word' && !isStopWord(token.text)) return true
  }
  return false
}

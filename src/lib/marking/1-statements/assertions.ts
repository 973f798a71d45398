import { isStopWord } from '../lexicon'
import { isVerbAt } from './bare'
import type { ReadPage } from './page'
import type { Statement } from './statements'

/** Something is said of something: the tokens of the subject, and those of what is said. Ends are exclusive. */
export interface Assertion {
  readonly statement: number
  readonly subject: { readonly from: number; readonly to: number }
  readonly body: { readonly from: number; readonly to: number }
  /** The subject is a pronoun or is not said: it carries on with the one before. */
  readonly carries: boolean
}

const RELATES = new Set(['=', ':', '->'])
const PRONOUNS = new Set(
  'it they this these that those he she which who there its their'.split(' '),
)

/** The assertions of every statement of a page. */
export function assertionsOf(page: ReadPage): readonly (readonly Assertion[])[] {
  const known = assertions.get(page)
  if (known) return known
  const made = page.statements.map((statement) => assertionsIn(page, statement))
  assertions.set(page, made)
  return made
}
const assertions = new WeakMap<ReadPage, readonly (readonly Assertion[])[]>()

/** The assertions of a statement: one for each clause that has a subject before a verb or a sign that relates (`swash = up the beach`). */
function assertionsIn(page: ReadPage, statement: Statement): Assertion[] {
  const starts: { at: number; verb: number }[] = []
  let clauseStart = statement.from
  let taken = false
  for (let i = statement.from; i < statement.to; i += 1) {
    const token = page.tokens[i]!
    if (i > statement.from && page.clauseOf[i] !== page.clauseOf[i - 1]) {
      if (
        token.kind === 'sign' &&
        (RELATES.has(token.text) || (token.text === '-' && token.apart))
      ) {
        if (token.text === ':' && introduces(page, clauseStart)) {
          clauseStart = i + 1
          taken = false
        } else if (!taken && i > clauseStart) {
          starts.push({ at: clauseStart, verb: i })
          taken = true
        }
        continue
      }
      if (token.text !== '(' && token.text !== ')') {
        clauseStart = token.kind === 'sign' ? i + 1 : i
        taken = false
      }
    }
    if (taken || token.kind !== 'word') continue
    if (isVerbAt(page, i)) {
      starts.push({ at: clauseStart, verb: i })
      taken = true
    }
  }
  if (starts.length === 0) starts.push({ at: statement.from, verb: statement.from })
  starts[0] = { at: statement.from, verb: starts[0]!.verb }
  return starts.map(({ at, verb }, k) => ({
    statement: statement.index,
    subject: { from: at, to: verb },
    body: { from: verb, to: starts[k + 1]?.at ?? statement.to },
    carries: !hasContent(page, at, verb),
  }))
}

// `… where they meet: the one sinks`: a colon after such a clause says nothing of it.
const OPENS = new Set(['where', 'when', 'if', 'as', 'because', 'since', 'while'])
const introduces = (page: ReadPage, clauseStart: number): boolean =>
  OPENS.has(page.tokens[clauseStart]!.text)

function hasContent(page: ReadPage, from: number, to: number): boolean {
  for (let i = from; i < to; i += 1) {
    const token = page.tokens[i]!
    if (token.kind === 'word' && !isStopWord(token.text) && !PRONOUNS.has(token.text)) return true
  }
  return false
}

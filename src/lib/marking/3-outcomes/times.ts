import type { ReadPage } from '../1-statements/page'
import type { Statement } from '../1-statements/statements'
import type { Occurrence } from '../2-ideas/occurrence'

/**
 * When a step happens as the page tells it: where it stands, unless the student numbered the lines, or "before", "after", "because",
 * "first", "last" say otherwise.
 */
export function timeOf(page: ReadPage, o: Occurrence): number {
  const first = o.at[0]!.from
  const last = o.at[o.at.length - 1]!.from
  const statement = page.statements[o.statement]!
  if (statement.number !== undefined) return FAR * statement.number + last
  const causes = NEARBY * causesBehind(page, statement, first)
  if (!tellsTime(page, reach(page, first).from, statement.to)) return last - causes
  const clause = page.clauseOf[first]!
  let time = last - FAR * backwards(page, first) - causes + FAR * ordinalAt(page, first)
  for (let i = statement.from; i < statement.to; i += 1) {
    if (page.clauseOf[i] !== clause) continue
    const word = page.tokens[i]!.text
    const next = page.tokens[i + 1]?.text ?? ''
    const points = !POINTS_BACK.has(next)
    const opens = opensClause(page, statement, i)
    // "Before adding Y, measure X"; "X goes on after Y": the other order than they stand in.
    if (i < first && word === 'before' && points && opens) time += NEARBY
    if (i < first && (word === 'after' || word === 'once') && points && !opens) time -= NEARBY
    if (i > last && word === 'before' && (next === 'anything' || next === 'everything')) {
      time -= 2 * FAR * FAR
    }
    const isLast =
      (word === 'last' && (i + 1 >= statement.to || /^(?:of|thing|\.)$/.test(next))) ||
      (word === 'end' && page.tokens[i - 1]?.text === 'the' && page.tokens[i - 2]?.text === 'at')
    if (word === 'earlier' || word === 'beforehand' || word === 'previously') time -= FAR
    if (word === 'finally' || word === 'lastly' || isLast) time += FAR * FAR
    if (word === 'first' && i > statement.from) time -= FAR * FAR
  }
  return time
}

// The first word of its clause, an `and` or a comma before it left out.
function opensClause(page: ReadPage, statement: Statement, i: number): boolean {
  let k = i - 1
  while (k >= statement.from && (page.tokens[k]!.kind === 'sign' || page.tokens[k]!.text === 'and'))
    k -= 1
  return k < statement.from || page.clauseOf[k] !== page.clauseOf[i]
}

/** The statement some way back up to which a word may tell when what is said at token `at` happens. */
const reach = (page: ReadPage, at: number): Statement =>
  page.statements[Math.max(0, page.statementOf[at]! - 5)]!

/** Is any word among the tokens that tells of time? Most pages have few, and every step asks. */
function tellsTime(page: ReadPage, from: number, to: number): boolean {
  let before = timeWords.get(page)
  if (!before) {
    before = new Int32Array(page.tokens.length + 1)
    for (let i = 0; i < page.tokens.length; i += 1)
      before[i + 1] = before[i]! + (TIME.has(page.tokens[i]!.text) ? 1 : 0)
    timeWords.set(page, before)
  }
  return before[to]! > before[from]!
}
/** For each page how many such words stand before each token. */
const timeWords = new WeakMap<ReadPage, Int32Array>()

/** More than any clause is long, and more than any page. */
const NEARBY = 40
const FAR = 100_000
const POINTS_BACK = new Set(['that', 'this', 'which', 'any', 'anything', 'everything', ','])
const CAUSES = new Set(['because', 'once'])

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth']
const TIME = new Set([
  ...ORDINALS,
  ...'before after once earlier beforehand previously finally lastly last end'.split(' '),
])

// `Third, … The second is to …`: the last ordinal that opens a clause, up to token `at`, within the last statements; what has none goes on from it.
function ordinalAt(page: ReadPage, at: number): number {
  const { from } = reach(page, at)
  for (let i = at; i >= from; i -= 1) {
    const ordinal = ORDINALS.indexOf(page.tokens[i]!.text)
    const own = page.statements[page.statementOf[i]!]
    if (ordinal < 0 || !own) continue
    const k = page.tokens[i - 1]?.text === 'the' ? i - 1 : i
    if (
      /^(?:,|is|you|we|i|the|step|thing)$/.test(page.tokens[i + 1]?.text ?? '') &&
      opensClause(page, own, k)
    )
      return ordinal
  }
  return 0
}

// How often the page has gone back in time by "before that" up to token `at`, within the last statements.
function backwards(page: ReadPage, at: number): number {
  const { from } = reach(page, at)
  let count = 0
  for (let i = from; i < at; i += 1) {
    const next = page.tokens[i + 1]?.text
    if (page.tokens[i]!.text === 'before' && (next === 'that' || next === 'this')) count += 1
  }
  return count
}

// "X because Y": Y comes first. How many such clauses run without a break up to the one that token `at` is in.
function causesBehind(page: ReadPage, statement: Statement, at: number): number {
  let count = 0
  for (let i = at; i > statement.from; i -= 1) {
    if (page.clauseOf[i - 1] === page.clauseOf[i]) continue
    if (!CAUSES.has(page.tokens[i]!.text)) break
    count += 1
  }
  return count
}

import { isDirectionWord, isStopWord } from '../lexicon'
import { assertionsOf } from './assertions'
import { opensWithCorrection } from './corrections'
import type { ReadPage } from './page'
import type { Statement } from './statements'

/** A key that a pronoun, or the place of a subject that is not said, stands for. */
export interface Carried {
  readonly at: number
  readonly key: string
}

const PRONOUNS = new Set('it they this these those its their he she'.split(' '))
/** Words that open a clause beside the main one. */
const SUBORDINATE = new Set(
  'when whenever where because if as since while although though until unless after before once which who that'.split(
    ' ',
  ),
)
/** Words of a subject that are carried on at the most. */
const MOST = 4

/**
 * Rule 12: "it", "they", "this", and a bullet that begins with its verb, stand for the subject of the assertion before, or for the
 * heading that they stand under.
 */
export function carriedSubjects(page: ReadPage): Carried[] {
  const carried: Carried[] = []
  let subject: readonly string[] = []
  // The same without the place that it was told of: where the next clause has a place of its own.
  let bare: readonly string[] = []
  let heading: readonly string[] = []
  let object: readonly string[] = []
  for (const statement of page.statements) {
    if (isHeading(page, statement)) {
      heading = subjectKeys(page, statement.from, statement.to)
      subject = heading
      continue
    }
    if (
      statement.paragraph !== page.statements[statement.index - 1]?.paragraph &&
      !statement.bullet
    )
      heading = []
    // What the next statement's pronoun stands for: the subject of a main clause, where there is one.
    let main: readonly string[] | undefined
    for (const { subject: range, body, carries } of assertionsOf(page)[statement.index]!) {
      for (const at of objectPronouns(page, body.from, body.to))
        for (const key of object) carried.push({ at, key })
      object = subjectKeys(page, body.from, body.to).slice(-2)
      if (!carries && !opensWithCorrection(page.tokens, statement)) {
        // `its resistance`: the possessor is carried, the resistance is new.
        const own = afterPlace(page, range.from, range.to) > range.from
        for (const at of pronounsIn(page, range.from, range.to))
          for (const key of own ? bare : subject) carried.push({ at, key })
        bare = subjectKeys(page, afterPlace(page, range.from, range.to), range.to)
        subject = subjectKeys(page, range.from, range.to)
        if (!SUBORDINATE.has(page.tokens[range.from]!.text)) main = subject
        continue
      }
      const imperative =
        range.from === range.to &&
        range.from === statement.from &&
        !statement.bullet &&
        !PRONOUNS.has(page.tokens[range.from]!.text)
      if (imperative && !opensWithCorrection(page.tokens, statement)) continue
      const from = statement.bullet && heading.length > 0 ? heading : subject
      const at = pronounsIn(page, range.from, Math.max(range.to, range.from + 1))[0] ?? range.from
      for (const key of from) carried.push({ at, key })
    }
    subject = main ?? subject
    if (main) bare = main
  }
  return carried
}

/** A line of a few words that says nothing by itself, with lines under it. */
function isHeading(page: ReadPage, statement: Statement): boolean {
  const next = page.statements[statement.index + 1]
  if (statement.bullet || !next || next.paragraph !== statement.paragraph) return false
  const line = page.text.slice(statement.end, next.start)
  if (!/[\n\r\u2028\u2029]/.test(line)) return false
  const words = page.tokens.slice(statement.from, statement.to).filter((t) => t.kind === 'word')
  const [assertion] = assertionsOf(page)[statement.index]!
  const says =
    assertion !== undefined &&
    assertion.subject.to > assertion.subject.from &&
    assertion.body.to - assertion.body.from > 1
  return words.length <= 5 && !says
}

const PLACES = new Set('in on at with for under during by near inside through'.split(' '))
const ARTICLES = new Set('the a an its their each every all both they it he she'.split(' '))

// `in deep water the waves are long`: where the subject begins, behind the place that it is told of.
function afterPlace(page: ReadPage, from: number, to: number): number {
  const first = /^(?:and|but|while|whereas|so)$/.test(page.tokens[from]?.text ?? '')
    ? from + 1
    : from
  if (!PLACES.has(page.tokens[first]?.text ?? '')) return from
  for (let i = first + 3; i < to; i += 1) if (ARTICLES.has(page.tokens[i]!.text)) return i
  return from
}

function subjectKeys(page: ReadPage, from: number, to: number): string[] {
  const keys: string[] = []
  for (let i = from; i < to; i += 1) {
    const token = page.tokens[i]!
    if (token.kind === 'word' && !isStopWord(token.text) && !PRONOUNS.has(token.text))
      keys.push(page.keys[i]!)
  }
  return keys.slice(-MOST)
}

// `parallel to it`: what the assertion before ended with.
function objectPronouns(page: ReadPage, from: number, to: number): number[] {
  const at: number[] = []
  for (let i = from + 1; i < to; i += 1) {
    const before = page.tokens[i - 1]!.text
    if (
      /^(?:it|them|this|that)$/.test(page.tokens[i]!.text) &&
      (isDirectionWord(before) || /^(?:of|than|with|by)$/.test(before))
    )
      at.push(i)
  }
  return at
}

function pronounsIn(page: ReadPage, from: number, to: number): number[] {
  const at: number[] = []
  for (let i = from; i < to && i < page.tokens.length; i += 1)
    if (PRONOUNS.has(page.tokens[i]!.text)) at.push(i)
  return at
}

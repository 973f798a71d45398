import { kindOfEquation, symbolsIn } from './equation'
import { entriesOf, notationOf, offsetIn, report, textOf, type Field, type Reading } from './fields'
import { readWordings } from './notation'
import type { Equation, Wording } from './types'

/** `field` is the equation; `where` explains its symbols. Undefined where either has a mistake, which is reported. */
export function readEquation(
  reading: Reading,
  field: Field,
  where: Field | undefined,
): Equation | undefined {
  const text = textOf(reading, field)
  const kind = text && notationOf(reading, text, kindOfEquation)
  const words = where && wordsOf(reading, where)
  if (!text || !kind) return undefined
  if (kind === 'chemical') {
    if (where) {
      return report(
        reading,
        where.at,
        where.where,
        'A chemical equation (it has a reaction arrow) takes no "where".',
      )
    }
    return { written: text.text, kind, where: {} }
  }
  if (!where) {
    return report(
      reading,
      text.at,
      text.where,
      'The field "where" is missing: it gives the words for each symbol. (A chemical equation has an arrow → instead of =.)',
    )
  }
  if (!words) return undefined

  const { used, unknown } = symbolsIn(text.text, [...words.keys()])
  for (const { symbol, offset } of unknown) {
    report(
      reading,
      offsetIn(reading, text, offset),
      text.where,
      `"${symbol}" is not in "where": give the words for it.`,
    )
  }
  const unused = [...words].filter(([symbol]) => !used.has(symbol))
  for (const [symbol, { at }] of unused) {
    report(reading, at, where.where, `"${symbol}" does not occur in the equation ${text.text}.`)
  }
  const complete = unknown.length === 0 && unused.length === 0
  const explained = Object.fromEntries(
    [...words].map(([symbol, { wordings }]) => [symbol, wordings]),
  )
  return complete ? { written: text.text, kind, where: explained } : undefined
}

interface Explained {
  readonly at: number
  readonly wordings: readonly Wording[]
}

function wordsOf(reading: Reading, where: Field): Map<string, Explained> | undefined {
  const entries = entriesOf(reading, where)
  if (!entries) return undefined
  const words = new Map<string, Explained>()
  for (const entry of entries) {
    const text = textOf(reading, entry)
    // An entry that cannot be read still explains its symbol: one mistake is reported, not two.
    const wordings = (text && notationOf(reading, text, readWordings)) ?? []
    words.set(entry.name, { at: entry.nameAt, wordings })
  }
  return words
}

import { table } from '../words/table'
import levenshtein from 'natural/lib/natural/distance/levenshtein_distance.js'
import type { Value } from '../../syllabus/types'
import type { Span } from '../types'
import { isKnown } from '../lexicon'
import { keyOf } from '../words/keys'
import { numbersIn, type NumberRead } from './numbers'
import { unitNames, unitNamed, type Unit } from './units'
import { unitOf, unitsAt } from './unit-text'

/** What a statement says about a value: right; the number without its unit; another number; nothing. */
export interface ValueFound {
  readonly says: 'right' | 'no unit' | 'wrong'
  readonly span: Span
}

export interface ReadyValue {
  readonly value: Value
  /** Undefined for a pure number and for counted things. */
  readonly unit?: Unit
  /** The key of a counted thing: `items`, `bits` that are no unit. */
  readonly counted?: string
}

export function readyValue(value: Value): ReadyValue {
  const unit = value.unit === undefined ? undefined : unitOf(value.unit)
  if (unit || value.unit === undefined) return { value, unit }
  const words = value.unit.trim().split(/\s+/)
  return { value, counted: keyOf(words[words.length - 1]!.toLowerCase()) }
}

/** Everything `text` says about the value, in its order. Numbers of other quantities (another dimension) say nothing. */
export function valuesIn(ready: ReadyValue, text: string): ValueFound[] {
  const numbers = numbersIn(text).filter((number) => !listNumber(text, number))
  const found: ValueFound[] = []
  for (let i = 0; i < numbers.length; i += 1) {
    const number = numbers[i]!
    const range = rangeWith(text, number, numbers[i + 1])
    const read = judged(ready, text, number, range)
    if (range) i += 1
    if (read) found.push(read)
  }
  return found
}

// `1)` or `2.` at the start of a line numbers the line.
function listNumber(text: string, number: NumberRead): boolean {
  return number.start === 0 && /^[.)]\s/.test(text.slice(number.end))
}

interface Range {
  readonly low: number
  readonly high: number
  readonly end: number
}

// `between five and nine`, `5-9`, `5 to 9`: a range counts where all of it lies within the tolerance.
function rangeWith(text: string, one: NumberRead, two: NumberRead | undefined): Range | undefined {
  if (!two) return undefined
  const between = text.slice(one.end, two.start)
  const spread = /^\s*(?:±|\+\s?\/?\s?-|plus or minus|give or take)\s*$/i.test(between)
  if (spread) return { low: one.number, high: one.number, end: two.end }
  const joined =
    /^\s*(?:to|-|–|—|or)\s*$/i.test(between) ||
    (/^\s*and\s*$/i.test(between) && /\bbetween\s+$/i.test(text.slice(0, one.start)))
  if (!joined || two.number <= one.number) return undefined
  return { low: one.number, high: two.number, end: two.end }
}

function judged(
  ready: ReadyValue,
  text: string,
  number: NumberRead,
  range: Range | undefined,
): ValueFound | undefined {
  const low = range?.low ?? number.number
  const high = range?.high ?? number.number
  const after = range?.end ?? number.end
  const { number: wanted, tolerance } = ready.value
  const near = (factor: number) =>
    within(low * factor, wanted, tolerance) && within(high * factor, wanted, tolerance)
  const end = (length: number): Span => ({ start: number.start, end: after + length })

  const asked = unitInContext(ready, text.slice(after))
  if (asked !== undefined) return { says: near(1) ? 'right' : 'wrong', span: end(asked.length) }
  if (ready.counted !== undefined) return countedThing(ready, text, after, near(1), end)
  if (ready.value.unit === undefined) {
    return unitsAt(text.slice(after)).length > 0 && !near(1)
      ? undefined
      : { says: near(1) ? 'right' : 'wrong', span: end(0) }
  }
  const before = /([£$€])\s?$/.exec(text.slice(0, number.start))
  if (before) {
    if (unitNamedDimension(before[1]!) !== ready.unit?.dimension) return undefined
    const span = { start: number.start - before[0].length, end: after }
    return { says: near(1 / ready.unit!.factor) ? 'right' : 'wrong', span }
  }
  const units = readUnits(text.slice(after))
  const fitting = [...units].reverse().find((unit) => unit.dimension === ready.unit!.dimension)
  if (fitting) {
    return {
      says: near(fitting.factor / ready.unit!.factor) ? 'right' : 'wrong',
      span: end(fitting.length),
    }
  }
  if (units.length > 0) {
    // The same temperature on another scale.
    const converted = scale(units[0]!.dimension, ready.unit!.dimension)
    if (converted) {
      const right =
        within(converted(low), wanted, tolerance) && within(converted(high), wanted, tolerance)
      return { says: right ? 'right' : 'wrong', span: end(units[0]!.length) }
    }
    return near(1) ? { says: 'wrong', span: end(units[0]!.length) } : undefined
  }
  if (number.words && number.number < 2) return undefined
  return near(1) ? { says: 'no unit', span: end(0) } : undefined
}

/** `35 C` and `35 degrees` where a temperature is asked: nobody takes them for coulombs or an angle. Common practice. */
const CELSIUS =
  /^\s*(?:C\b|°(?!\s?[CF])|deg(?:ree)?s?\b(?!\s*(?:[CF]\b|celsius|centigrade|fahrenheit)))/i
/** `nm`, which is nanometres everywhere else. */
const NAUTICAL = /^\s*(?:nmi?\b|n\.?\s?miles?\b)/i

function unitInContext({ value, unit }: ReadyValue, text: string): string | undefined {
  if (unit?.dimension === 'degC1') return CELSIUS.exec(text)?.[0]
  if (/^nautical miles?$/i.test(value.unit ?? '')) return NAUTICAL.exec(text)?.[0]
  return undefined
}

function countedThing(
  ready: ReadyValue,
  text: string,
  after: number,
  near: boolean,
  end: (length: number) => Span,
): ValueFound | undefined {
  const ahead = /^[\s-]*(?:\p{L}+\s+){0,2}?\p{L}+/u
  for (let words = 1; words <= 3; words += 1) {
    const hit = new RegExp(`^[\\s-]*(?:[\\p{L}'-]+\\s+){${words - 1}}([\\p{L}'-]+)`, 'u').exec(
      text.slice(after),
    )
    if (!hit) break
    if (keyOf(hit[1]!.toLowerCase()) === ready.counted) {
      return { says: near ? 'right' : 'wrong', span: end(hit[0].length) }
    }
  }
  if (!near) return undefined
  const thing = ahead.exec(text.slice(after))?.[0].trim().toLowerCase()
  // "seven things" counts the same things; "7 seconds" does not.
  if (thing && THINGS.has(thing.split(/\s+/)[0]!)) return { says: 'right', span: end(0) }
  return unitsAt(text.slice(after)).length > 0 ? undefined : { says: 'no unit', span: end(0) }
}

const THINGS = new Set(['things', 'items', 'pieces', 'units', 'bits', 'objects', 'ones'])

function unitNamedDimension(symbol: string): string | undefined {
  return unitOf(symbol)?.dimension
}

function readUnits(text: string) {
  const read = unitsAt(text)
  if (read.length > 0) return read
  // A misspelt unit name, where only one name is meant.
  const word = /^[\s-]*(\p{L}{5,})/u.exec(text)
  if (!word) return []
  const first = unitMeant(word[1]!.toLowerCase())
  if (first === undefined) return []
  return unitsAt(` ${first}`).map((unit) => ({ ...unit, length: word[0].length }))
}

const meant = new Map<string, string | undefined>()

/** The unit name that a misspelling can only be: kilohurtz. Remembered, because every value point asks again. */
function unitMeant(typed: string): string | undefined {
  if (meant.has(typed)) return meant.get(typed)
  const allowed = typed.length > 7 ? 2 : 1
  const near = isKnown(typed)
    ? []
    : unitNames.filter(
        (name) =>
          Math.abs(name.length - typed.length) <= allowed &&
          name[0] === typed[0] &&
          levenshtein.DamerauLevenshteinDistance(name, typed, { restricted: true }) <= allowed,
      )
  const one = new Set(near.map((name) => unitNamed(name)!.factor)).size === 1 ? near[0] : undefined
  if (meant.size > 5_000) meant.clear()
  meant.set(typed, one)
  return one
}

function within(number: number, wanted: number, tolerance: number): boolean {
  return Math.abs(number - wanted) <= tolerance + 1e-9 * Math.abs(wanted)
}

const TO_CELSIUS = table<(n: number) => number>({
  K1: (n) => n - 273.15,
  degC1: (n) => n,
  degF1: (n) => ((n - 32) * 5) / 9,
})
const FROM_CELSIUS = table<(n: number) => number>({
  K1: (n) => n + 273.15,
  degC1: (n) => n,
  degF1: (n) => (n * 9) / 5 + 32,
})

/** From one scale of temperature to another; undefined for other quantities. */
function scale(from: string, to: string): ((number: number) => number) | undefined {
  const [into, out] = [TO_CELSIUS[from], FROM_CELSIUS[to]]
  return into && out ? (number) => out(into(number)) : undefined
}

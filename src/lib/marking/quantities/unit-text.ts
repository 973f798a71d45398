import { dimensionOf, multiplied, unitNamed, type Unit } from './units'

export interface UnitRead extends Unit {
  /** UTF-16 code units of the text that it took. */
  readonly length: number
}

const WORD = /^[\p{L}°Ωµμ%‰£$€℃]+/u
const EXPONENT = /^(?:\^?\s?([-−–+]?\d)(?![\d.])|([⁺⁻]?[⁰¹²³⁴-⁹])|\s(squared|cubed)\b)/u
const AHEAD = /^(square|cubic)\s+/i
const TIMES = /^(?:\s*[·⋅.*]\s*|\s+|\s*-\s*)/
const OVER = /^\s*(?:\/|÷)\s*|^\s+(?:per|a|an|each|every)\s+(?:(?:one|1|single)\s+)?/i
/** Symbols with a prefix that are words first: in prose, `7 as` is no time. */
const WORDS = new Set([
  'as',
  'am',
  'at',
  'ad',
  'ah',
  'aa',
  'pa',
  'ma',
  'has',
  'do',
  'us',
  'em',
  'ed',
  'is',
  'in',
  'a',
])
const SUPERS = '⁰¹²³⁴⁵⁶⁷⁸⁹'

/**
 * Every unit that can be read at the start of `text`, shortest first: `m/s per day` gives m, m/s. The caller knows
 * which dimension it needs; a letter that happens to follow a unit is not always a part of it. [] if there is none. In `prose` a symbol
 * that is also a word is a word.
 */
export function unitsAt(text: string, prose = true): UnitRead[] {
  const reads: UnitRead[] = []
  let unit: Parameters<typeof multiplied>[0] = { factor: 1, powers: {} }
  let at = /^\s*-?\s?/.exec(text)![0].length
  // Only space or a hyphen (a 10-metre tape) may part the number from its unit.
  let sign = 1
  for (let count = 0; count < 6; count += 1) {
    const one = factorAt(text.slice(at), prose)
    if (!one) break
    unit = multiplied(unit, one, one.exponent * sign)
    at += one.length
    reads.push({ factor: unit.factor, dimension: dimensionOf(unit.powers), length: at })
    const rest = text.slice(at)
    const over = OVER.exec(rest)
    const times = over ? null : TIMES.exec(rest)
    const together = /^\p{L}(?:\^?\s?[-−–]\d|⁻)/u.test(rest)
    if (!over && !times && !together) break
    if (over) sign = -1
    else if (sign === -1 && times && !/[·⋅*.]/.test(times[0])) break
    at += (over ?? times)?.[0].length ?? 0
  }
  return reads
}

function factorAt(text: string, prose: boolean) {
  const ahead = AHEAD.exec(text)
  const skip = ahead?.[0].length ?? 0
  const word = WORD.exec(text.slice(skip))?.[0]
  if (!word || (prose && WORDS.has(word))) return undefined
  const celsius = /^(?:°\s?C|℃|degrees?\s+(?:celsius|centigrade|c\b)|degC\b|celsius)/i.exec(
    text.slice(skip),
  )
  const fahrenheit = /^(?:°\s?F\b|degrees?\s+fahrenheit|fahrenheit)/i.exec(text.slice(skip))
  const percent = /^per\s+cents?\b/i.exec(text.slice(skip))
  const worded = celsius ?? fahrenheit ?? percent
  const written = worded?.[0] ?? joinedSymbol(word, text.slice(skip + word.length)) ?? word
  const named = celsius
    ? unitNamed('°C')
    : fahrenheit
      ? unitNamed('°F')
      : percent
        ? unitNamed('%')
        : unitNamed(written)
  if (!named) return undefined
  const rest = text.slice(skip + written.length)
  const raised = EXPONENT.exec(rest)
  let exponent = ahead ? (ahead[1]!.toLowerCase() === 'square' ? 2 : 3) : 1
  let length = skip + written.length
  if (raised) {
    length += raised[0].length
    exponent = exponentOf(raised)
  }
  return { factor: named.factor, powers: named.powers, exponent, length }
}

// `ms⁻¹` is m s⁻¹, not a power of the millisecond: the first of two symbols that stand together before a negative power.
function joinedSymbol(word: string, rest: string): string | undefined {
  if (word.length !== 2 || !/^(?:\^?\s?[-−–]\d|⁻)/.test(rest)) return undefined
  return unitNamed(word[0]!) && unitNamed(word[1]!) ? word[0] : undefined
}

function exponentOf([, digits, superscript, word]: RegExpExecArray): number {
  if (word) return word.toLowerCase() === 'squared' ? 2 : 3
  if (superscript) {
    const sign = superscript.startsWith('⁻') ? -1 : 1
    return sign * SUPERS.indexOf(superscript.replace(/[⁺⁻]/, ''))
  }
  return Number(digits!.replace(/[−–]/, '-'))
}

/** The whole of `text` as one unit; undefined where it is none (a counted thing, such as `items`). */
export function unitOf(text: string): Unit | undefined {
  const whole = unitsAt(text, false).find((unit) => unit.length === text.length)
  return whole && { factor: whole.factor, dimension: whole.dimension }
}

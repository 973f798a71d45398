import { readValue } from '../../syllabus/value'
import type { Value } from '../../syllabus/types'
import type { Span } from '../types'
import { isStopWord } from '../lexicon'
import { numbersIn } from '../quantities/numbers'
import { unitOf } from '../quantities/unit-text'

/** The one value that a text states, and where; undefined where it states none, or more than one number. */
export interface DraftedValue {
  readonly value: Value
  readonly at: Span
}

const ABOUT = /\b(?:about|around|roughly|approximately|nearly|some)\s*$/i
/** How far off a value may be that the text itself calls a rough one. Our own choice. */
const ROUGHLY = 0.05
/** Unit and number together are at most this many words. */
const WORDS = 4

/** `about 340 m/s`, `32 bits`, `25.0 cm³`: a number with its unit, or with the things that it counts. A year is no value. */
export function draftValue(text: string): DraftedValue | undefined {
  const numbers = numbersIn(text).filter(({ words }) => !words)
  const [number] = numbers
  if (!number || numbers.length > 1) return undefined
  const rest = text.slice(number.start)
  const ends = [...rest.matchAll(/\S+/g)].slice(0, WORDS).map((word) => word.index + word[0].length)
  for (const end of ends.reverse()) {
    const written = rest.slice(0, end).replace(/[.,;:)]+$/, '')
    const value = valueOf(written)
    if (value?.unit === undefined) continue
    const counted = /^[a-z]{3,}s$/.test(value.unit) && !isStopWord(value.unit)
    if (!unitOf(value.unit) && !counted) continue
    const rough = ABOUT.test(text.slice(0, number.start))
    const tolerance = Math.max(value.tolerance, rough ? Math.abs(value.number) * ROUGHLY : 0)
    return {
      value: { ...value, tolerance },
      at: { start: number.start, end: number.start + written.length },
    }
  }
  return undefined
}

function valueOf(written: string): Value | undefined {
  try {
    return readValue(written)
  } catch {
    return undefined
  }
}

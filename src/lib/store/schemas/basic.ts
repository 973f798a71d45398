/** The small values that records are made of. */
import * as v from 'valibot'
import { isDay } from '../../recall'

export const id = v.pipe(v.string(), v.nonEmpty())

/** Milliseconds since 1970 UTC, as far as calendars go (ECMA-262, time values: 8.64e15). */
export const instantMs = v.pipe(v.number(), v.safeInteger(), v.minValue(0), v.maxValue(8.64e15))

/** A length of time in milliseconds; timers give fractions. */
export const spanMs = v.pipe(v.number(), v.finite(), v.minValue(0))

export const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0))

export const day = v.pipe(
  v.string(),
  v.check(isDay, 'A day is written YYYY-MM-DD and must exist in the calendar.'),
)

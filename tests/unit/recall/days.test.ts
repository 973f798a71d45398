/** The day on the wall, against the calendar library asked for every instant by itself. */
import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, test } from 'vitest'
import { dayAt, isDay } from '../../../src/lib/recall'

const ZONES = [
  'UTC',
  'Europe/London',
  'Europe/Berlin',
  'America/New_York',
  // Changed the clocks a minute after midnight until 2011: a day had begun and was left again.
  'America/St_Johns',
  // Changed them at midnight.
  'America/Sao_Paulo',
  'America/Havana',
  // By half an hour.
  'Australia/Lord_Howe',
  // Left out 30 December 2011.
  'Pacific/Apia',
  'Asia/Kathmandu',
]

const byLibrary = (atMs: number, zone: string): string =>
  Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(zone).toPlainDate().toString()

describe('the calendar day at an instant', () => {
  test.each(ZONES)('%s: any instant from 1970 to 2100', (zone) => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4_102_444_800_000 }), (atMs) => {
        expect(dayAt(atMs, zone)).toBe(byLibrary(atMs, zone))
      }),
      { numRuns: 200 },
    )
  })

  test.each(ZONES)('%s: every instant about a change of the clocks', (zone) => {
    let at = Temporal.Instant.from('2004-01-01T00:00Z').toZonedDateTimeISO(zone)
    for (let changes = 0; changes < 20; changes += 1) {
      const change = at.getTimeZoneTransition('next')
      if (!change || change.year > 2030) break
      const minute = 60_000
      for (const by of [-61, -60, -31, -1, 0, 1, 29, 59, 60, 61, 1_439, 1_441])
        for (const ms of [-1, 0, 1]) {
          const atMs = change.epochMilliseconds + by * minute + ms
          expect(`${atMs} ${dayAt(atMs, zone)}`).toBe(`${atMs} ${byLibrary(atMs, zone)}`)
        }
      at = change
    }
  })

  test('a zone that nobody knows is read as UTC', () => {
    expect(dayAt(Date.UTC(2027, 2, 1, 23, 59), 'Nowhere/At_All')).toBe('2027-03-01')
  })
})

test('what a day is, as the calendar library has it', () => {
  const there = (text: string): boolean => {
    try {
      return Temporal.PlainDate.from(text, { overflow: 'reject' }).toString() === text
    } catch {
      return false
    }
  }
  for (let year = 1896; year <= 2104; year += 4)
    for (let month = 0; month <= 13; month += 1)
      for (let day = 0; day <= 32; day += 1) {
        const two = (part: number) => String(part).padStart(2, '0')
        const text = `${year + (month % 4)}-${two(month)}-${two(day)}`
        expect(isDay(text), text).toBe(there(text))
      }
  for (const text of ['', '2027-1-1', '2027-01-01T00:00', ' 2027-01-01', '20270101', '2027-01-0a'])
    expect(isDay(text), text).toBe(there(text))
})

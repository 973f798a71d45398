import { describe, expect, test } from 'vitest'
import {
  checkTimeMs,
  dayAt,
  dayOf,
  daysBetween,
  isDay,
  sessionsOf,
  statusOf,
} from '../../../src/lib/recall'
import { check, settings } from './histories'

const London = 'Europe/London'
const NewYork = 'America/New_York'

describe('the calendar day of a check', () => {
  test.each([
    {
      at: '2027-03-28T00:59:59Z',
      zone: London,
      day: '2027-03-28',
      why: 'before the clocks go forward',
    },
    { at: '2027-03-28T01:00:00Z', zone: London, day: '2027-03-28', why: 'after they went forward' },
    {
      at: '2027-03-28T22:59:59Z',
      zone: London,
      day: '2027-03-28',
      why: 'last second of a 23-hour day',
    },
    { at: '2027-03-28T23:00:00Z', zone: London, day: '2027-03-29', why: 'midnight of summer time' },
    {
      at: '2027-03-27T23:30:00Z',
      zone: London,
      day: '2027-03-27',
      why: 'half past eleven, winter time',
    },
    {
      at: '2027-10-30T23:00:00Z',
      zone: London,
      day: '2027-10-31',
      why: 'first second of a 25-hour day',
    },
    {
      at: '2027-10-31T23:59:59Z',
      zone: London,
      day: '2027-10-31',
      why: 'last second of a 25-hour day',
    },
    {
      at: '2027-03-14T04:59:59Z',
      zone: NewYork,
      day: '2027-03-13',
      why: 'eve of the change, winter time',
    },
    {
      at: '2027-03-15T03:59:59Z',
      zone: NewYork,
      day: '2027-03-14',
      why: 'last second of a 23-hour day',
    },
    {
      at: '2027-11-08T04:59:59Z',
      zone: NewYork,
      day: '2027-11-07',
      why: 'last second of a 25-hour day',
    },
    { at: '2027-06-01T10:30:00Z', zone: 'Pacific/Kiritimati', day: '2027-06-02', why: 'UTC+14' },
    { at: '2027-06-01T10:30:00Z', zone: 'Pacific/Pago_Pago', day: '2027-05-31', why: 'UTC-11' },
    {
      at: '2027-06-01T18:30:00Z',
      zone: 'Asia/Kathmandu',
      day: '2027-06-02',
      why: 'a quarter-hour zone',
    },
    {
      at: '2027-06-01T23:30:00Z',
      zone: 'Rockpool/Nowhere',
      day: '2027-06-01',
      why: 'unknown zone: UTC',
    },
  ])('$at in $zone ($why)', ({ at, zone, day }) => {
    expect(dayOf(check(at, 'f', { zone }))).toBe(day)
  })

  test('days are counted on the calendar, not in hours', () => {
    expect(daysBetween('2027-03-27', '2027-03-29')).toBe(2)
    expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2)
    expect(daysBetween('2027-03-02', '2027-03-01')).toBe(-1)
  })

  test.each([
    ['2027-02-28', true],
    ['2027-02-29', false],
    ['2028-02-29', true],
    ['2027-13-01', false],
    ['2027-3-1', false],
    ['2027-03-01T12:00', false],
    ['', false],
  ])('is %j a day: %s', (text, expected) => {
    expect(isDay(text)).toBe(expected)
  })
})

describe('sessions', () => {
  const daysOf = (checks: Parameters<typeof sessionsOf>[0]) =>
    sessionsOf(checks).map(({ day }) => day)

  test('no checks, no sessions', () => {
    expect(sessionsOf([])).toEqual([])
  })

  test('the first check of a day counts; the later ones are practice', () => {
    const first = check('2027-03-01T08:00:00Z', 'fm')
    const second = check('2027-03-01T08:30:00Z', 'ff')
    const third = check('2027-03-01T21:00:00Z', 'ff')
    expect(sessionsOf([third, first, second])).toEqual([
      expect.objectContaining({
        day: '2027-03-01',
        check: first,
        later: [second, third],
        full: false,
      }),
    ])
  })

  test('gap checks never make a session, not even a full one', () => {
    const gap = check('2027-03-01T07:00:00Z', 'ff', { kind: 'gap' })
    expect(sessionsOf([gap])).toEqual([])
    expect(sessionsOf([gap, check('2027-03-01T08:00:00Z', 'fm')])).toMatchObject([
      { full: false, later: [] },
    ])
  })

  test('two checks a minute apart on either side of midnight are two days', () => {
    expect(
      daysOf([check('2027-03-01T23:59:30Z', 'f'), check('2027-03-02T00:00:30Z', 'f')]),
    ).toEqual(['2027-03-01', '2027-03-02'])
  })

  test.each([
    {
      why: 'both half past ones of the night when the clocks go back',
      zone: London,
      at: ['2027-10-31T00:30:00Z', '2027-10-31T01:30:00Z'],
      days: ['2027-10-31'],
    },
    {
      why: 'either side of the hour that is left out',
      zone: London,
      at: ['2027-03-28T00:30:00Z', '2027-03-28T01:30:00Z'],
      days: ['2027-03-28'],
    },
    {
      why: 'one check a day over the change: none lost, none doubled',
      zone: NewYork,
      at: [
        '2027-11-06T03:30:00Z',
        '2027-11-07T03:30:00Z',
        '2027-11-08T04:30:00Z',
        '2027-11-09T04:30:00Z',
      ],
      days: ['2027-11-05', '2027-11-06', '2027-11-07', '2027-11-08'],
    },
    {
      why: '24 hours and 30 minutes apart inside one 25-hour day',
      zone: NewYork,
      at: ['2027-11-07T04:10:00Z', '2027-11-08T04:40:00Z'],
      days: ['2027-11-07'],
    },
  ])('daylight saving: $why', ({ zone, at, days }) => {
    expect(daysOf(at.map((instant) => check(instant, 'f', { zone })))).toEqual(days)
  })

  test('reading the records in another zone moves no day: each carries its own', () => {
    const evening = check('2027-03-02T04:30:00Z', 'f', { zone: NewYork })
    const morning = check('2027-03-02T08:00:00Z', 'f', { zone: London })
    expect(daysOf([evening, morning])).toEqual(['2027-03-01', '2027-03-02'])
  })

  test('eastward over the date line the same day comes twice: one session, the first check counts', () => {
    const auckland = check('2027-06-01T07:00:00Z', 'fm', { zone: 'Pacific/Auckland' })
    const honolulu = check('2027-06-02T06:00:00Z', 'ff', { zone: 'Pacific/Honolulu' })
    expect(sessionsOf([auckland, honolulu])).toEqual([
      expect.objectContaining({ day: '2027-06-01', check: auckland, later: [honolulu] }),
    ])
  })

  test('over the date line into yesterday: the session done last is the latest', () => {
    const auckland = check('2027-06-01T07:00:00Z', 'ff', { zone: 'Pacific/Auckland' })
    const honolulu = check('2027-06-01T09:00:00Z', 'fm', { zone: 'Pacific/Honolulu' })
    expect(daysOf([honolulu, auckland])).toEqual(['2027-06-01', '2027-05-31'])
    expect(statusOf(sessionsOf([honolulu, auckland]), settings())).toBe('gaps')
  })
})

describe('the time put on a new check', () => {
  const at = (instant: string, zone = 'UTC') => ({ nowMs: Date.parse(instant), zone })
  const noonCheck = check('2027-03-01T12:00:00Z', 'fm')

  test.each([
    { now: '2027-03-01T12:30:00Z', expected: '2027-03-01T12:30:00.000Z', why: "the clock's" },
    { now: '2027-03-01T11:00:00Z', expected: '2027-03-01T12:00:00.001Z', why: 'set back an hour' },
    {
      now: '2027-03-01T12:00:00Z',
      expected: '2027-03-01T12:00:00.001Z',
      why: 'the same millisecond',
    },
    {
      now: '2027-02-20T11:00:00Z',
      expected: '2027-02-20T11:00:00.000Z',
      why: 'set back to a day without one',
    },
  ])('$why', ({ now, expected }) => {
    expect(new Date(checkTimeMs([noonCheck], at(now))).toISOString()).toBe(expected)
  })

  test('with no checks it is the clock’s', () => {
    expect(checkTimeMs([], at('2027-03-01T11:00:00Z'))).toBe(Date.parse('2027-03-01T11:00:00Z'))
  })

  test('it never leaves the day that the clock shows', () => {
    const last = check('2027-03-01T23:59:59.999Z', 'f')
    const time = checkTimeMs([last], at('2027-03-01T23:00:00Z'))
    expect(dayAt(time, 'UTC')).toBe('2027-03-01')
  })

  test('so a second try with the clock set back stays the second try', () => {
    const again = check('2027-03-01T12:00:00Z', 'ff', {
      id: 'again',
      atMs: checkTimeMs([noonCheck], at('2027-03-01T09:00:00Z')),
    })
    expect(sessionsOf([again, noonCheck])).toMatchObject([{ check: noonCheck, full: false }])
  })
})

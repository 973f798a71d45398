import { describe, expect, test } from 'vitest'
import { howLong, sessionsOf } from '../../../src/lib/recall'
import { check } from './histories'

/** Checks on days in a row, each with its minutes of writing. */
const written = (...minutes: number[]) =>
  sessionsOf(
    minutes.map((m, i) =>
      check(`2027-03-${String(i + 1).padStart(2, '0')}T12:00:00Z`, 'fm', { writingMs: m * 60_000 }),
    ),
  )

describe('how long a check takes', () => {
  test.each([
    {
      why: 'never checked: points at the set time',
      past: [],
      points: 24,
      seconds: 90,
      minutes: 36,
    },
    { why: 'the set time is the student’s', past: [], points: 24, seconds: 30, minutes: 12 },
    { why: 'a topic of no points takes a minute', past: [], points: 0, seconds: 90, minutes: 1 },
    { why: 'once checked: as long as that took', past: [8], points: 24, seconds: 90, minutes: 8 },
    { why: 'the middle of three', past: [20, 4, 9], points: 24, seconds: 90, minutes: 9 },
    {
      why: 'only the latest three count',
      past: [60, 60, 5, 6, 7],
      points: 24,
      seconds: 90,
      minutes: 6,
    },
    { why: 'seconds are a minute', past: [0.1], points: 24, seconds: 90, minutes: 1 },
    {
      why: 'a check without a time says nothing',
      past: [0, 0],
      points: 10,
      seconds: 60,
      minutes: 10,
    },
  ])('$why', ({ past, points, seconds, minutes }) => {
    expect(howLong(written(...past), points, seconds).minutes).toBe(minutes)
  })

  test('says what it was taken from', () => {
    expect(howLong(written(), 3, 90).from).toBe('points')
    expect(howLong(written(4), 3, 90).from).toBe('past-checks')
  })

  test('a second try of a day, and a gap check, are left out', () => {
    const sessions = sessionsOf([
      check('2027-03-01T09:00:00Z', 'fm', { writingMs: 600_000 }),
      check('2027-03-01T10:00:00Z', 'fm', { writingMs: 60_000 }),
      check('2027-03-02T10:00:00Z', 'f', { kind: 'gap', writingMs: 60_000 }),
    ])
    expect(howLong(sessions, 2, 90).minutes).toBe(10)
  })
})

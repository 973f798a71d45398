import { expect, test } from 'vitest'
import { writingClock } from '../../../src/lib/components/writing-clock'

test('only the time in front counts, added to what was written before', () => {
  let nowMs = 1000
  const clock = writingClock(() => nowMs, 60_000)
  nowMs += 500
  expect(clock.elapsedMs()).toBe(60_500)
  clock.inFront(false)
  nowMs += 9000
  expect(clock.elapsedMs()).toBe(60_500)
  clock.inFront(true)
  nowMs += 250
  expect(clock.elapsedMs()).toBe(60_750)
})

test('being told the same twice changes nothing', () => {
  let nowMs = 0
  const clock = writingClock(() => nowMs)
  nowMs = 100
  clock.inFront(true)
  nowMs = 200
  clock.inFront(false)
  clock.inFront(false)
  nowMs = 300
  clock.inFront(true)
  clock.inFront(true)
  nowMs = 350
  expect(clock.elapsedMs()).toBe(250)
})

test('how often it went out of sight and for how long, added to what was before', () => {
  let nowMs = 0
  const clock = writingClock(() => nowMs, 0, { aways: 2, awayMs: 1000 })
  expect(clock.away()).toEqual({ aways: 2, awayMs: 1000 })
  nowMs = 100
  clock.inFront(false)
  clock.inFront(false)
  nowMs = 400
  expect(clock.away()).toEqual({ aways: 3, awayMs: 1300 })
  clock.inFront(true)
  nowMs = 900
  expect(clock.away()).toEqual({ aways: 3, awayMs: 1300 })
})

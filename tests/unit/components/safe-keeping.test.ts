import { expect, test } from 'vitest'
import { backupIsDue, isGone } from '../../../src/lib/components/safe-keeping'
import { DEMO_PREFIX } from '../../../src/lib/recall'

const DAY = 86_400_000
const NOW = 1000 * DAY
const daysAgo = (days: number, syllabusId = 'shore') => ({ atMs: NOW - days * DAY, syllabusId })

test.each([
  ['no checks', [], undefined, false],
  ['a first check of today', [daysAgo(0)], undefined, false],
  ['30 days old, to the instant', [daysAgo(30)], undefined, false],
  ['older, and never saved', [daysAgo(31)], undefined, true],
  ['older, and saved since', [daysAgo(31)], NOW - 30 * DAY, false],
  ['an old backup, and nothing new', [daysAgo(200)], NOW - 100 * DAY, false],
  ['an old backup, and something new of today', [daysAgo(200), daysAgo(0)], NOW - 100 * DAY, false],
  ['an old backup, and much since', [daysAgo(200), daysAgo(60)], NOW - 100 * DAY, true],
  ['the demo alone', [daysAgo(200, `${DEMO_PREFIX}shore`)], undefined, false],
] as const)('%s', (_, checks, lastMs, due) => {
  expect(backupIsDue(checks, lastMs, NOW)).toBe(due)
})

test.each([
  ['a first visit', 0, 0, undefined, false],
  ['none were here before', 0, 0, { checks: 0, atMs: NOW }, false],
  ['twelve were here, and none is', 0, 0, { checks: 12, atMs: NOW }, true],
  ['they are here, but cannot be read', 0, 12, { checks: 12, atMs: NOW }, false],
  ['some are here', 3, 0, { checks: 12, atMs: NOW }, false],
] as const)('a history that is gone: %s', (_, checks, unreadable, seen, gone) => {
  expect(isGone(checks, unreadable, seen)).toBe(gone)
})

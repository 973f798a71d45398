/** What holds for every history, whatever the days, zones and marks. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addDays,
  dayAt,
  dayOf,
  explainStatus,
  nextDate,
  runOf,
  sessionsOf,
  statusOf,
  tonight,
  whatFirst,
  type Check,
} from '../../../src/lib/recall'
import { check, settings } from './histories'

const zones = [
  'UTC',
  'Europe/London',
  'America/New_York',
  'Pacific/Kiritimati',
  'Pacific/Pago_Pago',
]

const anyCheck = fc.record({
  // Three weeks around the London change to summer time of 2027, so that days often coincide.
  atMs: fc.integer({ min: Date.parse('2027-03-15T00:00Z'), max: Date.parse('2027-04-05T00:00Z') }),
  zone: fc.constantFrom(...zones),
  marks: fc.constantFrom('ff', 'ff', 'ff', 'fm', 'pc'),
  kind: fc.constantFrom('check', 'check', 'gap'),
} as const)

const anyHistory = fc
  .array(anyCheck, { maxLength: 25 })
  .map((drawn) =>
    drawn.map(({ marks, ...rest }, i) =>
      check('2027-01-01T00:00:00Z', marks, { ...rest, id: `c${i}` }),
    ),
  )

const shuffled = anyHistory.chain((checks) =>
  fc.tuple(
    fc.constant(checks),
    fc.shuffledSubarray(checks, { minLength: checks.length, maxLength: checks.length }),
  ),
)

describe('sessions', () => {
  test('no day is counted twice, and every check is in exactly one session', () => {
    fc.assert(
      fc.property(anyHistory, (checks) => {
        const sessions = sessionsOf(checks)
        const days = sessions.map(({ day }) => day)
        expect(new Set(days).size).toBe(days.length)
        const held = sessions.flatMap(({ check: first, later }) => [first, ...later])
        const whole = checks.filter(({ kind }) => kind === 'check')
        expect(held.map(({ id }) => id).sort()).toEqual(whole.map(({ id }) => id).sort())
        expect(new Set(days)).toEqual(new Set(whole.map(dayOf)))
      }),
    )
  })

  test('none comes later than a check it counts as practice', () => {
    fc.assert(
      fc.property(anyHistory, (checks) => {
        for (const { check: first, later } of sessionsOf(checks))
          for (const practice of later) expect(practice.atMs).toBeGreaterThanOrEqual(first.atMs)
      }),
    )
  })

  test('gap checks change nothing', () => {
    fc.assert(
      fc.property(anyHistory, (checks) => {
        expect(sessionsOf(checks)).toEqual(
          sessionsOf(checks.filter(({ kind }) => kind === 'check')),
        )
      }),
    )
  })

  test('another check on the day of the last never changes the status', () => {
    fc.assert(
      fc.property(anyHistory, fc.constantFrom('ff', 'fm'), (checks, marks) => {
        const last = sessionsOf(checks).at(-1)
        fc.pre(last !== undefined)
        const atMs = Math.max(last.check.atMs, ...last.later.map((practice) => practice.atMs)) + 1
        const again = check('2027-01-01T00:00:00Z', marks, { ...last.check, id: 'again', atMs })
        fc.pre(dayOf(again) === last.day)
        const marked: Check = { ...again, marks: check('2027-01-01T00:00:00Z', marks).marks }
        expect(explainStatus(sessionsOf([...checks, marked]), settings())).toEqual(
          explainStatus(sessionsOf(checks), settings()),
        )
      }),
    )
  })
})

describe('status', () => {
  test('finished needs its sessions on as many days, far enough apart, and the latest full', () => {
    fc.assert(
      fc.property(anyHistory, (checks) => {
        const sessions = sessionsOf(checks)
        const status = statusOf(sessions, settings())
        const run = runOf(sessions)
        expect(status === 'full' || status === 'finished').toBe(run.length > 0)
        if (status !== 'finished') return
        expect(new Set(run.map(({ day }) => day)).size).toBeGreaterThanOrEqual(3)
        // Six whole days lie between; the farthest two zones, UTC+14 and UTC-11, take 25 hours of them.
        const last = run.at(-1)?.check.atMs ?? 0
        expect(last - (run[0]?.check.atMs ?? 0)).toBeGreaterThanOrEqual((6 * 24 - 25) * 3_600_000)
      }),
    )
  })

  test('what happened after a session does not change what it was at then', () => {
    fc.assert(
      fc.property(anyHistory, fc.nat(25), (checks, length) => {
        const sessions = sessionsOf(checks)
        const then = sessions.slice(0, length)
        const known = then.flatMap(({ check: first, later }) => [first, ...later])
        expect(statusOf(sessionsOf(known), settings())).toBe(statusOf(then, settings()))
      }),
    )
  })
})

describe('a second look on the same day', () => {
  test('never finishes a topic: any number of rechecks after the first of each day changes nothing', () => {
    fc.assert(
      fc.property(
        anyHistory,
        fc.array(fc.constantFrom('ff', 'fm'), { maxLength: 4 }),
        (checks, again) => {
          const firsts = sessionsOf(checks).map(({ check: first }) => first)
          const rechecks = firsts.flatMap((first) =>
            again.map((marks, i) =>
              check('2027-01-01T00:00:00Z', marks, {
                id: `${first.id} again ${i}`,
                atMs: first.atMs + i + 1,
                zone: first.zone,
              }),
            ),
          )
          // A recheck just after midnight is another day's.
          const sameDay = rechecks.filter(({ id, atMs, zone }) => {
            const first = firsts.find((one) => id.startsWith(`${one.id} `))
            return first !== undefined && dayAt(atMs, zone) === dayOf(first)
          })
          const history = [...firsts, ...sameDay]
          expect(sessionsOf(history)).toHaveLength(firsts.length)
          expect(explainStatus(sessionsOf(history), settings())).toEqual(
            explainStatus(sessionsOf(firsts), settings()),
          )
        },
      ),
    )
  })
})

describe('the status of a topic', () => {
  test('depends on its history alone: not on the day, the exams, the ratings or other topics', () => {
    const drift = { syllabusId: 'shores', topicId: 'drift' }
    const somewhere = fc.record({
      today: fc.integer({ min: 0, max: 400 }).map((days) => addDays('2027-03-01', days)),
      examIn: fc.option(fc.integer({ min: -30, max: 300 })),
      rating: fc.option(fc.constantFrom('hard', 'middling', 'easy')),
      minutesADay: fc.integer({ min: 5, max: 600 }),
    } as const)
    fc.assert(
      fc.property(
        anyHistory,
        anyHistory,
        somewhere,
        (checks, others, { today, examIn, rating, minutesADay }) => {
          const asked = settings({
            minutesADay,
            exams: examIn === null ? [] : [{ syllabusId: 'shores', day: addDays(today, examIn) }],
            ratings: rating === null ? [] : [{ ...drift, rating }],
          })
          const now = { nowMs: Date.parse(`${today}T12:00Z`), zone: 'UTC' }
          const elsewhere = others.map((one) => ({
            ...one,
            id: `other ${one.id}`,
            topicId: 'rocks',
          }))
          const [plan] = whatFirst([drift], [...elsewhere, ...checks], asked, now)
          expect(plan?.status).toEqual(explainStatus(sessionsOf(checks), settings()))
        },
      ),
    )
  })
})

describe('the order in which records are stored', () => {
  const topics = [{ syllabusId: 'shores', topicId: 'drift', refs: ['1.1', '1.2'] }]
  const now = { nowMs: Date.parse('2027-04-06T12:00Z'), zone: 'Europe/London' }

  test('changes nothing, and no record is changed', () => {
    fc.assert(
      fc.property(shuffled, ([checks, otherOrder]) => {
        const before = structuredClone(checks)
        expect(sessionsOf(otherOrder)).toEqual(sessionsOf(checks))
        expect(nextDate(sessionsOf(otherOrder))).toEqual(nextDate(sessionsOf(checks)))
        expect(whatFirst(topics, otherOrder, settings(), now)).toEqual(
          whatFirst(topics, checks, settings(), now),
        )
        const question = { topics, minutes: 20, secondsPerPoint: 90, now }
        expect(tonight({ ...question, checks: otherOrder })).toEqual(
          tonight({ ...question, checks }),
        )
        expect(checks).toEqual(before)
      }),
    )
  })
})

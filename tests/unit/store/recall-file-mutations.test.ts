/** A real file, spoilt in 2,000 ways: it is opened whole or not at all, and never with an error that says nothing. */
import fc from 'fast-check'
import * as v from 'valibot'
import { beforeAll, expect, test } from 'vitest'
import * as store from '../../../src/lib/store'
import { check, empty, page } from './records'

const RUNS = 2000
let whole = ''
/** An older file of the same pupil is here, with the tutor's notes and marks. */
let before: store.Backup

beforeAll(async () => {
  await empty()
  await store.addCheck(check('a'), page('a'))
  await store.addCheck(check('b'), page('b'))
  const sender = await store.nameSender('Ada', () => 'pupil-1')
  const { file } = await store.exportRecall(sender, ['a', 'b'], true, 5000)
  file.checks.forEach(({ check: { marks } }) => expect(marks).toHaveLength(2))
  whole = JSON.stringify(file)
  await empty()
  await store.openRecallFile(JSON.stringify({ ...file, madeAtMs: 0, checks: [file.checks[0]] }), 1)
  await store.changeReview('pupil-1', 'a', (review) => ({ ...review, comment: 'Good order.' }))
  await store.saveTutorNotes({ schema: 1, pupilId: 'pupil-1', text: 'Slow down', savedAtMs: 1 })
  before = await store.exportAll(0)
})

/** Refused for what no schema can say. */
const WHOLE_BUT_WRONG = /its topic is not in the file|twice|of another check|newer file/
function fitsPublished(text: string): boolean {
  try {
    return v.is(store.recallFileSchema, JSON.parse(text))
  } catch {
    return false
  }
}

type Path = (string | number)[]
/** Every place in a value. */
const pathsOf = (value: unknown, at: Path = []): Path[] => [
  at,
  ...(typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...at, key]))
    : []),
]

/** The value at a place replaced; `undefined` takes it away. */
function replaced(value: unknown, [key, ...rest]: Path, by: unknown): unknown {
  if (key === undefined) return by
  const copy: Record<string, unknown> = Array.isArray(value)
    ? ([...(value as unknown[])] as unknown as Record<string, unknown>)
    : { ...(value as Record<string, unknown>) }
  copy[String(key)] = replaced(copy[String(key)], rest, by)
  return copy
}

const junk = fc.oneof(
  fc.constantFrom(undefined, null, -1, 1e300, '', '__proto__', '<script>alert(1)</script>', [], {}),
  fc.jsonValue({ maxDepth: 1 }),
)

/** A mutation of the text, or of one place in what it holds. */
const mutation = fc.oneof(
  fc.record({ cut: fc.double({ min: 0, max: 1, noNaN: true }) }),
  fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    char: fc.string({ unit: 'binary', minLength: 0, maxLength: 2 }),
  }),
  fc.record({ place: fc.nat(), value: junk }),
)

function mutate(
  how: { cut: number } | { at: number; char: string } | { place: number; value: unknown },
): string {
  if ('cut' in how) return whole.slice(0, Math.floor(how.cut * (whole.length - 1)))
  if ('char' in how) {
    const at = Math.floor(how.at * whole.length)
    return whole.slice(0, at) + how.char + whole.slice(at + 1)
  }
  const file: unknown = JSON.parse(whole)
  const paths = pathsOf(file)
  return JSON.stringify(replaced(file, paths[how.place % paths.length]!, how.value)) ?? ''
}

test('whole or not at all', async () => {
  let opened = 0
  let refused = 0
  await fc.assert(
    fc.asyncProperty(mutation, async (how) => {
      await empty()
      await store.importAll(before)
      const text = mutate(how)
      try {
        const { pupil } = await store.openRecallFile(text, 6000)
        opened += 1
        // Told in the quick way, and by the schema that is published.
        expect(v.is(store.recallFileSchema, JSON.parse(text))).toBe(true)
        // What was opened can be read again, in every record.
        const back = await store.getPupil(pupil.id)
        expect(back?.kept.checks).toHaveLength(pupil.checks)
        const withText = back!.kept.checks.filter((one) => one.withText).map((one) => one.check.id)
        expect((await store.getPupilPages(pupil.id, withText)).size).toBe(withText.length)
      } catch (error) {
        refused += 1
        expect(error).toMatchObject({ name: 'StoreError', kind: 'unreadable' })
        const { message } = error as Error
        expect(message).toMatch(/Nothing on this device was changed/)
        expect(fitsPublished(text)).toBe(WHOLE_BUT_WRONG.test(message))
        expect({ ...(await store.exportAll(0)) }).toEqual(before)
      }
    }),
    { numRuns: RUNS },
  )
  // Both happen, or the property says nothing.
  expect(opened).toBeGreaterThan(20)
  expect(refused).toBeGreaterThan(500)
})

import { describe, expect, test } from 'vitest'
import { migrate, type Step } from '../../../src/lib/store/migrate'

/** A made-up kind of record that is at version 3: a depth in feet became metres, then got a name of its own. */
const steps: Step[] = [
  ({ feet, ...rest }) => ({ ...rest, schema: 2, metres: Number(feet) * 0.3048 }),
  ({ metres, ...rest }) => ({ ...rest, schema: 3, depth: { metres } }),
]

describe('older records', () => {
  test.each([
    { raw: { schema: 1, id: 'pool', feet: 10 }, why: 'two versions behind' },
    { raw: { schema: 2, id: 'pool', metres: 3.048 }, why: 'one behind' },
    { raw: { schema: 3, id: 'pool', depth: { metres: 3.048 } }, why: 'today’s' },
  ])('$why', ({ raw }) => {
    const before = structuredClone(raw)
    expect(migrate(raw, steps)).toEqual({
      ok: true,
      record: { schema: 3, id: 'pool', depth: { metres: 3.048 } },
    })
    expect(raw).toEqual(before)
  })

  test.each([
    { raw: { schema: 4 }, newer: true, says: /reads up to 3/ },
    { raw: { schema: 0 }, newer: false, says: /no version/ },
    { raw: { schema: 1.5 }, newer: false, says: /no version/ },
    { raw: undefined, newer: false, says: /not a record/ },
    { raw: [1], newer: false, says: /not a record/ },
  ])('$raw cannot be brought up', ({ raw, newer, says }) => {
    expect(migrate(raw, steps)).toEqual({
      ok: false,
      newer,
      why: expect.stringMatching(says) as string,
    })
  })

  test('a step that fails on a damaged record is a reason, not a crash', () => {
    const fails: Step = () => {
      throw new Error('no depth')
    }
    expect(migrate({ schema: 1 }, [fails])).toMatchObject({ ok: false, newer: false })
  })
})

/** Rounds are kept as they go; what comes of one is kept once. */
import { beforeEach, expect, test } from 'vitest'
import type { Round } from '../../../src/lib/recall'
import * as store from '../../../src/lib/store'
import { check, empty, page, rawGet, rawSet } from './records'

beforeEach(empty)

const round = (id: string, more: Partial<Round> = {}): Round => ({
  schema: 1,
  id,
  uid: 'u',
  kind: 'tonight',
  syllabusId: 'shores',
  title: 'Tonight: Shores',
  topics: [page('x').topic],
  points: [
    {
      key: 'k',
      topicId: 'drift',
      ref: '1.1',
      why: 'Never checked.',
      tries: 1,
      spentMs: 5.5,
      last: { text: 'Waves', report: page('x').report, changed: 'full', atMs: 5 },
    },
  ],
  pile: ['k'],
  stage: 'marked',
  typing: ['one', 'two'],
  startedAtMs: 1,
  savedAtMs: 2,
  spentMs: 3.5,
  budgetMs: 60_000,
  leftOut: 3,
  ...more,
})

test('it comes back as it was kept, whatever its id', async () => {
  const one = round('drill a/b c')
  await store.saveRound(one)
  expect(await store.getRound('drill a/b c')).toEqual(one)
  expect(await store.getRound('drill a')).toBeUndefined()
})

test('the last kept comes first, and one that cannot be read is left out and stays', async () => {
  await store.saveRound(round('a'))
  await store.saveRound(round('b', { savedAtMs: 9 }))
  await rawSet('round/bad', { schema: 1 })
  expect((await store.listRounds()).map(({ id }) => id)).toEqual(['b', 'a'])
  await store.removeRound('bad')
  expect(await rawGet('round/bad')).toEqual({ schema: 1 })
  expect(await store.unreadableRecords()).toMatchObject([{ key: 'round/bad' }])
})

test('ended twice, its gap checks are kept once and a mark changed since stays', async () => {
  const over = round('a', { stage: 'over' })
  const made = [{ check: check('u-1', { kind: 'gap' }), page: page('u-1') }]
  await store.finishRound(over, made)
  await store.changeMark('u-1', { ref: '1.2', outcome: 'full', by: 'student', atMs: 9 })
  await store.finishRound(over, made)
  const { checks } = await store.listChecks()
  expect(checks).toHaveLength(1)
  expect(checks[0]!.changes).toHaveLength(1)
  expect(await store.getRound('a')).toMatchObject({ stage: 'over' })
})

test('it goes through a backup; of two copies the later stands', async () => {
  await store.saveRound(round('a'))
  const backup = JSON.parse(JSON.stringify(await store.exportAll(5))) as unknown
  await store.saveRound(round('a', { savedAtMs: 10, title: 'later' }))
  await store.importAll(backup)
  expect(await store.getRound('a')).toMatchObject({ title: 'later' })
  await empty()
  await store.importAll(backup)
  expect(await store.getRound('a')).toEqual(round('a'))
})

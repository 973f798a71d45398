import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { keepDrafts } from '../../../src/lib/components/draft-keeper'
import type { Draft } from '../../../src/lib/store'

const draft = (text: string): Draft => ({
  schema: 1,
  syllabusId: 'shores',
  topicId: 'drift',
  text,
  startedAtMs: 0,
  savedAtMs: 0,
  writingMs: 0,
  pastes: [],
})

/** A place that keeps a draft when it is told to go on, or fails. */
function slowStore() {
  const kept: string[] = []
  const waiting: { done: () => void; fail: (error: Error) => void }[] = []
  const save = ({ text }: Draft) =>
    new Promise<void>((done, fail) =>
      waiting.push({
        done: () => {
          kept.push(text)
          done()
        },
        fail,
      }),
    )
  return { kept, waiting, save }
}

const nothing = { onkept: () => undefined, onfault: () => undefined }
const atOnce =
  (kept: string[]) =>
  ({ text }: Draft) => {
    kept.push(text)
    return Promise.resolve()
  }

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

test('typing without a pause is kept all the same, at most a second behind', async () => {
  const kept: string[] = []
  const keeper = keepDrafts(atOnce(kept), nothing)
  for (let typed = 1; typed <= 30; typed++) {
    keeper.changed(draft('x'.repeat(typed)))
    await vi.advanceTimersByTimeAsync(100)
    if (typed >= 10) expect(kept.at(-1)?.length).toBeGreaterThanOrEqual(typed - 10)
  }
  expect(kept.length).toBeLessThan(30)
})

test('the last of what was typed is what is kept', async () => {
  const kept: string[] = []
  const keeper = keepDrafts(atOnce(kept), nothing)
  keeper.changed(draft('a'))
  keeper.changed(draft('ab'))
  await keeper.keepNow()
  await vi.runAllTimersAsync()
  expect(kept).toEqual(['ab'])
})

test('one write at a time: a slow one is never overtaken by the next', async () => {
  const { kept, waiting, save } = slowStore()
  const keeper = keepDrafts(save, nothing)
  keeper.changed(draft('first'))
  void keeper.keepNow()
  keeper.changed(draft('second'))
  const all = keeper.keepNow()
  await vi.runAllTimersAsync()
  expect(waiting).toHaveLength(1)
  waiting[0]!.done()
  await vi.runAllTimersAsync()
  waiting[1]!.done()
  await all
  expect(kept).toEqual(['first', 'second'])
})

test('a fault is told, and the next change is kept again', async () => {
  const told: string[] = []
  const { kept, waiting, save } = slowStore()
  const keeper = keepDrafts(save, {
    onkept: ({ text }) => told.push(`kept ${text}`),
    onfault: (error) => told.push((error as Error).message),
  })
  keeper.changed(draft('first'))
  void keeper.keepNow()
  await vi.runAllTimersAsync()
  waiting[0]!.fail(new Error('full'))
  keeper.changed(draft('second'))
  await vi.runAllTimersAsync()
  waiting[1]!.done()
  await vi.runAllTimersAsync()
  expect(told).toEqual(['full', 'kept second'])
  expect(kept).toEqual(['second'])
})

test('what could not be kept is tried again, also when nothing more is typed', async () => {
  const told: string[] = []
  let room = false
  const save = ({ text }: Draft) =>
    room ? Promise.resolve(void told.push(text)) : Promise.reject(new Error('full'))
  const keeper = keepDrafts(save, {
    onkept: () => told.push('kept'),
    onfault: (error) => told.push((error as Error).message),
  })
  keeper.changed(draft('first'))
  await keeper.keepNow()
  expect(told).toEqual(['full'])
  room = true
  await vi.runAllTimersAsync()
  expect(told).toEqual(['full', 'first', 'kept'])
})

test('during a slow write nothing piles up: only the last of what was typed is written after it', async () => {
  const { kept, waiting, save } = slowStore()
  const keeper = keepDrafts(save, nothing)
  for (const text of ['a', 'ab', 'abc', 'abcd']) {
    keeper.changed(draft(text))
    await vi.advanceTimersByTimeAsync(600)
  }
  waiting[0]!.done()
  await vi.runAllTimersAsync()
  waiting[1]!.done()
  await vi.runAllTimersAsync()
  expect(kept).toEqual(['a', 'abcd'])
  expect(waiting).toHaveLength(2)
})

test('once it is stopped nothing comes back, and what was being written is done', async () => {
  const { kept, waiting, save } = slowStore()
  const keeper = keepDrafts(save, nothing)
  keeper.changed(draft('first'))
  void keeper.keepNow()
  keeper.changed(draft('second'))
  const stopped = keeper.stop()
  await vi.runAllTimersAsync()
  waiting[0]!.done()
  await stopped
  keeper.changed(draft('third'))
  await keeper.keepNow()
  await vi.runAllTimersAsync()
  expect(kept).toEqual(['first'])
  expect(waiting).toHaveLength(1)
})

/** Two windows write the same draft: whatever the order, neither's work is lost. */
import fc from 'fast-check'
import { beforeEach, expect, test } from 'vitest'
import * as store from '../../../src/lib/store'
import { check, draft, empty, page, rawAll, rawSet } from './records'

beforeEach(empty)

const KEY = 'draft/shores/drift'
const text = (words: string, savedAtMs = 1) => draft('drift', { text: words, savedAtMs })
const inPlace = async () => (await store.getDraft('shores', 'drift'))?.text
const beside = async () =>
  (await store.standingDraft('draft', KEY)).beside.map(({ record }) => record.text)

/** A window that types on from what it knows, and does not look. */
function windowOf(name: string) {
  let known: store.Draft | undefined
  return {
    read: async () => (known = (await store.standingDraft('draft', KEY)).record),
    async save(record: store.Draft) {
      const other = await store.keepDraft('draft', record, { known, window: name })
      if (!other) known = record
      return other
    },
    end: (record: store.Draft) => store.endDraft('draft', record, { known, window: name }),
    get known() {
      return known
    },
  }
}

test('one window alone writes in place, over what it knows', async () => {
  const one = windowOf('one')
  expect(await one.save(text('Waves'))).toBeUndefined()
  expect(await one.save(text('Waves come in', 2))).toBeUndefined()
  expect(await inPlace()).toBe('Waves come in')
  expect(await beside()).toEqual([])
})

test('the second to write is kept beside the first, each time anew, and told of it', async () => {
  const [one, two] = [windowOf('one'), windowOf('two')]
  await one.save(text('Waves'))
  expect(await two.save(text('Sand'))).toMatchObject({ text: 'Waves' })
  expect(await two.save(text('Sand moves'))).toMatchObject({ text: 'Waves' })
  expect(await one.save(text('Waves come in'))).toBeUndefined()
  expect(await inPlace()).toBe('Waves come in')
  expect(await beside()).toEqual(['Sand moves'])
  expect(await store.unreadableRecords()).toMatchObject([
    { key: `aside/${KEY}/window-two`, why: expect.stringMatching(/Another window/) as string },
  ])
})

test('a window that reads first goes on from the other', async () => {
  const [one, two] = [windowOf('one'), windowOf('two')]
  await one.save(text('Waves'))
  await two.read()
  expect(await two.save(text('Waves come in'))).toBeUndefined()
  expect(await one.save(text('Waves break'))).toMatchObject({ text: 'Waves come in' })
})

test('the same work, or an empty page, is nothing to choose between', async () => {
  const [one, two] = [windowOf('one'), windowOf('two')]
  await one.save(text(''))
  expect(await two.save(text('Sand'))).toBeUndefined()
  expect(await one.save(text('Sand', 9))).toBeUndefined()
})

test('once it was chosen, what was decided against is set aside and the copy beside is gone', async () => {
  const [one, two] = [windowOf('one'), windowOf('two')]
  await one.save(text('Waves'))
  const other = await two.save(text('Sand'))
  const chosen = { known: other, window: 'two', against: [other!] }
  expect(await store.keepDraft('draft', text('Sand'), chosen)).toBeUndefined()
  expect(await inPlace()).toBe('Sand')
  expect(await beside()).toEqual([])
  expect(await store.unreadableRecords()).toMatchObject([
    { key: `aside/${KEY}/1`, value: { text: 'Waves' } },
  ])
})

test('a choice is asked again where the other window went on meanwhile', async () => {
  const [one, two] = [windowOf('one'), windowOf('two')]
  await one.save(text('Waves'))
  const other = await two.save(text('Sand'))
  await one.save(text('Waves come in'))
  expect(
    await store.keepDraft('draft', text('Sand'), { known: other, window: 'two' }),
  ).toMatchObject({ text: 'Waves come in' })
})

test('marked or thrown away in one window, the other’s text stays', async () => {
  const [one, two] = [windowOf('one'), windowOf('two')]
  await one.save(text('Waves'))
  await two.save(text('Sand'))
  await store.addCheck(check('a'), page('a'), {
    draft: text('Sand'),
    known: two.known,
    window: 'two',
  })
  expect(await inPlace()).toBe('Waves')
  expect(await beside()).toEqual([])
  await one.end(text('Waves, not kept yet'))
  expect(await inPlace()).toBeUndefined()
})

test('a draft ends with its check or not at all', async () => {
  const one = windowOf('one')
  await one.save(text('Waves'))
  await store.addCheck(check('a'), page('a'))
  const again = { draft: text('Waves'), known: one.known, window: 'one' }
  await expect(store.addCheck(check('a'), page('a'), again)).rejects.toThrow(/kept already/)
  expect(await inPlace()).toBe('Waves')
  await store.addCheck(check('b'), page('b'), again)
  expect(await inPlace()).toBeUndefined()
})

test('what a window kept is what it knows, in whatever order it said it', async () => {
  const tree = (text: string) => ({
    warnings: [],
    lines: [{ text, role: 'point' as const, ref: '1.1', key: 0, depth: undefined as never }],
    title: 'Shores',
  })
  const record = (text: string): store.SyllabusImport => ({
    name: 'a.pdf',
    tree: tree(text),
    savedAtMs: 1,
    schema: 1,
    id: 'draft',
  })
  const mine = { known: undefined, window: 'one' }
  expect(await store.keepDraft('import', record('Waves'), mine)).toBeUndefined()
  const again = { known: record('Waves'), window: 'one' }
  expect(await store.keepDraft('import', record('Waves come in'), again)).toBeUndefined()
})

test('one that cannot be read is set aside', async () => {
  await rawSet(KEY, { schema: 1, half: true })
  const one = windowOf('one')
  expect(await one.save(text('Waves'))).toBeUndefined()
  expect(await store.unreadableRecords()).toMatchObject([{ value: { half: true } }])
})

test('whatever two windows write and read, every word of both is kept', async () => {
  const step = fc.record({
    who: fc.constantFrom(0, 1),
    what: fc.constantFrom('write', 'write', 'read'),
  })
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 14 }), async (steps) => {
      await empty()
      const windows = [windowOf('one'), windowOf('two')]
      const shown = ['', '']
      for (const [i, { who, what }] of steps.entries()) {
        const mine = windows[who]!
        if (what === 'write') await mine.save(text((shown[who] += ` ${who}-${i}.`), i))
        // A page shows the other's text only where nothing of its own waits for a choice.
        else if (!(await beside()).includes(shown[who]!))
          shown[who] = (await mine.read())?.text ?? ''
      }
      const kept = [...(await rawAll()).values()].map((value) => (value as store.Draft).text)
      for (const [i, { who, what }] of steps.entries())
        if (what === 'write') expect(kept.join()).toContain(` ${who}-${i}.`)
    }),
    { numRuns: 60 },
  )
})

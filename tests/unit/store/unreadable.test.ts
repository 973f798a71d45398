import { beforeEach, describe, expect, test } from 'vitest'
import { defaultSettings } from '../../../src/lib/recall'
import * as store from '../../../src/lib/store'
import {
  change,
  check,
  draft,
  empty,
  page,
  rawGet,
  rawSet,
  someSettings,
  syllabus,
} from './records'

beforeEach(empty)

describe('a record that cannot be read', () => {
  test.each([
    { why: 'no record at all', raw: 'washed away', says: /not a record/ },
    { why: 'nothing', raw: null, says: /not a record/ },
    { why: 'no version', raw: { id: 'bad' }, says: /no version/ },
    {
      why: 'a version that makes no sense',
      raw: { ...check('bad'), schema: 'one' },
      says: /no version/,
    },
    {
      why: 'a newer version',
      raw: { ...check('bad'), schema: 2 },
      says: /newer Second Ink \(version 2/,
    },
    { why: 'a field of the wrong kind', raw: { ...check('bad'), words: 'many' }, says: /At words/ },
    { why: 'a time outside the calendar', raw: { ...check('bad'), atMs: 9e15 }, says: /At atMs/ },
    {
      why: 'an outcome that does not exist',
      raw: { ...check('bad'), marks: [{ ref: '1.1', outcome: 'good' }] },
      says: /At marks\.0\.outcome/,
    },
  ])('$why: counted, reported, left as it is', async ({ raw, says }) => {
    await store.addCheck(check('good'), page('good'))
    await rawSet('check/bad', raw)

    const { checks, unreadable } = await store.listChecks()
    expect(checks.map(({ id }) => id)).toEqual(['good'])
    expect(unreadable).toBe(1)
    expect(await store.unreadableRecords()).toEqual([
      { key: 'check/bad', value: raw, why: expect.stringMatching(says) as string },
    ])
    await expect(store.getCheck('bad')).rejects.toMatchObject({ kind: 'unreadable' })
    await expect(store.changeMark('bad', change(1))).rejects.toMatchObject({ kind: 'unreadable' })
    await expect(store.addCheck(check('bad'), page('bad'))).rejects.toThrow(store.StoreError)
    expect(await rawGet('check/bad')).toEqual(raw)
  })

  test('the reason never quotes a whole dump', async () => {
    await rawSet('page/bad', { ...page('bad'), schema: 1, report: 'tide '.repeat(5000) })
    const [record] = await store.unreadableRecords()
    expect(record?.why.length).toBeLessThan(220)
  })

  test('a broken page costs only itself', async () => {
    await store.addCheck(check('a'), page('a'))
    await rawSet('page/a', { schema: 1, id: 'a' })
    await expect(store.getPage('a')).rejects.toMatchObject({ kind: 'unreadable' })
    expect(await store.getCheck('a')).toEqual(check('a'))
    expect((await store.listChecks()).unreadable).toBe(0)
  })

  test('a broken syllabus is counted', async () => {
    await store.putSyllabus(syllabus('good'))
    await rawSet('syllabus/bad', { schema: 1 })
    expect(await store.listSyllabi()).toMatchObject({ syllabi: [{ id: 'good' }], unreadable: 1 })
  })

  test('a key that is none of ours is reported too', async () => {
    await rawSet('driftwood', 42)
    expect(await store.unreadableRecords()).toMatchObject([{ key: 'driftwood', value: 42 }])
  })

  test('with nothing broken there is nothing to report', async () => {
    await store.addCheck(check('a'), page('a'))
    await store.saveSettings(someSettings)
    expect(await store.unreadableRecords()).toEqual([])
  })
})

describe('writing where one stands', () => {
  test('a draft goes on: what stood there is set aside, once', async () => {
    const broken = { schema: 1, text: 'half a dra' }
    await rawSet('draft/shores/drift', broken)
    expect(await store.getDraft('shores', 'drift')).toBeUndefined()
    await store.saveDraft(draft('drift'))
    await store.saveDraft(draft('drift', { text: 'Waves come in at' }))
    expect((await store.getDraft('shores', 'drift'))?.text).toBe('Waves come in at')
    expect(await store.unreadableRecords()).toMatchObject([
      { key: 'aside/draft/shores/drift/1', value: broken },
    ])
  })

  test('two different ones are both set aside', async () => {
    await rawSet('settings', { schema: 1, broken: 1 })
    await store.saveSettings(someSettings)
    await rawSet('settings', { schema: 1, broken: 2 })
    await store.saveSettings(someSettings)
    expect((await store.unreadableRecords()).map(({ value }) => value)).toEqual([
      { schema: 1, broken: 1 },
      { schema: 1, broken: 2 },
    ])
  })

  test('settings that cannot be read are the defaults meanwhile', async () => {
    await rawSet('settings', { schema: 9 })
    expect(await store.getSettings()).toEqual(defaultSettings)
    expect(await rawGet('settings')).toEqual({ schema: 9 })
  })

  test('removing a draft leaves one that cannot be read', async () => {
    await rawSet('draft/shores/drift', { schema: 1, text: 'half a dra' })
    await store.removeDraft('shores', 'drift')
    expect(await rawGet('draft/shores/drift')).toEqual({ schema: 1, text: 'half a dra' })
  })
})

describe('removing one', () => {
  test('is the user’s to ask', async () => {
    await rawSet('check/bad', { schema: 1 })
    await store.removeUnreadable('check/bad')
    expect(await store.unreadableRecords()).toEqual([])
  })

  test('does nothing to a record that can be read', async () => {
    await store.addCheck(check('a'), page('a'))
    await store.removeUnreadable('check/a')
    expect(await store.getCheck('a')).toEqual(check('a'))
  })
})

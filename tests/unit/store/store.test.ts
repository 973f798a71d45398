import { beforeEach, describe, expect, test, vi } from 'vitest'
import { defaultSettings } from '../../../src/lib/recall'
import * as store from '../../../src/lib/store'
import {
  change,
  check,
  draft,
  empty,
  page,
  paper,
  rawGet,
  someSettings,
  syllabus,
  rawSet,
} from './records'

beforeEach(empty)

describe('checks', () => {
  test('a check and its page come back as they were', async () => {
    await store.addCheck(check('a'), page('a'))
    expect(await store.getCheck('a')).toEqual(check('a'))
    expect(await store.getPage('a')).toEqual(page('a'))
  })

  test('those of one topic come alone, oldest first; a broken one of another topic is not its affair', async () => {
    await store.addCheck(check('b', { atMs: 2 }), page('b'))
    await store.addCheck(check('a', { atMs: 1 }), page('a'))
    await store.addCheck(check('c', { topicId: 'tides' }), page('c'))
    const { checks, unreadable } = await store.listTopicChecks(check('a'))
    expect([checks.map(({ id }) => id), unreadable]).toEqual([['a', 'b'], 0])
    await rawSet('check/d', { ...check('d', { topicId: 'tides' }), marks: 1 })
    expect(await store.listTopicChecks(check('a'))).toMatchObject({ unreadable: 0 })
    await rawSet('check/e', { ...check('e'), marks: 1 })
    await rawSet('check/f', 'no record at all')
    expect(await store.listTopicChecks(check('a'))).toMatchObject({ unreadable: 2 })
  })

  test('what is not there is undefined', async () => {
    expect(await store.getCheck('none')).toBeUndefined()
    expect(await store.getPage('none')).toBeUndefined()
    expect(await store.listChecks()).toEqual({ checks: [], unreadable: 0 })
  })

  test('all checks come oldest first, those of one instant by id', async () => {
    for (const [id, atMs] of [
      ['b', 2],
      ['z', 1],
      ['a', 2],
    ] as const)
      await store.addCheck(check(id, { atMs }), page(id))
    const { checks } = await store.listChecks()
    expect(checks.map(({ id }) => id)).toEqual(['z', 'a', 'b'])
  })

  test('a second check with the same id is refused and the first stands', async () => {
    await store.addCheck(check('a'), page('a'))
    await expect(store.addCheck(check('a', { words: 1 }), page('a'))).rejects.toThrow(
      /kept already/,
    )
    expect(await store.getCheck('a')).toEqual(check('a'))
  })

  test('a page of another check is refused and nothing is kept', async () => {
    await expect(store.addCheck(check('a'), page('b'))).rejects.toThrow(/another check/)
    expect(await store.getCheck('a')).toBeUndefined()
  })

  test('both are kept or neither: a page that does not fit takes the check with it', async () => {
    const broken = { ...page('a'), text: 7 as unknown as string }
    await expect(store.addCheck(check('a'), broken)).rejects.toThrow(store.StoreError)
    expect(await rawGet('check/a')).toBeUndefined()
    expect(await rawGet('page/a')).toBeUndefined()
  })

  test('what could not be read again is not written', async () => {
    const when = { atMs: Number.NaN }
    await expect(store.addCheck(check('a', when), page('a'))).rejects.toThrow(/At atMs/)
    expect(await rawGet('check/a')).toBeUndefined()
  })

  test('a record behind a proxy is kept as plain data', async () => {
    const proxied = new Proxy(check('a'), {})
    expect(() => structuredClone(proxied)).toThrow()
    await store.addCheck(proxied, page('a'))
    expect(await store.getCheck('a')).toEqual(check('a'))
  })

  test('removing takes the page with it and leaves the others', async () => {
    await store.addCheck(check('a'), page('a'))
    await store.addCheck(check('b'), page('b'))
    await store.removeCheck('a')
    expect(await store.getPage('a')).toBeUndefined()
    expect((await store.listChecks()).checks.map(({ id }) => id)).toEqual(['b'])
  })
})

describe('a changed mark', () => {
  test('is added behind the others and the check comes back', async () => {
    await store.addCheck(check('a', { changes: [change(1)] }), page('a'))
    const changed = await store.changeMark('a', change(2, 'tutor'))
    expect(changed).toEqual(check('a', { changes: [change(1), change(2, 'tutor')] }))
    expect(await store.getCheck('a')).toEqual(changed)
  })

  test('fifty at once lose nothing', async () => {
    await store.addCheck(check('a'), page('a'))
    const times = Array.from({ length: 50 }, (_, i) => i)
    await Promise.all(times.map((atMs) => store.changeMark('a', change(atMs))))
    const kept = (await store.getCheck('a'))?.changes.map(({ atMs }) => atMs)
    expect(kept?.sort((a, b) => a - b)).toEqual(times)
  })

  test('of a check that is gone is an error that says so', async () => {
    await expect(store.changeMark('none', change(1))).rejects.toThrow(/no longer kept/)
    expect(await rawGet('check/none')).toBeUndefined()
  })
})

describe('drafts', () => {
  test('one for each topic, the last saved first', async () => {
    await store.saveDraft(draft('drift'))
    await store.saveDraft(draft('rocks', { savedAtMs: 9000 }))
    await store.saveDraft(draft('drift', { text: 'Waves come in at an angle', savedAtMs: 3000 }))
    expect((await store.listDrafts()).map(({ topicId }) => topicId)).toEqual(['rocks', 'drift'])
    expect((await store.getDraft('shores', 'drift'))?.text).toBe('Waves come in at an angle')
  })

  test('removing one leaves the others', async () => {
    await store.saveDraft(draft('drift'))
    await store.saveDraft(draft('rocks'))
    await store.removeDraft('shores', 'drift')
    expect(await store.getDraft('shores', 'drift')).toBeUndefined()
    expect(await store.listDrafts()).toHaveLength(1)
    await store.removeDraft('shores', 'never written')
  })

  test('a slash in an id mixes no two topics up', async () => {
    await store.saveDraft(draft('c', { syllabusId: 'a/b', text: 'first' }))
    await store.saveDraft(draft('b/c', { syllabusId: 'a', text: 'second' }))
    expect((await store.getDraft('a/b', 'c'))?.text).toBe('first')
    expect((await store.getDraft('a', 'b/c'))?.text).toBe('second')
  })

  test('an empty text and a long one come back whole', async () => {
    const long = '潮 tide – '.repeat(20_000)
    await store.saveDraft(draft('empty', { text: '' }))
    await store.saveDraft(draft('long', { text: long }))
    expect((await store.getDraft('shores', 'empty'))?.text).toBe('')
    expect((await store.getDraft('shores', 'long'))?.text).toBe(long)
  })
})

describe('syllabi, papers, settings', () => {
  test('syllabi come in the order added; one with the same id is replaced', async () => {
    await store.putSyllabus(syllabus('late', { addedAtMs: 5 }))
    await store.putSyllabus(syllabus('early', { addedAtMs: 1 }))
    await store.putSyllabus(syllabus('early', { addedAtMs: 2, source: 'title: Shores again' }))
    const { syllabi } = await store.listSyllabi()
    expect(syllabi.map(({ id, source }) => [id, source])).toEqual([
      ['early', 'title: Shores again'],
      ['late', 'title: Shores'],
    ])
    await store.changeSyllabus({ id: 'early', edited: new Map(), papers: new Map() })
    expect((await store.listSyllabi()).syllabi.map(({ id }) => id)).toEqual(['late'])
  })

  test('papers come by day', async () => {
    await store.putPaper({ ...paper('b'), day: '2027-04-01' })
    await store.putPaper(paper('a'))
    expect((await store.listPapers()).papers).toEqual([
      paper('a'),
      { ...paper('b'), day: '2027-04-01' },
    ])
    await store.removePaper('a')
    expect((await store.listPapers()).papers.map(({ id }) => id)).toEqual(['b'])
  })

  test('settings are the defaults until they are saved', async () => {
    expect(await store.getSettings()).toEqual(defaultSettings)
    await store.saveSettings(someSettings)
    expect(await store.getSettings()).toEqual(someSettings)
  })

  test('settings that two windows change at once keep both changes', async () => {
    await Promise.all([
      store.changeSettings((now) => ({ ...now, minutesADay: 45 })),
      store.changeSettings((now) => ({ ...now, sessionsNeeded: 4 })),
    ])
    expect(await store.getSettings()).toEqual({
      ...defaultSettings,
      minutesADay: 45,
      sessionsNeeded: 4,
    })
  })

  test.each([
    {
      why: 'a day that does not exist',
      bad: { exams: [{ syllabusId: 'shores', day: '2027-02-30' }] },
    },
    { why: 'no sessions', bad: { sessionsNeeded: 0 } },
    { why: 'half a day', bad: { daysApart: 2.5 } },
  ])('settings that make no sense are not saved: $why', async ({ bad }) => {
    await expect(store.saveSettings({ ...defaultSettings, ...bad })).rejects.toThrow(
      store.StoreError,
    )
    expect(await store.getSettings()).toEqual(defaultSettings)
  })
})

test('a history of 2,000 checks is read whole and without its pages', async () => {
  for (let i = 0; i < 2000; i++) await store.addCheck(check(`c${i}`, { atMs: i }), page(`c${i}`))
  const reads = vi.spyOn(IDBObjectStore.prototype, 'getAll')
  const { checks, unreadable } = await store.listChecks()
  expect(checks.map(({ atMs }) => atMs)).toEqual(Array.from({ length: 2000 }, (_, i) => i))
  expect(unreadable).toBe(0)
  const values = reads.mock.results.flatMap(({ value }) => (value as IDBRequest<object[]>).result)
  expect(values).toHaveLength(2000)
  expect(values.filter((value) => 'report' in value)).toEqual([])
  reads.mockRestore()
})

describe('a paper that is logged', () => {
  const entry = {
    schema: 1,
    id: 'new',
    day: '2027-03',
    source: '',
    rows: [],
    savedAtMs: 4,
  } as const

  test('its questions are kept and its entry is over, in one step', async () => {
    await store.saveEntry(entry)
    expect(await store.listEntries()).toEqual([entry])
    await store.changePapers({ put: [paper('a'), paper('b')], entry: 'new' })
    expect((await store.listPapers()).papers).toHaveLength(2)
    expect(await store.listEntries()).toEqual([])
  })

  test('is not logged by half: one question that cannot be kept leaves all as it was', async () => {
    await store.saveEntry(entry)
    const broken = { ...paper('b'), marksWon: Number.NaN }
    await expect(store.changePapers({ put: [paper('a'), broken], entry: 'new' })).rejects.toThrow()
    expect((await store.listPapers()).papers).toEqual([])
    expect(await store.listEntries()).toEqual([entry])
  })

  test('a question from before there were notes is read as it is', async () => {
    const { question: _q, wentWrong: _w, note: _n, ...older } = paper('a')
    await store.putPaper(older)
    expect((await store.listPapers()).papers).toEqual([older])
  })
})

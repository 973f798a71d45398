import fc from 'fast-check'
import { beforeEach, describe, expect, test } from 'vitest'
import * as store from '../../../src/lib/store'
import { uniteChanges } from '../../../src/lib/store/merge'
import {
  change,
  check,
  draft,
  empty,
  page,
  paper,
  rawGet,
  rawSet,
  someSettings,
  syllabus,
} from './records'

beforeEach(empty)

async function fill(): Promise<void> {
  await store.addCheck(check('a', { changes: [change(1)] }), page('a'))
  await store.addCheck(check('b', { kind: 'gap' }), page('b'))
  await store.saveDraft(draft('drift'))
  await store.putSyllabus(syllabus('shores'))
  await store.putPaper(paper('p'))
  await store.saveSettings(someSettings)
}

const throughAFile = async (): Promise<unknown> =>
  JSON.parse(JSON.stringify(await store.exportAll(5)))

describe('a backup', () => {
  test('restored into an empty app brings everything back', async () => {
    await fill()
    const backup = await throughAFile()
    await empty()
    const restored = await store.importAll(backup)
    expect(restored).toEqual({ added: 8, united: 0, unchanged: 0, setAside: 0 })
    expect(await throughAFile()).toEqual(backup)
    expect(await store.getPage('a')).toEqual(page('a'))
    expect(await store.getSettings()).toEqual(someSettings)
  })

  test('comes back from its text as well', async () => {
    await fill()
    const text = JSON.stringify(await store.exportAll(5), null, 2)
    await empty()
    expect(await store.importAll(text)).toMatchObject({ added: 8 })
  })

  test('restored over itself changes nothing', async () => {
    await fill()
    const backup = await throughAFile()
    expect(await store.importAll(backup)).toEqual({
      added: 0,
      united: 0,
      unchanged: 8,
      setAside: 0,
    })
    expect(await throughAFile()).toEqual(backup)
  })

  test('of an empty app is a backup too', async () => {
    expect(await store.importAll(await throughAFile())).toMatchObject({ added: 0 })
  })

  test('carries what cannot be read, and restoring keeps it once', async () => {
    await fill()
    await rawSet('check/bad', { schema: 2, from: 'later' })
    const backup = await throughAFile()
    await empty()
    expect(await store.importAll(backup)).toMatchObject({ added: 8, setAside: 1 })
    await store.importAll(backup)
    await store.importAll(await throughAFile())
    expect(await store.unreadableRecords()).toMatchObject([
      { key: 'aside/check/bad/1', value: { schema: 2, from: 'later' } },
    ])
  })
})

describe('a backup restored where work went on', () => {
  test('unites the changes of a check', async () => {
    await store.addCheck(check('a'), page('a'))
    await store.changeMark('a', change(1))
    const backup = await throughAFile()
    await store.changeMark('a', change(5))
    const here = await throughAFile()
    await empty()
    await store.importAll(backup)
    await store.changeMark('a', change(3, 'tutor'))
    expect(await store.importAll(here)).toMatchObject({ added: 0, united: 1, unchanged: 1 })
    expect((await store.getCheck('a'))?.changes).toEqual([change(1), change(3, 'tutor'), change(5)])
  })

  test('an old backup takes nothing back', async () => {
    await fill()
    const backup = await throughAFile()
    await store.changeMark('a', change(9))
    await store.addCheck(check('new'), page('new'))
    await store.saveDraft(draft('drift', { text: 'Waves come in at an angle', savedAtMs: 9000 }))
    await store.saveSettings({ ...someSettings, sessionsNeeded: 5 })
    const before = await throughAFile()
    await store.importAll(backup)
    expect(await throughAFile()).toEqual(before)
  })

  test.each([
    {
      why: 'the longer of two that go on from each other',
      text: 'Waves come in slowly',
      savedAtMs: 9,
      expected: 'Waves come in slowly',
    },
    {
      why: 'both, the older in front',
      text: 'Sand moves',
      savedAtMs: 9,
      expected: 'Sand moves\n\nWaves come in',
    },
    {
      why: 'both, this device’s in front when it is the older',
      text: 'Sand moves',
      savedAtMs: 9000,
      expected: 'Waves come in\n\nSand moves',
    },
  ])('drafts of one topic: $why', async ({ text, savedAtMs, expected }) => {
    await store.saveDraft(draft('drift', { text, savedAtMs }))
    const backup = await throughAFile()
    await store.saveDraft(draft('drift'))
    await store.importAll(backup)
    await store.importAll(backup)
    expect((await store.getDraft('shores', 'drift'))?.text).toBe(expected)
  })

  test('of a syllabus the later stands, and the one that gives way is kept aside', async () => {
    const later = syllabus('shores', { source: 'title: Shores, again', addedAtMs: 9000 })
    await store.putSyllabus(later)
    const backup = await throughAFile()
    await rawSet('syllabus/shores', syllabus('shores'))
    await store.importAll(backup)
    expect((await store.listSyllabi()).syllabi).toEqual([later])
    expect(await store.unreadableRecords()).toMatchObject([
      {
        key: 'aside/syllabus/shores/1',
        value: syllabus('shores'),
        why: expect.stringMatching(/stands in its place/) as string,
      },
    ])
  })

  test('settings stay this device’s, with the exams and ratings that only the backup has', async () => {
    await store.saveSettings(someSettings)
    const backup = await throughAFile()
    const exam = { syllabusId: 'rocks', day: '2027-05-05' }
    const easy = { syllabusId: 'shores', topicId: 'drift', rating: 'easy' } as const
    await store.saveSettings({ ...someSettings, sessionsNeeded: 2, exams: [exam], ratings: [easy] })
    await store.importAll(backup)
    expect(await store.getSettings()).toEqual({
      ...someSettings,
      sessionsNeeded: 2,
      exams: [exam, ...someSettings.exams],
      ratings: [easy],
    })
  })

  test('settings that only the backup has are taken, and the syllabi of both', async () => {
    await store.saveSettings({ ...someSettings, minutesADay: 60, syllabusIds: ['shores'] })
    const backup = await throughAFile()
    await store.saveSettings({ ...someSettings, syllabusIds: ['trade'] })
    await store.importAll(backup)
    expect(await store.getSettings()).toMatchObject({
      minutesADay: 60,
      syllabusIds: ['trade', 'shores'],
    })
  })

  test('mends a record that is broken here, and keeps the broken one', async () => {
    await fill()
    const backup = await throughAFile()
    await rawSet('check/a', { schema: 1, id: 'a' })
    expect(await store.importAll(backup)).toMatchObject({ added: 1, unchanged: 7 })
    expect(await store.getCheck('a')).toEqual(check('a', { changes: [change(1)] }))
    expect(await store.unreadableRecords()).toMatchObject([
      { key: 'aside/check/a/1', value: { schema: 1, id: 'a' } },
    ])
  })
})

describe('a file that is refused whole', () => {
  const good = () => ({
    app: 'Second Ink',
    backup: 1,
    madeAtMs: 5,
    records: { check: [check('a')], page: [], draft: [], syllabus: [], paper: [], settings: [] },
    setAside: [],
  })

  test.each([
    { why: 'not JSON', file: '{"app": "Second', says: /not complete JSON/ },
    { why: 'nothing', file: null, says: /not a Second Ink backup/ },
    { why: 'another file', file: { title: 'Shores' }, says: /not a Second Ink backup/ },
    {
      why: 'a newer backup',
      file: { ...good(), backup: 2, records: 'of another shape' },
      says: /newer Second Ink/,
    },
    {
      why: 'a part missing',
      file: { ...good(), records: { check: [] } },
      says: /damaged at "records\.page"/,
    },
    {
      why: 'a newer record inside',
      file: { ...good(), records: { ...good().records, page: [page('a'), { schema: 2 }] } },
      says: /\(page 2\) was written by a newer/,
    },
  ])('$why', async ({ file, says }) => {
    const attempt = store.importAll(file)
    await expect(attempt).rejects.toMatchObject({ name: 'StoreError', kind: 'unreadable' })
    await expect(attempt).rejects.toThrow(says)
    await expect(attempt).rejects.toThrow(/Nothing on this device was changed/)
    expect(await rawGet('check/a')).toBeUndefined()
  })

  test('but one damaged record costs only itself', async () => {
    const records = { ...good().records, check: [check('a'), { schema: 1, id: 'half' }] }
    expect(await store.importAll({ ...good(), records })).toEqual({
      added: 1,
      united: 0,
      unchanged: 0,
      setAside: 1,
    })
    expect(await store.getCheck('a')).toEqual(check('a'))
    expect(await store.unreadableRecords()).toMatchObject([{ value: { schema: 1, id: 'half' } }])
  })
})

describe('uniting changes', () => {
  const changes = fc
    .uniqueArray(fc.nat(40), { maxLength: 8 })
    .map((times) => times.map((t) => change(t)))
  const common = fc.tuple(changes, changes, changes)
  const key = ({ atMs }: { atMs: number }) => atMs

  test('keeps every change of both, this device’s in their order, and twice is once', () => {
    fc.assert(
      fc.property(common, ([both, mine, theirs]) => {
        const here = [...both, ...mine]
        const there = [...both, ...theirs]
        const united = uniteChanges(here, there)
        expect(new Set(united.map(key))).toEqual(new Set([...here, ...there].map(key)))
        const fromHere = new Set(here.map(key))
        expect(united.filter((one) => fromHere.has(key(one)))).toEqual(here)
        expect(uniteChanges(united, there)).toEqual(united)
      }),
    )
  })

  test('nothing new is nothing changed', () => {
    fc.assert(
      fc.property(changes, (here) => {
        expect(uniteChanges(here, here)).toEqual(here)
        expect(uniteChanges(here, here.slice(0, 2))).toEqual(here)
      }),
    )
  })
})

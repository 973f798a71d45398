/** What a restore would do is known before, is what happens, and is taken back whole. */
import fc from 'fast-check'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import type { Check, Settings } from '../../../src/lib/recall'
import * as store from '../../../src/lib/store'
import { BACKUP, readEnvelope } from '../../../src/lib/store/backup'
import { fnv1a } from '../../../src/lib/store/fingerprint'
import { KEY_OF, KINDS, type Kind } from '../../../src/lib/store/keys'
import type { RecordOf } from '../../../src/lib/store/records'
import { planRestore, sortRecords } from '../../../src/lib/store/restore-plan'
import {
  change,
  check,
  draft,
  empty,
  page,
  paper,
  rawAll,
  rawSet,
  someSettings,
  syllabus,
} from './records'

beforeEach(empty)

type AnyRecord = { [K in Kind]: { kind: K; record: RecordOf[K] } }[Kind]
type State = ReadonlyMap<string, unknown>

/** Records of few ids, so that two devices often have the same one. Times of device 0 and of device 1 never tie. */
const someRecord = (device: 0 | 1): fc.Arbitrary<AnyRecord> => {
  const ms = fc.nat(30).map((n) => n * 2 + device)
  const id = fc.constantFrom('a', 'b', 'c')
  const text = fc.constantFrom('Waves', 'Waves come in', 'Sand moves', 'come in')
  const changes = fc.uniqueArray(ms, { maxLength: 4 }).map((all) => all.sort((a, b) => a - b))
  const one = <K extends Kind>(kind: K, record: fc.Arbitrary<RecordOf[K]>) =>
    record.map((made) => ({ kind, record: made }) as AnyRecord)
  return fc.oneof(
    one(
      'check',
      fc
        .tuple(id, changes)
        .map(([of, all]) => check(of, { changes: all.map((atMs) => change(atMs)) })),
    ),
    one('page', id.map(page)),
    one(
      'draft',
      fc.tuple(id, text, ms).map(([of, words, savedAtMs]) => draft(of, { text: words, savedAtMs })),
    ),
    one(
      'syllabus',
      fc
        .tuple(id, ms)
        .map(([of, addedAtMs]) => syllabus(of, { addedAtMs, source: `at ${addedAtMs}` })),
    ),
    one('paper', id.map(paper)),
    one(
      'settings',
      fc
        .tuple(fc.integer({ min: 1, max: 5 }), fc.option(fc.subarray(['shores', 'rocks'])))
        .map(([sessionsNeeded, ids]): Settings => ({
          ...someSettings,
          sessionsNeeded,
          ...(ids ? { syllabusIds: ids } : {}),
        })),
    ),
    one(
      'tutor-notes',
      fc
        .tuple(id, text, ms)
        .map(([pupilId, words, savedAtMs]) => ({ schema: 1, pupilId, text: words, savedAtMs })),
    ),
    one(
      'entry',
      fc.tuple(id, text, ms).map(([of, source, savedAtMs]) => ({
        schema: 1,
        id: of,
        day: '2027-03-05',
        source,
        rows: [],
        savedAtMs,
      })),
    ),
  )
}

const keyOf = ({ kind, record }: AnyRecord): string =>
  (KEY_OF[kind] as (record: unknown) => string)(record)

const someState = (device: 0 | 1): fc.Arbitrary<Map<string, AnyRecord>> =>
  fc
    .array(someRecord(device), { maxLength: 12 })
    .map((all) => new Map(all.map((one) => [keyOf(one), one])))

/** What is kept on a device: records, and here and there one that cannot be read. */
const someKept = (device: 0 | 1): fc.Arbitrary<State> =>
  fc
    .tuple(someState(device), fc.subarray(['check/a', 'draft/shores/b', 'settings', 'check/d']))
    .map(
      ([records, broken]) =>
        new Map<string, unknown>([
          ...[...records].map(([key, { record }]): [string, unknown] => [key, record]),
          ...broken.map((key): [string, unknown] => [key, { schema: 1, broken: key }]),
        ]),
    )

function backupOf(records: Iterable<AnyRecord>, unreadable: readonly unknown[] = []) {
  const all = [...records]
  return {
    app: 'Second Ink',
    backup: BACKUP,
    madeAtMs: 7,
    records: Object.fromEntries(
      KINDS.map((kind) => [
        kind,
        all.filter((one) => one.kind === kind).map(({ record }) => record),
      ]),
    ),
    setAside: unreadable.map((value) => ({ key: 'check/lost', value })),
  }
}
type File = ReturnType<typeof backupOf>
const someBackup = (device: 0 | 1): fc.Arbitrary<File> =>
  fc
    .tuple(someState(device), fc.subarray([{ half: 1 }, 'a word']))
    .map(([records, unreadable]) => backupOf(records.values(), unreadable))

const plan = (file: File, kept: State) => planRestore(sortRecords(readEnvelope(file)), kept)
const restored = (file: File, kept: State): State => {
  const after = new Map(kept)
  for (const { key, after: value } of plan(file, kept).changes) after.set(key, value)
  return after
}
const own = (state: State) => new Map([...state].filter(([key]) => !key.startsWith('aside/')))
const sorted = (state: State) => [...state].sort(([a], [b]) => (a < b ? -1 : 1))

describe('restoring, as a plan', () => {
  test('twice is once: the second time nothing changes', () => {
    fc.assert(
      fc.property(someBackup(1), someKept(0), (file, kept) => {
        const once = restored(file, kept)
        const again = plan(file, once)
        expect(again.changes).toEqual([])
        expect(again.preview.changes).toBe(0)
        for (const { added, taken, joined } of Object.values(again.preview.kinds))
          expect(added + taken + joined).toBe(0)
      }),
    )
  })

  test('two backups come to the same in either order, settings excepted: they stay the device’s own', () => {
    fc.assert(
      fc.property(someBackup(0), someBackup(1), (one, other) => {
        const first = own(restored(other, restored(one, new Map())))
        const second = own(restored(one, restored(other, new Map())))
        const withoutSettings = (state: State) =>
          sorted(state).filter(([key]) => key !== 'settings')
        expect(withoutSettings(first)).toEqual(withoutSettings(second))
      }),
    )
  })

  test('the preview counts what the changes are', () => {
    fc.assert(
      fc.property(someBackup(1), someKept(0), (file, kept) => {
        const { preview, changes } = plan(file, kept)
        expect(preview.changes).toBe(changes.length)
        for (const kind of KINDS) {
          const fates = preview.kinds[kind]
          const records = (file.records[kind] ?? []) as readonly unknown[]
          if (!fates) expect(records).toEqual([])
          else {
            const { added, taken, joined, stays, same } = fates
            expect(added + taken + joined + stays + same).toBe(records.length)
            const changed = changes.filter(({ key }) => key.split('/')[0] === kind)
            expect(changed).toHaveLength(added + taken + joined)
          }
        }
        expect(preview.settings.length > 0).toBe(changes.some(({ key }) => key === 'settings'))
      }),
    )
  })

  test('nothing that was kept is gone: it stands where it stood, is part of what stands there, or is set aside', () => {
    fc.assert(
      fc.property(someBackup(1), someKept(0), (file, kept) => {
        const after = restored(file, kept)
        const values = new Set([...after.values()].map((value) => JSON.stringify(value)))
        for (const [key, before] of kept) {
          const now = after.get(key)
          if (values.has(JSON.stringify(before))) continue
          const kind = key.split('/')[0]
          if (kind === 'check')
            expect((now as Check).changes).toEqual(
              expect.arrayContaining([...(before as Check).changes]),
            )
          else if (kind === 'draft')
            expect((now as store.Draft).text).toContain((before as store.Draft).text)
          else if (kind === 'settings')
            expect(now).toMatchObject({ sessionsNeeded: (before as Settings).sessionsNeeded })
          else expect(kind).toBe('tutor-notes')
        }
      }),
    )
  })
})

async function keep(state: State): Promise<void> {
  await empty()
  for (const [key, value] of state) await rawSet(key, value)
}
/** All that is kept, but for what only makes reading faster. */
const everything = async () =>
  sorted(new Map([...(await rawAll())].filter(([key]) => !/^made\/(?:revision|checks)$/.test(key))))

const OFTEN = { numRuns: 40 }

describe('a restore in the database', () => {
  test('is what the preview said, and undone it is byte for byte as before', async () => {
    await fc.assert(
      fc.asyncProperty(someBackup(1), someKept(0), async (file, kept) => {
        await keep(kept)
        const before = await everything()
        const preview = await store.previewRestore(file)
        expect(await everything()).toEqual(before)

        await store.importAll(file, { nowMs: 9, seen: preview })
        const after = new Map(await everything())
        after.delete('made/restore')
        expect(sorted(after)).toEqual(sorted(restored(file, kept)))

        const undoable = await store.lastRestore()
        expect(undoable).toEqual(preview.changes > 0 ? { atMs: 9, madeAtMs: 7 } : undefined)
        if (!undoable) return
        expect(await store.undoRestore()).toEqual({ undone: preview.changes, stay: 0 })
        expect(JSON.stringify(await everything())).toBe(JSON.stringify(before))
        expect(await store.lastRestore()).toBeUndefined()
      }),
      OFTEN,
    )
  })

  test('that fails in the middle leaves everything as it was, and the last one to be undone', async () => {
    await keep(new Map([['check/a', check('a')]]))
    await store.importAll(backupOf([{ kind: 'paper', record: paper('p') }]), { nowMs: 3 })
    const before = await everything()
    const file = backupOf([
      { kind: 'check', record: check('b') },
      { kind: 'check', record: check('c') },
    ])
    for (const failing of [1, 2, 3, 4]) {
      const put = IDBObjectStore.prototype.put
      let puts = 0
      vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
        this: IDBObjectStore,
        ...args
      ) {
        puts += 1
        if (puts === failing) throw new DOMException('full', 'QuotaExceededError')
        return put.apply(this, args)
      })
      const attempt = store.importAll(file, { nowMs: 5 })
      if (failing < 4) await expect(attempt).rejects.toMatchObject({ kind: 'full' })
      else await attempt
      vi.restoreAllMocks()
      if (failing < 4) expect(await everything()).toEqual(before)
    }
    expect(await store.lastRestore()).toEqual({ atMs: 5, madeAtMs: 7 })
  })

  test('is refused where it would do something else than was shown', async () => {
    const file = backupOf([{ kind: 'check', record: check('a') }])
    const seen = await store.previewRestore(file)
    await store.addCheck(check('a'), page('a'))
    const before = await everything()
    await expect(store.importAll(file, { seen })).rejects.toMatchObject({ kind: 'changed' })
    expect(await everything()).toEqual(before)
  })

  test('is in no backup and is nothing that cannot be read, once it is noted to be undone', async () => {
    await store.importAll(backupOf([{ kind: 'check', record: check('a') }]))
    expect(await store.unreadableRecords()).toEqual([])
    expect((await store.exportAll()).setAside).toEqual([])
  })
})

describe('undoing a restore after work went on', () => {
  test('keeps what was changed since, with what stood there before set aside', async () => {
    await store.addCheck(check('a', { changes: [change(1)] }), page('a'))
    await store.saveDraft(draft('drift', { text: 'Waves', savedAtMs: 1 }))
    const file = backupOf([
      { kind: 'check', record: check('a', { changes: [change(1), change(5)] }) },
      { kind: 'check', record: check('b') },
      { kind: 'draft', record: draft('drift', { text: 'Sand', savedAtMs: 5 }) },
    ])
    await store.importAll(file)
    await store.changeMark('b', change(9))
    await store.saveDraft(draft('drift', { text: 'Waves\n\nSand and shingle', savedAtMs: 9 }))
    expect(await store.undoRestore()).toEqual({ undone: 1, stay: 2 })
    expect((await store.getCheck('a'))?.changes).toEqual([change(1)])
    expect((await store.getCheck('b'))?.changes).toEqual([change(9)])
    expect((await store.getDraft('shores', 'drift'))?.text).toBe('Waves\n\nSand and shingle')
    expect(await store.unreadableRecords()).toMatchObject([
      { key: 'aside/draft/shores/drift/1', value: { text: 'Waves' } },
    ])
  })

  test('does not bring back what was removed since', async () => {
    await store.importAll(backupOf([{ kind: 'check', record: check('b') }]))
    await store.removeCheck('b')
    expect(await store.undoRestore()).toEqual({ undone: 0, stay: 1 })
    expect(await store.getCheck('b')).toBeUndefined()
  })

  test('keeps the copy that was set aside of a syllabus changed since', async () => {
    await store.putSyllabus(syllabus('shores', { source: 'mine', addedAtMs: 1 }))
    const theirs = syllabus('shores', { source: 'theirs', addedAtMs: 5 })
    await store.importAll(backupOf([{ kind: 'syllabus', record: theirs }]))
    await store.putSyllabus({ ...theirs, source: 'theirs, edited' })
    await store.undoRestore()
    expect(await store.unreadableRecords()).toMatchObject([{ value: { source: 'mine' } }])
  })

  test('is possible once', async () => {
    await store.importAll(backupOf([{ kind: 'check', record: check('b') }]))
    await store.undoRestore()
    await expect(store.undoRestore()).rejects.toThrow(/no restore to undo/)
  })
})

// Test vectors: the FNV reference code of Landon Curt Noll, test_fnv.c (from memory).
test.each([
  ['', 0x811c9dc5],
  ['a', 0xe40c292c],
  ['foobar', 0xbf9cf968],
])('the fingerprint is FNV-1a: %j', (text, hash) => {
  expect(fnv1a(text)).toBe(hash)
})

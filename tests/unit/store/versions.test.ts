/** Backups and records of every version that was released: they are read, and nothing of them is dropped. */
import { readdirSync, readFileSync } from 'node:fs'
import { beforeEach, describe, expect, test } from 'vitest'
import * as store from '../../../src/lib/store'
import { KEY_OF, KINDS, type Kind } from '../../../src/lib/store/keys'
import { STEPS } from '../../../src/lib/store/migrate'
import { readRecord } from '../../../src/lib/store/records'
import { empty, rawGet, rawSet } from './records'

beforeEach(empty)

interface File {
  readonly records: Readonly<Record<string, readonly { readonly schema: number }[]>>
  readonly setAside: readonly unknown[]
}
const FOLDER = 'tests/fixtures/records'
const read = (name: string): File => JSON.parse(readFileSync(`${FOLDER}/${name}`, 'utf8')) as File
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.json'))
const keyOf = (kind: Kind, record: unknown) => (KEY_OF[kind] as (record: unknown) => string)(record)

test('there is a record of each version of each kind', () => {
  for (const kind of KINDS) {
    const versions = files.flatMap((name) => (read(name).records[kind] ?? []).map((r) => r.schema))
    for (let version = 1; version <= STEPS[kind].length + 1; version += 1)
      expect(versions, kind).toContain(version)
  }
})

describe.each(files)('%s', (name) => {
  const { records, setAside } = read(name)
  const all = Object.values(records).flat().length

  test('is restored: every record is there, what could not be read then is set aside', async () => {
    const restored = await store.importAll(read(name))
    expect(restored).toMatchObject({ added: all, setAside: setAside.length })
    expect(await store.unreadableRecords()).toHaveLength(setAside.length)
    for (const [kind, kept] of Object.entries(records))
      for (const record of kept)
        expect(await rawGet(keyOf(kind as Kind, record)), kind).toMatchObject(record)
  })

  test('its records, left in the database by that version, are read as they are', async () => {
    for (const [kind, kept] of Object.entries(records))
      for (const record of kept) {
        expect(readRecord(kind as Kind, record), kind).toMatchObject({ ok: true, record })
        await rawSet(keyOf(kind as Kind, record), record)
      }
    expect(await store.unreadableRecords()).toEqual([])
    expect((await store.listChecks()).checks).toHaveLength(records['check']?.length ?? 0)
  })
})

test('records of a kind that is no more are set aside, and counted', async () => {
  const old = read('backup.1-first.json')
  const page = { schema: 1, pupilId: 'p', checkId: 'a', text: 'Waves' }
  const file = { ...old, records: { ...old.records, 'pupil-page': [page] } }
  const { unreadable } = await store.previewRestore(file)
  expect(unreadable).toBe(old.setAside.length + 1)
  await store.importAll(file)
  const values = (await store.unreadableRecords()).map(({ value }) => value)
  expect(values).toContainEqual(page)
})

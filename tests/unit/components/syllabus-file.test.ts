/** What is given to the user: the same file that came in, and a table and a package of the same syllabus. */
import { readdirSync, readFileSync } from 'node:fs'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { exportedOf, fileOf, shareFile } from '../../../src/lib/components/syllabus-file'
import { putSyllabus } from '../../../src/lib/store'
import { readSyllabus } from '../../../src/lib/syllabus'
import { empty } from '../store/records'

const SOURCE =
  '# Mine.\nformat: 1\ntitle:   Rock pools\ntopics: [{title: Limpets, points: [{ref: "1", text: Limpets graze.}]}]\n'

async function bring() {
  const read = readSyllabus(SOURCE)
  if (!read.ok) throw new Error('It has mistakes.')
  const { syllabus } = read
  await putSyllabus({ schema: 1, id: syllabus.id, source: SOURCE, syllabus, addedAtMs: 1 })
}

beforeEach(empty)

describe('its own file', () => {
  test('of one that was brought is the one that was brought, byte for byte', async () => {
    await bring()
    const file = await fileOf(await exportedOf('rock-pools'), 'file', 0)
    expect(file).toMatchObject({ name: 'rock-pools.yaml', text: SOURCE })
  })

  const folder = new URL('../../../syllabi/', import.meta.url)
  test.each(readdirSync(folder).filter((name) => name.endsWith('.yaml')))(
    'of %s is the one that ships, comments and all',
    async (name) => {
      const source = readFileSync(new URL(name, folder), 'utf8')
      const read = readSyllabus(source)
      const id = read.ok ? read.syllabus.id : ''
      expect((await fileOf(await exportedOf(id), 'file', 0)).text).toBe(source)
    },
  )

  test('of none that is here is refused in words', async () => {
    await expect(exportedOf('no-such')).rejects.toThrow(/no longer here/)
  })
})

describe('other forms', () => {
  test('a table and a package of the standard have names of their own', async () => {
    await bring()
    const exported = await exportedOf('rock-pools')
    expect(await fileOf(exported, 'table', 0)).toMatchObject({ name: 'rock-pools.csv' })
    const { name, text } = await fileOf(exported, 'case', Date.UTC(2027, 0, 1))
    expect(name).toBe('rock-pools.case.json')
    expect(JSON.parse(text)).toMatchObject({
      CFDocument: { title: 'Rock pools', lastChangeDateTime: '2027-01-01T00:00:00.000Z' },
    })
  })

  test('of a syllabus with mistakes only its own file is given', async () => {
    const unread = { id: 'x', source: 'title: ""\n', syllabus: undefined }
    expect((await fileOf(unread, 'file', 0)).text).toBe(unread.source)
    await expect(fileOf(unread, 'table', 0)).rejects.toThrow(/mistakes/)
    await expect(fileOf(unread, 'case', 0)).rejects.toThrow(/mistakes/)
  })
})

describe('sharing', () => {
  const exported = { id: 'x', source: SOURCE, syllabus: undefined }
  const device = (share: () => Promise<void>) =>
    vi.stubGlobal('navigator', { canShare: () => true, share: vi.fn(share) })

  test('hands the file to another app, word for word', async () => {
    device(() => Promise.resolve())
    expect(await shareFile(exported)).toBe('shared')
    const [{ files }] = vi.mocked(navigator.share).mock.calls[0] as [{ files: File[] }]
    expect(await files[0]!.text()).toBe(SOURCE)
    vi.unstubAllGlobals()
  })

  test('that was thought better of is no fault; another failure is', async () => {
    device(() => Promise.reject(new DOMException('No.', 'AbortError')))
    expect(await shareFile(exported)).toBeUndefined()
    device(() => Promise.reject(new DOMException('No.', 'NotAllowedError')))
    await expect(shareFile(exported)).rejects.toThrow()
    vi.unstubAllGlobals()
  })
})

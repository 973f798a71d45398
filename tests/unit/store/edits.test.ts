import { beforeEach, describe, expect, test, vi } from 'vitest'
import { emptyForm, formOf, writeSyllabus } from '../../../src/lib/syllabus'
import {
  addCheck,
  changeSyllabus,
  exportAll,
  getCheck,
  getEdit,
  getPage,
  importAll,
  listEdits,
  listPapers,
  listSyllabi,
  putPaper,
  putSyllabus,
  removeEdit,
  saveEdit,
  unreadableRecords,
  type SyllabusEdit,
} from '../../../src/lib/store'
import { check, empty, page, paper, rawGet, rawSet } from './records'

beforeEach(empty)

const syllabus = {
  format: 1 as const,
  id: 'shores',
  title: 'Shores',
  topics: [page('1').topic],
}
const none = new Map<string, never>()
const kept = { schema: 1 as const, id: 'shores', source: 'x', syllabus, addedAtMs: 1 }
const edit = (savedAtMs = 5): SyllabusEdit => ({
  schema: 1,
  id: 'shores',
  source: writeSyllabus(syllabus),
  form: formOf(syllabus),
  savedAtMs,
})

describe('an edit', () => {
  test('is kept as it was typed, mistakes and all', async () => {
    const unfinished = { ...edit(), form: emptyForm() }
    await saveEdit(unfinished)
    expect(await getEdit('shores')).toEqual(unfinished)
    expect(await getEdit('other')).toBeUndefined()
    expect(await listEdits()).toEqual([unfinished])
  })

  test('is removed; one that cannot be read stays, and is set aside when the next is saved', async () => {
    await saveEdit(edit())
    await removeEdit('shores')
    expect(await getEdit('shores')).toBeUndefined()
    await rawSet('edit/shores', { schema: 1, broken: true })
    await removeEdit('shores')
    expect(await rawGet('edit/shores')).toEqual({ schema: 1, broken: true })
    await saveEdit(edit())
    expect((await unreadableRecords()).map(({ value }) => value)).toEqual([
      { schema: 1, broken: true },
    ])
  })

  test('goes with a backup; of two the later stands and the other is set aside', async () => {
    await saveEdit(edit(5))
    const backup = await exportAll(1)
    await saveEdit(edit(3))
    await importAll(backup)
    expect(await getEdit('shores')).toEqual(edit(5))
    expect((await unreadableRecords()).map(({ value }) => value)).toEqual([edit(3)])
  })

  test('a backup from before there were edits is restored', async () => {
    const { records, ...rest } = await exportAll(1)
    const { edit: _edit, ...older } = records
    await expect(importAll({ ...rest, records: older })).resolves.toMatchObject({ added: 0 })
  })
})

describe('an edited syllabus is put in use', () => {
  test('with a note in each check of what became of its points; marks and pages stay', async () => {
    await addCheck(check('1'), page('1'))
    await saveEdit(edit())
    const edited = [{ ref: '1.1', now: null }]
    await changeSyllabus({ id: 'shores', kept, edited: new Map([['1', edited]]), papers: none })
    expect((await listSyllabi()).syllabi).toEqual([kept])
    expect(await getCheck('1')).toEqual({ ...check('1'), edited })
    expect(await getPage('1')).toEqual(page('1'))
    expect(await getEdit('shores')).toBeUndefined()
  })

  test('with the same note in questions of papers', async () => {
    const question = paper('p')
    await putPaper(question)
    const edited = [{ ref: question.points[0]!.ref, now: '9.9' }]
    await changeSyllabus({ id: 'shores', kept, edited: none, papers: new Map([['p', edited]]) })
    expect((await listPapers()).papers).toEqual([{ ...question, edited }])
    await changeSyllabus({ id: 'shores', kept, edited: none, papers: new Map([['p', []]]) })
    expect((await listPapers()).papers).toEqual([question])
  })

  test('going back takes the copy away, and the notes with it', async () => {
    await putSyllabus(kept)
    await addCheck(check('1', { edited: [{ ref: '1.1', now: null }] }), page('1'))
    await changeSyllabus({ id: 'shores', edited: new Map([['1', []]]), papers: none })
    expect((await listSyllabi()).syllabi).toEqual([])
    expect(await getCheck('1')).toEqual(check('1'))
  })

  test('all of it or nothing', async () => {
    await addCheck(check('1'), page('1'))
    await saveEdit(edit())
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(() => {
      throw new DOMException('No room.', 'QuotaExceededError')
    })
    const edited = new Map([['1', [{ ref: '1.1', now: null }]]])
    await expect(changeSyllabus({ id: 'shores', kept, edited, papers: none })).rejects.toThrow()
    put.mockRestore()
    expect((await listSyllabi()).syllabi).toEqual([])
    expect(await getCheck('1')).toEqual(check('1'))
    expect(await getEdit('shores')).toEqual(edit())
  })
})

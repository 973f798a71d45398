/** The shelf: look inside, add, take off, remove, and where the checks of what is gone are found. */
import { render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import { findSyllabus } from '$lib/components/library'
import {
  addCheck,
  getCheck,
  getSettings,
  listChecks,
  listEdits,
  listSyllabi,
  putSyllabus,
  saveEdit,
} from '$lib/store'
import { formOf, readSyllabus } from '$lib/syllabus'
import SyllabiPage from '../../src/routes/syllabi/+page.svelte'
import { check, page } from '../unit/store/records'

const SHORES = 'Shoreline Science, Level 2'
const SOURCE =
  '# kept by hand\nformat: 1\ntitle: Rock pools\ntopics:\n  - title: Limpets\n    caution: Ask when the tide turns.\n    points:\n      - { ref: "1", text: Limpets graze algae. }\n'

async function open() {
  const user = userEvent.setup()
  render(SyllabiPage)
  await screen.findByRole('heading', { name: 'Yours' })
  return user
}

async function bring() {
  const read = readSyllabus(SOURCE)
  if (!read.ok) throw new Error('The example has a mistake.')
  const { syllabus } = read
  await putSyllabus({ schema: 1, id: syllabus.id, source: SOURCE, syllabus, addedAtMs: 1 })
  return syllabus
}

const yours = () => screen.getByRole('region', { name: 'Yours' })
const rowOf = (name: string) => screen.getByRole('listitem', { name })

describe('a syllabus that ships', () => {
  test('is looked at before it is added: topics, cautions, kinds; its points only when asked for', async () => {
    const user = await open()
    expect(within(yours()).queryByRole('listitem')).toBeNull()
    const row = within(rowOf(SHORES))
    await user.click(row.getByRole('button', { name: `Look inside ${SHORES}` }))
    expect(await row.findByRole('heading', { name: 'Longshore drift' })).toBeVisible()
    expect(row.getAllByText(/^\d+ points: .*with key ideas/).length).toBeGreaterThan(0)
    const points = row.getByText('of Longshore drift').closest('summary')!
    expect(row.getByText(/^Waves reach the beach at an angle/)).not.toBeVisible()
    await user.click(points)
    expect(row.getByText(/^Waves reach the beach at an angle/)).toBeVisible()
  })

  test('is added to those in use and taken off again; the cursor follows it', async () => {
    const user = await open()
    await user.click(screen.getByRole('button', { name: `Add ${SHORES}` }))
    const link = await within(yours()).findByRole('link', { name: SHORES })
    expect(link).toHaveAttribute('href', '/syllabus?syllabus=shoreline-science-level-2')
    expect((await getSettings()).syllabusIds).toEqual(['shoreline-science-level-2'])
    expect(await screen.findByText(`${SHORES} is added.`, { exact: false })).toBeVisible()
    await waitFor(() => expect(screen.getByRole('heading', { name: SHORES })).toHaveFocus())

    await user.click(screen.getByRole('button', { name: `Take off ${SHORES}` }))
    await waitFor(() => expect(within(yours()).queryByRole('link')).toBeNull())
    expect((await getSettings()).syllabusIds).toEqual([])
  })

  test('that was checked before anything was chosen counts as in use', async () => {
    await addCheck(check('1', { syllabusId: 'shoreline-science-level-2' }), page('1'))
    await open()
    expect(await within(yours()).findByRole('link', { name: SHORES })).toBeVisible()
  })
})

describe('a syllabus that was brought', () => {
  test('is removed only after a question; its checks stay and are found on this page', async () => {
    const { id } = await bring()
    await addCheck(
      check('1', { syllabusId: id, topicId: 'limpets', topicTitle: 'Limpets' }),
      page('1'),
    )
    const user = await open()
    await user.click(screen.getByRole('button', { name: 'Remove Rock pools' }))
    const question = screen.getByRole('dialog', { name: 'Remove Rock pools?' })
    expect(question).toHaveTextContent('Your check of it stays')
    await user.click(within(question).getByRole('button', { name: 'Remove it' }))

    const former = await screen.findByRole('region', { name: /no longer here/ })
    expect(within(former).getByRole('link', { name: 'Limpets' })).toHaveAttribute(
      'href',
      '/topic?syllabus=rock-pools&topic=limpets',
    )
    expect((await listSyllabi()).syllabi).toEqual([])
    expect((await listChecks()).checks).toHaveLength(1)
  })

  test('with an edit of it that was begun, after that was said', async () => {
    const syllabus = await bring()
    await saveEdit({
      schema: 1,
      id: syllabus.id,
      source: SOURCE,
      form: formOf(syllabus),
      savedAtMs: 1,
    })
    const user = await open()
    expect(screen.getByRole('link', { name: 'Go on editing Rock pools' })).toBeVisible()
    await user.click(screen.getByRole('button', { name: 'Remove Rock pools' }))
    const question = screen.getByRole('dialog')
    expect(question).toHaveTextContent('not put in use yet goes too')
    await user.click(within(question).getByRole('button', { name: 'Remove it' }))
    await waitFor(async () => expect(await listEdits()).toEqual([]))
  })

  test('of one that ships: that one is there again, and points go on by what it asks', async () => {
    const id = 'shoreline-science-level-2'
    const shipped = (await findSyllabus(id))!
    const [topic] = shipped.topics
    const changed = { ...topic!, points: [{ ref: '1.1', text: 'Other.', ideas: [] }] }
    const syllabus = { ...shipped, topics: [changed, ...shipped.topics.slice(1)] }
    await putSyllabus({ schema: 1, id, source: 'x', syllabus, addedAtMs: 1 })
    const marks = [{ ref: '1.1', outcome: 'full' as const }]
    await addCheck(check('1', { syllabusId: id, topicId: topic!.id, marks, changes: [] }), {
      ...page('1'),
      topic: changed,
    })
    const user = await open()
    await user.click(screen.getByRole('button', { name: `Remove ${SHORES}` }))
    await user.click(screen.getByRole('button', { name: 'Remove it' }))
    await waitFor(async () => expect((await listSyllabi()).syllabi).toEqual([]))
    expect((await getCheck('1'))?.edited).toEqual([{ ref: '1.1', now: null }])
  })

  test('kept, where the answer is no', async () => {
    await bring()
    const user = await open()
    await user.click(screen.getByRole('button', { name: 'Remove Rock pools' }))
    await user.click(screen.getByRole('button', { name: 'Keep it' }))
    expect((await listSyllabi()).syllabi).toHaveLength(1)
    expect(screen.queryByRole('dialog')).toBeNull()
  })

  test('leads to its editor', async () => {
    await bring()
    await open()
    expect(screen.getByRole('link', { name: 'Edit Rock pools' })).toHaveAttribute(
      'href',
      '/edit?syllabus=rock-pools',
    )
  })
})

describe('taking one away', () => {
  test('as a file, a table or a package; on paper all of its points', async () => {
    const given: string[] = []
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
      this: HTMLAnchorElement,
    ) {
      given.push(this.download)
    })
    vi.stubGlobal(
      'URL',
      Object.assign(URL, { createObjectURL: () => 'blob:x', revokeObjectURL: () => undefined }),
    )
    const print = vi.fn()
    vi.stubGlobal('print', print)
    await bring()
    const user = await open()
    const row = within(rowOf('Rock pools'))
    const forms = [
      { name: 'Its own file', file: 'rock-pools.yaml' },
      { name: 'A table', file: 'rock-pools.csv' },
      { name: 'Open standard', file: 'rock-pools.case.json' },
    ]
    for (const { name, file } of forms) {
      await user.click(row.getByText(name))
      expect(await screen.findByText(`${file} was given to the browser to save.`)).toBeVisible()
      expect(given.at(-1)).toBe(file)
    }
    await user.click(row.getByText('Print'))
    await waitFor(() => expect(print).toHaveBeenCalledOnce())
    expect(screen.getByText('Limpets graze algae.')).toBeInTheDocument()
    dispatchEvent(new Event('afterprint'))
    await waitFor(() => expect(screen.queryByText('Limpets graze algae.')).toBeNull())
  })
})

test('where nothing can be kept the shipped syllabi are there, and the fault is told', async () => {
  vi.stubGlobal('indexedDB', undefined)
  await open()
  expect(await screen.findByRole('alert')).toHaveTextContent('are here all the same')
  expect(rowOf(SHORES)).toBeVisible()
})

test('a choice that cannot be kept is told, and nothing moves', async () => {
  const user = await open()
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('No room.', 'QuotaExceededError')
  })
  await user.click(screen.getByRole('button', { name: `Add ${SHORES}` }))
  expect(await screen.findByRole('alert')).toBeVisible()
  expect(within(yours()).queryByRole('listitem')).toBeNull()
})

/** The editor: what is typed is read, tried, taken back and kept; nothing is in use until that is asked for. */
import { render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import { findTopic } from '$lib/components/library'
import {
  addCheck,
  getCheck,
  getEdit,
  getPage,
  listPapers,
  listSyllabi,
  putPaper,
  putSyllabus,
} from '$lib/store'
import { readSyllabus } from '$lib/syllabus'
import { mark } from '$lib/marking'
import EditPage from '../../src/routes/edit/+page.svelte'
import { check, paper as paperRecord } from '../unit/store/records'

const SOURCE = `# Mine.
format: 1
title: Rock pools
topics:
  - title: Limpets
    points:
      - ref: "1.1" # asked often
        text: Limpets clamp down at low tide.
        ideas: [clamp (down) / cling, low tide]
      - ref: "1.2"
        text: Limpets graze algae.
`

async function bring(source = SOURCE) {
  const read = readSyllabus(source)
  if (!read.ok) throw new Error(JSON.stringify(read.mistakes))
  const { syllabus } = read
  await putSyllabus({ schema: 1, id: syllabus.id, source, syllabus, addedAtMs: 1 })
  return syllabus
}

async function open(query = '?syllabus=rock-pools') {
  history.replaceState({}, '', `/edit${query}`)
  const { unmount } = render(EditPage)
  await waitFor(() => expect(screen.queryByText('Opening the syllabus…')).toBeNull())
  return { user: userEvent.setup(), unmount }
}

const line = (ref: string) => screen.getByRole('button', { name: new RegExp(`^${ref}`) })
const use = () => screen.getByRole('button', { name: 'Use these changes' })

test('a point opens to its fields, each idea with its plain reading', async () => {
  await bring()
  const { user } = await open()
  await user.click(line('1.1'))
  expect(screen.getByLabelText('idea 1')).toHaveValue('clamp (down) / cling')
  expect(screen.getByText('one of: clamp, clamp down or cling')).toBeVisible()
  expect(use()).toBeDisabled()
})

test('drafted ideas are marked as drafted and taken with one tap', async () => {
  await bring()
  const { user } = await open()
  await user.click(line('1.2'))
  await user.click(await screen.findByRole('button', { name: 'Take them as mine' }))
  expect(await screen.findByLabelText('idea 1')).toBeVisible()
  expect(screen.queryByText(/^Drafted from the text/)).toBeNull()
})

test('a sentence is marked against the point as it is typed, and again when the point changes', async () => {
  await bring()
  const { user } = await open()
  await user.click(line('1.1'))
  await user.type(screen.getByLabelText('Try a sentence'), 'Limpets cling at low tide')
  expect(await screen.findByText('You said all of it.')).toBeVisible()
  await user.click(screen.getByRole('button', { name: 'Add an idea' }))
  await user.type(screen.getByLabelText('idea 3'), 'dry out')
  expect(await screen.findByText('Part said.')).toBeVisible()
})

test('a mistake stands at its field in the file’s own words, and nothing can be used', async () => {
  await bring()
  const { user } = await open()
  await user.click(line('1.1'))
  const ref = screen.getByLabelText('Number')
  await user.clear(ref)
  await user.type(ref, '1.2')
  expect(await screen.findByText('The ref 1.2 is taken: each point needs its own.')).toBeVisible()
  expect(ref).toBeInvalid()
  await user.click(use())
  expect(screen.queryByRole('dialog')).toBeNull()
  await waitFor(() => expect(screen.getByText(/1 mistake to put right/)).toHaveFocus())
})

test('keys take steps back and do them again', async () => {
  await bring()
  const { user } = await open()
  const title = screen.getByLabelText('Title of the syllabus')
  await user.type(title, ' of the bay')
  await user.keyboard('{Control>}z{/Control}')
  expect(title).toHaveValue('Rock pools')
  expect(screen.getByText('Taken back: the title.')).toBeInTheDocument()
  await user.keyboard('{Control>}{Shift>}z{/Shift}{/Control}')
  expect(title).toHaveValue('Rock pools of the bay')
})

test('a dropped point comes back with undo', async () => {
  await bring()
  const { user } = await open()
  await user.click(line('1.1'))
  await user.click(screen.getByRole('button', { name: 'Drop 1.1' }))
  expect(screen.queryByRole('button', { name: /^1\.1/ })).toBeNull()
  await waitFor(() => expect(line('1.2')).toHaveFocus())
  await user.click(screen.getByRole('button', { name: 'Undo' }))
  expect(line('1.1')).toBeVisible()
})

test('what is typed is kept and goes on after the page was closed; the syllabus in use stays', async () => {
  const syllabus = await bring()
  const { user, unmount } = await open()
  await user.type(screen.getByLabelText('Title of the syllabus'), '!')
  await waitFor(async () => expect((await getEdit('rock-pools'))?.form.title).toBe('Rock pools!'))
  expect((await listSyllabi()).syllabi[0]!.syllabus).toEqual(syllabus)
  unmount()
  await open()
  expect(screen.getByLabelText('Title of the syllabus')).toHaveValue('Rock pools!')
  expect(screen.getByText(/^You go on where you left off/)).toBeVisible()
})

test('what cannot be kept is told, and stays on the page', async () => {
  await bring()
  const { user } = await open()
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('No room.', 'QuotaExceededError')
  })
  await user.type(screen.getByLabelText('Title of the syllabus'), '!')
  expect(await screen.findByRole('alert')).toHaveTextContent('on this page only')
  expect(screen.getByLabelText('Title of the syllabus')).toHaveValue('Rock pools!')
})

describe('changes are put in use', () => {
  /** A check of both points, as it was marked before the edit. */
  async function checked() {
    const syllabus = await bring()
    const topic = syllabus.topics[0]!
    const text = 'Limpets cling on at low tide.'
    const report = mark(topic, text)
    const made = check('1', {
      syllabusId: syllabus.id,
      topicId: topic.id,
      marks: report.points.map(({ ref, outcome }) => ({ ref, outcome })),
      changes: [],
    })
    const page = { schema: 1 as const, id: '1', text, topic, report }
    await addCheck(made, page)
    return { made, page }
  }

  async function change(user: ReturnType<typeof userEvent.setup>, ref: string, text: string) {
    await user.click(line(ref))
    const field = screen.getByLabelText(/^Text, word for word/)
    await user.clear(field)
    await user.type(field, text)
    await waitFor(() => expect(use()).toBeEnabled())
    await user.click(use())
    return screen.findByRole('dialog')
  }

  test('another meaning: the page says which points begin anew; old checks stay as they were', async () => {
    const { made, page } = await checked()
    const { user } = await open()
    const question = await change(user, '1.2', 'Limpets eat seaweed.')
    expect(question).toHaveTextContent(
      'Your check of it stays, with the points as they were marked',
    )
    expect(question).toHaveTextContent(
      'This point begins anew, because what is asked has changed: 1.2',
    )
    await user.click(within(question).getByRole('button', { name: 'Use it' }))
    expect(await screen.findByText(/is in use as it stands here/)).toBeVisible()

    const [kept] = (await listSyllabi()).syllabi
    expect(kept!.source).toContain('# asked often')
    expect(kept!.syllabus.topics[0]!.points[1]!.text).toBe('Limpets eat seaweed.')
    expect(await getEdit('rock-pools')).toBeUndefined()
    expect(await getPage('1')).toEqual(page)
    expect(await getCheck('1')).toEqual({ ...made, edited: [{ ref: '1.2', now: null }] })
  })

  test('no more than a slip of the pen: no point begins anew', async () => {
    const { made } = await checked()
    const { user } = await open()
    const question = await change(user, '1.1', 'Limpets clampp down at low tide')
    expect(question).toHaveTextContent('No point begins anew')
    await user.click(within(question).getByRole('button', { name: 'Use it' }))
    await screen.findByText(/is in use as it stands here/)
    expect(await getCheck('1')).toEqual(made)
  })

  test('a mark lost on a paper goes with the point as long as it means the same', async () => {
    await checked()
    const paper = {
      ...paperRecord('p'),
      syllabusId: 'rock-pools',
      topicId: 'limpets',
      points: [
        { ref: '1.1', lost: true },
        { ref: '1.2', lost: true },
      ],
    }
    await putPaper(paper)
    const { user } = await open()
    const question = await change(user, '1.2', 'Limpets eat seaweed.')
    await user.click(within(question).getByRole('button', { name: 'Use it' }))
    await screen.findByText(/is in use as it stands here/)
    expect((await listPapers()).papers).toEqual([{ ...paper, edited: [{ ref: '1.2', now: null }] }])
  })

  test('what cannot be put in use is told; nothing is changed, and the edit goes on', async () => {
    const { made } = await checked()
    const { user } = await open()
    const question = await change(user, '1.2', 'Limpets eat seaweed.')
    // Nothing of it is left to be kept: only what is put in use can fail now.
    await screen.findByText('Kept here, not in use yet.')
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('No room.', 'QuotaExceededError')
    })
    await user.click(within(question).getByRole('button', { name: 'Use it' }))
    expect(await screen.findByRole('alert')).toHaveTextContent('Nothing was changed.')
    put.mockRestore()
    expect((await listSyllabi()).syllabi[0]!.source).toBe(SOURCE)
    expect(await getCheck('1')).toEqual(made)
    await user.type(screen.getByLabelText('Title of the syllabus'), '!')
    await waitFor(async () => expect((await getEdit('rock-pools'))?.form.title).toBe('Rock pools!'))
  })

  test('not yet: nothing is changed', async () => {
    const { made } = await checked()
    const { user } = await open()
    const question = await change(user, '1.2', 'Limpets eat seaweed.')
    await user.click(within(question).getByRole('button', { name: 'Not yet' }))
    expect((await listSyllabi()).syllabi[0]!.source).toBe(SOURCE)
    expect(await getCheck('1')).toEqual(made)
  })
})

test('a shipped syllabus that is changed becomes a copy of one’s own, and there is a way back', async () => {
  const id = 'shoreline-science-level-2'
  const { user } = await open(`?syllabus=${id}`)
  await user.type(screen.getByLabelText('Title of the topic'), ' today')
  await waitFor(() => expect(use()).toBeEnabled())
  await user.click(use())
  await user.click(
    within(await screen.findByRole('dialog')).getByRole('button', { name: 'Use it' }),
  )
  const back = await screen.findByRole('button', { name: 'Go back to that one' })
  expect((await listSyllabi()).syllabi).toMatchObject([{ id }])
  // The topic keeps its id, so that its checks stay with it.
  expect((await findTopic(id, 'waves-and-tides'))?.topic.title).toBe('Waves and tides today')

  await user.click(back)
  await user.click(
    within(await screen.findByRole('dialog')).getByRole('button', { name: 'Go back' }),
  )
  await waitFor(async () => expect((await listSyllabi()).syllabi).toEqual([]))
})

test('a syllabus is begun from nothing and is in use once it can be read', async () => {
  const { user } = await open('')
  expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('A new syllabus')
  await user.type(screen.getByLabelText('Title of the syllabus'), 'Dunes')
  await user.type(screen.getByLabelText('Title of the topic'), 'Marram grass')
  await user.click(line('1.1'))
  await user.type(screen.getByLabelText(/^Text, word for word/), 'Marram grass holds sand.')
  await user.click(use())
  await user.click(
    within(await screen.findByRole('dialog')).getByRole('button', { name: 'Use it' }),
  )
  await waitFor(async () => expect((await listSyllabi()).syllabi).toMatchObject([{ id: 'dunes' }]))
})

test('an address of no syllabus leads back', async () => {
  await open('?syllabus=no-such')
  expect(screen.getByRole('heading', { name: 'There is no such syllabus here' })).toBeVisible()
  expect(screen.getByRole('link', { name: 'All syllabi' })).toHaveAttribute('href', '/syllabi')
})

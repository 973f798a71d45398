/** The blank page: what it gives away, what it keeps and what comes of it. */
import { render, screen, waitFor } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { goto } from '$app/navigation'
import { lastMarked } from '$lib/components/last-marked'
import { findTopic } from '$lib/components/library'
import { getDraft, getPage, listChecks, saveDraft } from '$lib/store'
import CheckPage from '../../src/routes/check/+page.svelte'

const SYLLABUS = 'shoreline-science-level-2'
const TOPIC = 'longshore-drift'
const said = 'Waves come in at an angle because of the prevailing wind'

beforeEach(() => {
  vi.mocked(goto).mockClear()
  lastMarked.current = undefined
  history.replaceState({}, '', `/check?syllabus=${SYLLABUS}&topic=${TOPIC}`)
})

async function openPage() {
  const user = userEvent.setup()
  const rendered = render(CheckPage)
  const page = await screen.findByRole('textbox', { name: 'Your page' })
  // It can be written on before; what was written earlier is there when it can be marked.
  await waitFor(() => expect(markButton()).toBeEnabled())
  return { user, page, ...rendered }
}

const markButton = () => screen.getByRole('button', { name: 'Stop and mark' })
const draft = () => getDraft(SYLLABUS, TOPIC)
const wentTo = () => vi.mocked(goto).mock.calls.map(([address]) => String(address))

describe('the blank page', () => {
  test('has the title, the number of points and nothing of the points', async () => {
    await openPage()
    const topic = (await findTopic(SYLLABUS, TOPIC))!.topic
    expect(topic.points.length).toBeGreaterThan(5)
    expect(screen.getByRole('heading', { name: topic.title })).toBeVisible()
    const all = document.documentElement.outerHTML
    expect(all).toContain(`${topic.points.length} points`)
    const given = topic.points.flatMap(({ ref, text, ideas, reject = [] }) => [
      ...[text, ...ideas.map(({ written }) => written), ...reject].filter((words) =>
        words.includes(' '),
      ),
      `>${ref}<`,
    ])
    expect(given.filter((words) => all.toLowerCase().includes(words.toLowerCase()))).toEqual([])
  })

  test('has the cursor in it and no help with spelling', async () => {
    const { page } = await openPage()
    expect(page).toHaveFocus()
    expect(page).toHaveAttribute('spellcheck', 'false')
    expect(page).toHaveAttribute('autocomplete', 'off')
    expect(page).toHaveAttribute('autocorrect', 'off')
    expect(page).toHaveAttribute('autocapitalize', 'off')
  })

  test('of a practical topic does not show its caution, which may hint at the points', async () => {
    history.replaceState({}, '', `/check?syllabus=${SYLLABUS}&topic=${await cautionedTopic()}`)
    await openPage()
    expect(screen.queryByText(/risk assessment/i)).toBeNull()
  })

  test('says so where there is no such topic', async () => {
    history.replaceState({}, '', '/check?syllabus=none&topic=none')
    render(CheckPage)
    expect(await screen.findByRole('heading', { name: /no such topic/i })).toBeVisible()
  })
})

async function cautionedTopic(): Promise<string> {
  const { syllabus } = (await findTopic(SYLLABUS, TOPIC))!
  return syllabus.topics.find(({ caution }) => caution !== undefined)!.id
}

describe('the draft', () => {
  test('is kept while it is typed', async () => {
    const { user, page } = await openPage()
    await user.type(page, said)
    await waitFor(async () => expect((await draft())?.text).toBe(said))
  })

  test('is kept at once when the tab is put away', async () => {
    const { user, page } = await openPage()
    await user.type(page, 'swash')
    window.dispatchEvent(new Event('pagehide'))
    await waitFor(async () => expect((await draft())?.text).toBe('swash'))
  })

  test('is there again when the page is opened again, with its time and pastes', async () => {
    await saveDraft({
      schema: 1,
      syllabusId: SYLLABUS,
      topicId: TOPIC,
      text: said,
      startedAtMs: 1,
      savedAtMs: 2,
      writingMs: 600_000,
      pastes: [{ atMs: 2, length: 7 }],
    })
    const { user, page } = await openPage()
    expect(page).toHaveValue(said)
    await user.click(markButton())
    await waitFor(() => expect(goto).toHaveBeenCalled())
    const [check] = (await listChecks()).checks
    expect(check?.pastes).toEqual([{ atMs: 2, length: 7 }])
    expect(check?.writingMs).toBeGreaterThanOrEqual(600_000)
  })

  test('is thrown away only when that was confirmed', async () => {
    const { user, page } = await openPage()
    await user.type(page, said)
    await user.click(screen.getByRole('button', { name: 'Throw the page away' }))
    expect(page).toHaveValue(said)
    await user.click(screen.getByRole('button', { name: 'Throw it away' }))
    await waitFor(() => expect(goto).toHaveBeenCalled())
    expect(await draft()).toBeUndefined()
  })
})

describe('marking', () => {
  test('keeps the check and its page, drops the draft and shows the marked page', async () => {
    const { user, page } = await openPage()
    await user.type(page, said)
    await user.click(markButton())
    await waitFor(() => expect(goto).toHaveBeenCalled())

    const { checks } = await listChecks()
    expect(checks).toHaveLength(1)
    const check = checks[0]!
    expect(wentTo()).toEqual([`/marked?check=${check.id}`])
    expect(check).toMatchObject({ kind: 'check', syllabusId: SYLLABUS, topicId: TOPIC, words: 11 })
    const topic = (await findTopic(SYLLABUS, TOPIC))!.topic
    expect(check.marks.map(({ ref }) => ref)).toEqual(topic.points.map(({ ref }) => ref))
    expect(await getPage(check.id)).toMatchObject({ text: said, topic })
    expect(await draft()).toBeUndefined()
  })

  test('happens once, however often it is asked for', async () => {
    const { user, page } = await openPage()
    await user.type(page, said)
    await user.keyboard('{Control>}{Enter}{Enter}{/Control}')
    await waitFor(() => expect(goto).toHaveBeenCalled())
    expect((await listChecks()).checks).toHaveLength(1)
  })

  test('of an empty page is asked for twice, and every point is missed', async () => {
    const { user } = await openPage()
    await user.click(markButton())
    expect(goto).not.toHaveBeenCalled()
    await user.click(screen.getByRole('button', { name: 'Mark the empty page' }))
    await waitFor(() => expect(goto).toHaveBeenCalled())
    const [check] = (await listChecks()).checks
    expect(new Set(check?.marks.map(({ outcome }) => outcome))).toEqual(new Set(['missed']))
  })

  test('notes what was pasted', async () => {
    const { user, page } = await openPage()
    await user.click(page)
    await user.paste(said)
    expect(screen.getByText('Pasted text is noted with the check.')).toBeVisible()
    await user.click(markButton())
    await waitFor(() => expect(goto).toHaveBeenCalled())
    const [check] = (await listChecks()).checks
    expect(check?.pastes.map(({ length }) => length)).toEqual([said.length])
  })
})

describe('where nothing can be kept', () => {
  test.each([
    { what: 'storage is refused', break_: () => vi.stubGlobal('indexedDB', undefined) },
    {
      what: 'the device is full',
      break_: () =>
        vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
          throw new DOMException('No room.', 'QuotaExceededError')
        }),
    },
  ])('because $what, it says so, and the page is marked from memory', async ({ break_ }) => {
    const { user, page } = await openPage()
    break_()
    await user.type(page, said)
    expect(await screen.findByRole('alert')).toBeVisible()
    expect(screen.getByRole('button', { name: 'Save my text as a file' })).toBeVisible()
    expect(page).toHaveValue(said)

    await user.click(markButton())
    await waitFor(() => expect(goto).toHaveBeenCalled())
    expect(lastMarked.current?.page.text).toBe(said)
    expect(wentTo()).toEqual([`/marked?check=${lastMarked.current?.check.id}`])
  })
})

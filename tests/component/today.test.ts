/** The front page: one thing to do first and why, then every topic. */
import { render, screen, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import ThemeSwitch from '$lib/components/ThemeSwitch.svelte'
import type { Check } from '$lib/recall'
import { addCheck, putSyllabus, saveDraft, type Page } from '$lib/store'
import TodayPage from '../../src/routes/+page.svelte'

const DRIFT = { syllabusId: 'shoreline-science-level-2', topicId: 'longshore-drift' }
const DAY_MS = 86_400_000

/** A check of three points, one of them full, made some days ago. */
async function checked(daysAgo: number, place = DRIFT) {
  const id = `${place.topicId}-${daysAgo}`
  const topic = { id: place.topicId, title: 'Longshore drift', points: [] }
  const check: Check = {
    schema: 1,
    id,
    kind: 'check',
    ...place,
    topicTitle: topic.title,
    atMs: Date.now() - daysAgo * DAY_MS,
    zone: 'UTC',
    marks: [
      { ref: '2.1', outcome: 'full' },
      { ref: '2.2', outcome: 'missed' },
      { ref: '2.3', outcome: 'partial' },
    ],
    changes: [],
    marker: '1',
    writingMs: 0,
    words: 3,
    pastes: [],
  }
  const report = { marker: '1', topic: topic.id, points: [], statements: [], beyond: [] }
  const page: Page = { schema: 1, id, text: 'waves', topic, report }
  await addCheck(check, page)
  return check
}

const draft = (text: string) => ({
  schema: 1 as const,
  ...DRIFT,
  text,
  startedAtMs: Date.now(),
  savedAtMs: Date.now(),
  writingMs: 0,
  pastes: [],
})

const rowOf = (title: string) =>
  screen
    .getAllByRole('listitem')
    .find((row) => within(row).queryByRole('heading', { level: 3, name: title }))!

async function open() {
  render(TodayPage)
  await screen.findByRole('heading', { level: 2, name: /Shoreline Science/ })
}

describe('a first visit', () => {
  test('says what to do, and lists every topic with a way to check it', async () => {
    await open()
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('What do you remember?')
    const row = within(rowOf('Longshore drift'))
    expect(row.getByText('Not checked yet')).toBeVisible()
    expect(row.getByText(/12 points/)).toBeVisible()
    expect(row.getByRole('link', { name: 'Check Longshore drift' })).toHaveAttribute(
      'href',
      '/check?syllabus=shoreline-science-level-2&topic=longshore-drift',
    )
  })

  test('has the caution of a practical topic by the topic', async () => {
    await open()
    expect(within(rowOf('Longshore drift')).getByText(/never work alone/)).toBeInTheDocument()
    expect(within(rowOf('Waves and tides')).queryByText(/Caution/)).toBeNull()
  })
})

describe('with checks', () => {
  test('the topic that is due comes first, with the reason', async () => {
    await checked(3)
    await open()
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Longshore drift')
    expect(screen.getByText(/The last check had 1 of 3 points full/)).toBeVisible()
    expect(screen.getByRole('link', { name: 'Write what you remember' })).toHaveAttribute(
      'href',
      expect.stringContaining('topic=longshore-drift'),
    )
    expect(within(rowOf('Longshore drift')).getByText('Gaps')).toBeVisible()
  })

  test('the gaps of today’s check are offered once more', async () => {
    const { id } = await checked(0)
    await open()
    const again = within(screen.getByRole('region', { name: 'The gaps once more today' }))
    expect(again.getByText('2 points not full')).toBeVisible()
    expect(again.getByRole('link', { name: /Read them/ })).toHaveAttribute(
      'href',
      `/marked?check=${id}`,
    )
  })

  test('an example that ships never comes before a syllabus that was brought', async () => {
    const topic = { id: 'bread', title: 'Bread', points: [{ ref: '1', text: 'Salt.', ideas: [] }] }
    const syllabus = { format: 1 as const, id: 'baking', title: 'Baking', topics: [topic] }
    await putSyllabus({ schema: 1, id: 'baking', source: '', syllabus, addedAtMs: 1 })
    await checked(0, { syllabusId: 'baking', topicId: 'bread' })
    await open()
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Bread')
  })
})

describe('what is unfinished or wrong', () => {
  test('a page that was begun is offered to go on with', async () => {
    await saveDraft(draft('waves come in'))
    await open()
    const begun = within(screen.getByRole('region', { name: 'A page you have begun' }))
    expect(begun.getByText(/3 words, kept .* today/)).toBeVisible()
    expect(begun.getByRole('link', { name: 'Go on writing' })).toHaveAttribute(
      'href',
      expect.stringContaining('topic=longshore-drift'),
    )
  })

  test('an empty draft is not worth a line', async () => {
    await saveDraft(draft(' \n'))
    await open()
    expect(screen.queryByText('Go on writing')).toBeNull()
  })

  test('storage that is refused is told, and the topics are there all the same', async () => {
    vi.stubGlobal('indexedDB', undefined)
    await open()
    expect(screen.getByRole('alert')).toHaveTextContent(/does not let Second Ink keep anything/)
    expect(rowOf('Longshore drift')).toBeVisible()
  })
})

test('the paper can be day, night or as the device has it', async () => {
  const user = userEvent.setup()
  render(ThemeSwitch)
  const choice = screen.getByRole('combobox', { name: 'Paper' })
  await user.selectOptions(choice, 'night')
  expect(document.documentElement).toHaveAttribute('data-theme', 'night')
  await user.selectOptions(choice, 'as the device')
  expect(document.documentElement).not.toHaveAttribute('data-theme')
})

/** The front page: one thing to do first and why, then every topic. */
import { render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import ThemeSwitch from '$lib/components/ThemeSwitch.svelte'
import type { Check } from '$lib/recall'
import { defaultSettings } from '$lib/recall'
import { addCheck, getSettings, putSyllabus, saveDraft, saveSettings, type Page } from '$lib/store'
import TodayPage from '../../src/routes/+page.svelte'

const DRIFT = { syllabusId: 'shoreline-science-level-2', topicId: 'longshore-drift' }
const DAY_MS = 86_400_000

const MARKS: Check['marks'] = [
  { ref: '2.1', outcome: 'full' },
  { ref: '2.2', outcome: 'missed' },
  { ref: '2.3', outcome: 'partial' },
]

/** A check, made some days ago; of three points, one of them full, unless told otherwise. */
async function checked(daysAgo: number, place = DRIFT, marks = MARKS) {
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
    marks,
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

async function open() {
  render(TodayPage)
  await screen.findByRole('heading', { level: 1, name: /^(?!Today$)/ })
}

const heading = () => screen.getByRole('heading', { level: 1 })

/** A syllabus of the student's own, with so many topics of one point. */
async function brought(count: number) {
  const topics = Array.from({ length: count }, (_, i) => ({
    id: `t${i + 1}`,
    title: `Bread ${i + 1}`,
    points: [{ ref: String(i + 1), text: 'Salt.', ideas: [] }],
  }))
  const syllabus = { format: 1 as const, id: 'baking', title: 'Baking', topics }
  await putSyllabus({ schema: 1, id: 'baking', source: '', syllabus, addedAtMs: 1 })
}

/** Full checks of a topic, so many days ago each. */
async function full(topicId: string, ...daysAgo: number[]) {
  for (const days of daysAgo)
    await checked(days, { syllabusId: 'baking', topicId }, [{ ref: '1', outcome: 'full' }])
}

const inDays = (days: number) => new Date(Date.now() + days * DAY_MS).toISOString().slice(0, 10)

describe('a first visit', () => {
  test('says what to do, with a topic to try it on', async () => {
    await open()
    expect(heading()).toHaveTextContent('What do you remember?')
    const shores = within(screen.getByRole('region', { name: /Shoreline Science/ }))
    expect(shores.getAllByText(/^12 points, about 18 minutes/)[0]).toBeVisible()
    expect(shores.getByRole('link', { name: 'Check Waves and tides' })).toHaveAttribute(
      'href',
      '/check?syllabus=shoreline-science-level-2&topic=waves-and-tides',
    )
    expect(screen.getByRole('link', { name: /your own syllabus/ })).toHaveAttribute(
      'href',
      '/bring',
    )
    expect(screen.getByRole('link', { name: /Look inside/ })).toHaveAttribute('href', '/syllabi')
  })

  test('the other topics are one tap away, with the caution of a practical one', async () => {
    await open()
    const other = screen
      .getByRole('heading', { name: 'Longshore drift', hidden: true })
      .closest('.row')!
    expect(other).not.toBeVisible()
    await userEvent.setup().click(screen.getByText('7 other topics of Shoreline Science, Level 2'))
    expect(other).toBeVisible()
    expect(within(other as HTMLElement).getByText(/never work alone/)).toBeInTheDocument()
  })
})

describe('with checks', () => {
  test('the topic that is due comes first, with the reason and the time it takes', async () => {
    await checked(3)
    await open()
    expect(heading()).toHaveTextContent('Longshore drift')
    expect(screen.getByText(/The last check had 1 of 3 points full/)).toBeVisible()
    expect(screen.getByText(/The last check had.*About 18 minutes for 12 points/s)).toBeVisible()
    expect(
      screen.getByRole('link', { name: 'Write what you remember of Longshore drift' }),
    ).toHaveAttribute('href', expect.stringContaining('topic=longshore-drift'))
  })

  test('the gaps of today’s check are offered once more', async () => {
    const { id } = await checked(0)
    await open()
    const again = within(screen.getByRole('region', { name: 'The gaps once more today' }))
    expect(again.getByText('2 points not full')).toBeVisible()
    expect(again.getByRole('link', { name: /^Read/ })).toHaveAttribute(
      'href',
      `/marked?check=${id}`,
    )
    expect(again.getByRole('link', { name: /^Write them/ })).toHaveAttribute(
      'href',
      '/drill?syllabus=shoreline-science-level-2&topic=longshore-drift',
    )
  })

  test('an example that nobody took is not among the topics of somebody with a syllabus', async () => {
    await brought(1)
    await open()
    expect(heading()).toHaveTextContent('Bread 1')
    expect(screen.queryByText('Longshore drift')).toBeNull()
  })

  test('sixty topics: the list is cut, and all of it is one tap away', async () => {
    await brought(60)
    await open()
    const fresh = within(screen.getByRole('region', { name: /^Not checked yet/ }))
    expect(fresh.getAllByRole('listitem')).toHaveLength(8)
    await userEvent.setup().click(fresh.getByRole('button', { name: /^Show all 59/ }))
    expect(fresh.getAllByRole('listitem')).toHaveLength(59)
    expect(fresh.getByRole('link', { name: 'Check Bread 60' })).toBeVisible()
  })

  test('nothing is due: says so, and when the next is', async () => {
    await brought(1)
    await full('t1', 0)
    await open()
    expect(heading()).toHaveTextContent('Nothing is due today')
    expect(screen.getByText(/The next is Bread 1, tomorrow/)).toBeVisible()
  })

  test('every topic finished: says so, and when to look again', async () => {
    await brought(2)
    await full('t1', 12, 6, 1)
    await full('t2', 12, 6, 2)
    await open()
    expect(heading()).toHaveTextContent('Every topic is finished')
    expect(screen.getByText(/the next look is at Bread 2/)).toBeVisible()
  })

  test('a syllabus without topics is not finished', async () => {
    await brought(0)
    await open()
    expect(heading()).toHaveTextContent('There is nothing to check yet')
  })
})

describe('exams', () => {
  test('the days to each are counted, the nearest first', async () => {
    await brought(3)
    await saveSettings({
      ...defaultSettings,
      exams: [
        { syllabusId: 'baking', day: inDays(30), title: 'Paper 2', topicIds: ['t3'] },
        { syllabusId: 'baking', day: inDays(12), title: 'Paper 1' },
      ],
    })
    await open()
    const exams = within(screen.getByRole('region', { name: 'Exams' })).getAllByRole('listitem')
    expect(exams.map(({ textContent }) => textContent.replace(/\s+/g, ' ').trim())).toEqual([
      expect.stringMatching(/^Paper 1 in 12 days .*, all topics$/),
      expect.stringMatching(/^Paper 2 in 30 days .*, 1 topic$/),
    ])
  })

  test('an exam that is over is told, with a way to set the next', async () => {
    await brought(1)
    await saveSettings({
      ...defaultSettings,
      exams: [{ syllabusId: 'baking', day: inDays(-4), title: 'Paper 1' }],
    })
    await open()
    expect(screen.getByText(/Paper 1 was 4 days ago/)).toBeVisible()
    expect(screen.getByRole('link', { name: /Set the next date/ })).toHaveAttribute(
      'href',
      '/settings#exams',
    )
  })

  test('the night before leads to the points most at risk', async () => {
    await brought(1)
    await saveSettings({
      ...defaultSettings,
      exams: [{ syllabusId: 'baking', day: inDays(1), title: 'Paper 1' }],
    })
    await open()
    expect(screen.getByRole('link', { name: 'Tonight' })).toHaveAttribute('href', '/tonight')
  })
})

describe('the student’s own rating', () => {
  test('is kept, is told, and moves the topic up', async () => {
    const user = userEvent.setup()
    await brought(3)
    await open()
    await user.selectOptions(screen.getByRole('combobox', { name: /Bread 3 is/ }), 'hard')
    await waitFor(() => expect(heading()).toHaveTextContent('Bread 3'))
    expect(screen.getByText(/You find it hard/)).toBeVisible()
    expect(screen.getByText(/Bread 3 is hard for you. Kept/)).toBeInTheDocument()
    await waitFor(() => expect(screen.getByRole('combobox', { name: /Bread 3 is/ })).toHaveFocus())
    expect((await getSettings()).ratings).toEqual([
      { syllabusId: 'baking', topicId: 't3', rating: 'hard' },
    ])
    await user.selectOptions(screen.getByRole('combobox', { name: /Bread 3 is/ }), 'not rated')
    await waitFor(() => expect(heading()).toHaveTextContent('Bread 1'))
    expect((await getSettings()).ratings).toEqual([])
  })

  test('that cannot be kept is told and not shown', async () => {
    const user = userEvent.setup()
    await brought(2)
    await open()
    vi.stubGlobal('indexedDB', undefined)
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError')
    })
    const choice = screen.getByRole('combobox', { name: /Bread 2 is/ })
    await user.selectOptions(choice, 'hard')
    expect(await screen.findByRole('alert')).toHaveTextContent(/Your rating was not kept/)
    await waitFor(() => expect(choice).toHaveValue(''))
  })
})

describe('what is unfinished or wrong', () => {
  test('a page that was begun is offered to go on with', async () => {
    await saveDraft(draft('waves come in'))
    await open()
    const begun = within(screen.getByRole('region', { name: 'A page you have begun' }))
    expect(begun.getByText(/3 words, kept .* today/)).toBeVisible()
    expect(begun.getByRole('link', { name: /^Go on writing/ })).toHaveAttribute(
      'href',
      expect.stringContaining('topic=longshore-drift'),
    )
  })

  test('an empty draft is not worth a line', async () => {
    await saveDraft(draft(' \n'))
    await open()
    expect(screen.queryByText(/^Go on writing/)).toBeNull()
  })

  test('storage that is refused is told, and the topics are there all the same', async () => {
    vi.stubGlobal('indexedDB', undefined)
    await open()
    expect(screen.getByRole('alert')).toHaveTextContent(/does not let Second Ink keep anything/)
    expect(screen.getByRole('link', { name: 'Check Waves and tides' })).toBeVisible()
  })
})

test('the paper can be day, night or as the device has it', async () => {
  const user = userEvent.setup()
  render(ThemeSwitch)
  const choice = screen.getByRole('combobox', { name: 'Day or night' })
  await user.selectOptions(choice, 'night')
  expect(document.documentElement).toHaveAttribute('data-theme', 'night')
  await user.selectOptions(choice, 'as the device')
  expect(document.documentElement).not.toHaveAttribute('data-theme')
})

/** The topic page: where it stands and why, its checks, and that the points stay hidden until they are asked for. */
import { render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { findTopic } from '$lib/components/library'
import type { Check } from '$lib/recall'
import { addCheck, getSettings } from '$lib/store'
import TopicRoute from '../../src/routes/topic/+page.svelte'
import { check, page } from './marked-example'

const SYLLABUS = 'shoreline-science-level-2'
const TOPIC = 'longshore-drift'
const DAY_MS = 86_400_000

// jsdom has no sizes: the chart keeps the width that it starts with.
beforeEach(() => {
  vi.stubGlobal(
    'ResizeObserver',
    class {
      observe() {}
      unobserve() {}
      disconnect() {}
    },
  )
})

/** Checks of the shipped topic, `days` ago each, with the marker's mark of every point. */
async function checked(...history: { days: number; outcome: 'full' | 'missed' }[]) {
  const { topic } = (await findTopic(SYLLABUS, TOPIC))!
  for (const [i, { days, outcome }] of history.entries()) {
    const id = `check-${i}`
    const made: Check = {
      ...check,
      id,
      syllabusId: SYLLABUS,
      topicId: TOPIC,
      topicTitle: topic.title,
      atMs: Date.now() - days * DAY_MS,
      marks: topic.points.map(({ ref }) => ({ ref, outcome })),
    }
    await addCheck(made, { ...page, id, topic })
  }
  return topic
}

async function open(topicId = TOPIC) {
  history.replaceState({}, '', `/topic?syllabus=${SYLLABUS}&topic=${topicId}`)
  render(TopicRoute)
  await screen.findByRole('heading', { level: 1 })
  return userEvent.setup()
}

describe('a topic not checked yet', () => {
  test('says so and starts a check', async () => {
    await open()
    expect(screen.getByText(/^Not checked yet\./)).toBeVisible()
    expect(screen.getByRole('link', { name: 'Write what you know' })).toHaveAttribute(
      'href',
      `/check?syllabus=${SYLLABUS}&topic=${TOPIC}`,
    )
    expect(screen.queryByRole('table')).toBeNull()
  })
  test('shows its caution and none of its points', async () => {
    await open()
    const { topic } = (await findTopic(SYLLABUS, TOPIC))!
    expect(screen.getByText(topic.caution!)).toBeVisible()
    for (const { text } of topic.points) expect(document.body).not.toHaveTextContent(text)
  })
})

describe('a topic with a history', () => {
  test('says where it stands, when it comes next, and on one tap which rule gave it', async () => {
    await checked({ days: 1, outcome: 'missed' })
    const user = await open()
    expect(screen.getByText('Gaps. The next check is today.')).toBeVisible()
    const rule = screen.getByText(/^The latest check, yesterday, had 0 of 12 points full\./)
    expect(rule).not.toBeVisible()
    await user.click(screen.getByText('Which rule says so'))
    expect(rule).toBeVisible()
  })

  test('lists its checks, latest first, each with its marked page', async () => {
    await checked({ days: 9, outcome: 'missed' }, { days: 2, outcome: 'full' })
    await open()
    const list = screen.getByRole('heading', { name: 'Checks' }).parentElement!
    const links = within(list).getAllByRole('link')
    expect(links.map((link) => link.getAttribute('href'))).toEqual([
      '/marked?check=check-1',
      '/marked?check=check-0',
    ])
    expect(within(list).getAllByRole('listitem')[0]).toHaveTextContent('12 of 12 points full')
  })

  test('draws recall over time with its words, from the second day on', async () => {
    await checked({ days: 9, outcome: 'missed' }, { days: 2, outcome: 'full' })
    await open()
    expect(
      screen.getByRole('img', { name: /^Recall over time, oldest first: 0 of 12/ }),
    ).toBeVisible()
  })

  test('has the marks of points by day as words in a table, newest first', async () => {
    await checked({ days: 9, outcome: 'missed' }, { days: 2, outcome: 'full' })
    await open()
    const table = screen.getByRole('table')
    expect(within(table).getAllByRole('columnheader')).toHaveLength(3)
    const row = within(table).getByRole('rowheader', { name: '2.1' }).closest('tr')!
    expect(
      within(row)
        .getAllByRole('cell')
        .map(({ textContent }) => textContent.trim()),
    ).toEqual(['full', 'missed'])
    const [, newest] = within(table).getAllByRole('columnheader')
    expect(within(newest!).getByRole('link')).toHaveAttribute('href', '/marked?check=check-1')
    const sum = within(table).getByRole('rowheader', { name: 'Full' }).closest('tr')!
    expect(sum).toHaveTextContent(/12 of 12 points.*0 of 12 points/)
  })

  test('says the run towards finished in plain words', async () => {
    await checked({ days: 5, outcome: 'full' }, { days: 2, outcome: 'full' })
    await open()
    expect(
      screen.getByText(/^Full on .* and .*; once more on or after .* and it is finished\.$/),
    ).toBeVisible()
  })

  test('names the points that keep being missed, without their text until it is asked for', async () => {
    const topic = await checked({ days: 5, outcome: 'missed' }, { days: 2, outcome: 'missed' })
    const user = await open()
    const list = screen.getByRole('region', { name: 'Points that keep being missed' })
    const items = within(list).getAllByRole('listitem')
    expect(items).toHaveLength(topic.points.length)
    expect(items[0]).toHaveTextContent(
      /^2\.1\s+Not full in 2 of the last 2 sessions; the last time: missed\. Never full yet\.$/,
    )
    await user.click(screen.getByRole('button', { name: 'Show the points' }))
    expect(await within(list).findByText(topic.points[0]!.text)).toBeVisible()
  })

  test('leads to the gaps, the sheet for the wall and the exam questions', async () => {
    await checked({ days: 2, outcome: 'missed' })
    await open()
    const place = `syllabus=${SYLLABUS}&topic=${TOPIC}`
    for (const [name, href] of [
      ['Write only the gaps', '/drill?check=check-0'],
      ['A sheet for the wall', `/sheet?${place}`],
      ['Marks on exam questions', `/papers?${place}`],
      ['Shoreline Science, Level 2', `/syllabus?syllabus=${SYLLABUS}`],
    ] as const)
      expect(screen.getByRole('link', { name })).toHaveAttribute('href', href)
  })

  test('a full check leaves no gaps to write', async () => {
    await checked({ days: 2, outcome: 'full' })
    await open()
    expect(screen.queryByRole('link', { name: 'Write only the gaps' })).toBeNull()
  })

  test('a long history: the list of checks is cut, all of it one tap away', async () => {
    await checked(
      ...Array.from({ length: 20 }, (_, i) => ({ days: 40 - i, outcome: 'missed' as const })),
    )
    const user = await open()
    const list = screen.getByRole('heading', { name: 'Checks' }).parentElement!
    expect(within(list).getAllByRole('listitem')).toHaveLength(12)
    await user.click(within(list).getByRole('button', { name: 'Show all 20 checks' }))
    expect(within(list).getAllByRole('listitem')).toHaveLength(20)
  })

  test('is rated by the student', async () => {
    const user = await open()
    await user.selectOptions(screen.getByRole('combobox'), 'hard')
    await waitFor(async () =>
      expect((await getSettings()).ratings).toEqual([
        { syllabusId: SYLLABUS, topicId: TOPIC, rating: 'hard' },
      ]),
    )
    await waitFor(() => expect(screen.getByRole('status')).toHaveTextContent('Kept: hard for you.'))
  })

  test('shows the points only when asked, and hides them again', async () => {
    const topic = await checked({ days: 2, outcome: 'missed' })
    const user = await open()
    const { text } = topic.points[0]!
    expect(document.body).not.toHaveTextContent(text)
    await user.click(screen.getByRole('button', { name: 'Show the points' }))
    expect((await screen.findAllByText(text)).length).toBeGreaterThan(0)
    await user.click(screen.getByRole('button', { name: 'Hide the points' }))
    expect(document.body).not.toHaveTextContent(text)
  })

  test('of a syllabus that was removed is still there', async () => {
    await addCheck(check, page)
    history.replaceState({}, '', '/topic?syllabus=shores&topic=drift')
    render(TopicRoute)
    expect(await screen.findByRole('heading', { level: 1, name: check.topicTitle })).toBeVisible()
    await userEvent.setup().click(screen.getByRole('button', { name: 'Show the points' }))
    expect((await screen.findAllByText(page.topic.points[0]!.text)).length).toBeGreaterThan(0)
  })
})

test('an unknown topic leads back', async () => {
  await open('no-such-topic')
  expect(screen.getByRole('heading', { name: 'There is no such topic here' })).toBeVisible()
  expect(screen.getByRole('link', { name: 'Back to Today' })).toHaveAttribute('href', '/')
})

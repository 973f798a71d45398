/** A syllabus's page: the map, the share finished, filter and sort. */
import { render, screen, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import { defaultSettings, type Check } from '$lib/recall'
import { addCheck, saveSettings } from '$lib/store'
import SyllabusRoute from '../../src/routes/syllabus/+page.svelte'
import { check, page } from './marked-example'

const SHORES = 'shoreline-science-level-2'
const DAY_MS = 86_400_000

async function checked(topicId: string, outcome: 'full' | 'missed', ...daysAgo: number[]) {
  for (const days of daysAgo) {
    const id = `${topicId}-${days}`
    const made: Check = {
      ...check,
      id,
      syllabusId: SHORES,
      topicId,
      topicTitle: topicId,
      atMs: Date.now() - days * DAY_MS,
      marks: [{ ref: '1', outcome }],
    }
    await addCheck(made, { ...page, id })
  }
}

async function open(id = SHORES) {
  history.replaceState({}, '', `/syllabus?syllabus=${id}`)
  render(SyllabusRoute)
  await screen.findByRole('heading', { level: 1 })
  return userEvent.setup()
}

const map = () => screen.getByRole('region', { name: 'The whole at a glance' })
const rows = () =>
  within(screen.getByRole('region', { name: 'Topics' }))
    .queryAllByRole('heading', { level: 3 })
    .map(({ textContent }) => textContent)

describe('with checks', () => {
  test('shows what share is finished, and each topic with its status in words', async () => {
    await checked('waves-and-tides', 'full', 12, 6, 1)
    await checked('longshore-drift', 'missed', 2)
    await open()
    expect(screen.getByText('1 of 8 topics is finished: 12 %.')).toBeVisible()
    const counts = within(screen.getByRole('list', { name: 'Topics by status' }))
    expect(counts.getAllByRole('listitem').map(({ textContent }) => textContent.trim())).toEqual([
      '1 topic: finished',
      '1 topic: gaps',
      '6 topics: not checked yet',
    ])
    expect(
      within(map()).getByRole('link', { name: '2. Longshore drift: gaps, 0 of 1 point full' }),
    ).toHaveAttribute('href', `/topic?syllabus=${SHORES}&topic=longshore-drift`)
  })

  test('is filtered by status and title, and sorted', async () => {
    await checked('longshore-drift', 'missed', 2)
    const user = await open()
    expect(rows()).toHaveLength(8)
    await user.selectOptions(screen.getByRole('combobox', { name: 'Order' }), 'what to do first')
    expect(rows()[0]).toBe('Longshore drift')
    await user.selectOptions(screen.getByRole('combobox', { name: 'Show' }), 'gaps (1)')
    expect(rows()).toEqual(['Longshore drift'])
    expect(screen.getByRole('status')).toHaveTextContent('1 of 8 topics')
    await user.type(screen.getByRole('searchbox', { name: 'Title' }), 'lagoon')
    expect(rows()).toEqual([])
    await user.click(screen.getByRole('button', { name: 'Show all' }))
    expect(rows()).toHaveLength(8)
  })
})

test('has its exams, and leads to its topics and points', async () => {
  const day = new Date(Date.now() + 12 * DAY_MS).toISOString().slice(0, 10)
  await saveSettings({ ...defaultSettings, exams: [{ syllabusId: SHORES, day, title: 'Paper 1' }] })
  await open()
  expect(
    within(screen.getByRole('region', { name: 'Exams' })).getByText('in 12 days'),
  ).toBeVisible()
  expect(screen.getByRole('link', { name: /Change its topics/ })).toHaveAttribute(
    'href',
    `/edit?syllabus=${SHORES}`,
  )
})

test('one that nobody took says that it is not on Today', async () => {
  await open()
  expect(screen.getByText(/Its topics are not on Today/)).toBeVisible()
  expect(screen.getByText('None of its 8 topics is finished yet.')).toBeVisible()
})

test('an unknown one leads to those that are there', async () => {
  await open('no-such')
  expect(screen.getByRole('heading', { name: 'There is no such syllabus here' })).toBeVisible()
})

test('where nothing is kept the topics are there all the same', async () => {
  vi.stubGlobal('indexedDB', undefined)
  await open()
  expect(screen.getByRole('alert')).toHaveTextContent(/does not let Second Ink keep/)
  expect(rows()).toHaveLength(8)
})

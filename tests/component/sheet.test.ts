/** The wall sheet: which points stand on it, in which ink, and what it says where there are none. */
import { render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { beforeEach, expect, test, vi } from 'vitest'
import { addCheck, putPaper } from '$lib/store'
import SheetRoute from '../../src/routes/sheet/+page.svelte'
import { check, page } from './marked-example'

const SYLLABUS = 'shoreline-science-level-2'

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

async function open(query: string) {
  history.replaceState({}, '', `/sheet${query}`)
  render(SheetRoute)
  await screen.findByRole('heading', { level: 1, name: /./ })
  await waitFor(() => expect(screen.queryByText('Opening the points…')).toBeNull())
  return userEvent.setup()
}
const paper = () => screen.getAllByRole('group', { name: /^(?:Page|Leaf) / })

test('a check has on it what was not full, with the topic’s caution', async () => {
  await addCheck(check, page)
  await open('?check=one')
  const [first] = paper()
  expect(first).toHaveTextContent('Check the tide table.')
  for (const { text } of page.topic.points.slice(1)) expect(first).toHaveTextContent(text)
  expect(first).not.toHaveTextContent(page.topic.points[0]!.text)
  expect(
    within(first!).getAllByText(/missed|part said|says the opposite/, { selector: '.ref' }),
  ).toHaveLength(4)
})

test('a point that was full is in first ink where it is chosen all the same', async () => {
  await addCheck(check, page)
  const user = await open('?check=one')
  await user.click(screen.getByRole('button', { name: 'Every point' }))
  const [full, missed] = [0, 3].map((i) =>
    within(paper()[0]!).getByText(page.topic.points[i]!.text).closest('.point'),
  )
  expect(full).not.toHaveClass('missed')
  expect(missed).toHaveClass('missed')
})

test('cards have the cue on one side and the point on the other', async () => {
  await addCheck(check, page)
  await open('?check=one&as=cards&columns=2')
  const [front, back] = paper()
  expect(front).toHaveAccessibleName('Leaf 1 of 1, cues')
  for (const { text } of page.topic.points.slice(1)) {
    expect(front).not.toHaveTextContent(text)
    expect(back).toHaveTextContent(text)
  }
})

test('a topic has on it what lost a mark on a paper', async () => {
  await putPaper({
    schema: 1,
    id: 'q',
    syllabusId: SYLLABUS,
    topicId: 'longshore-drift',
    day: '2027-03-01',
    source: 'Quay mock',
    marksWon: 1,
    marksOutOf: 2,
    points: [{ ref: '2.7', lost: true }],
  })
  await open(`?syllabus=${SYLLABUS}&topic=longshore-drift`)
  expect(screen.getByText('Points: 1 of 12')).toBeVisible()
  expect(paper()[0]).toHaveTextContent('2.7 missed')
})

test('a list says how many of its points are gone', async () => {
  await open(`?syllabus=${SYLLABUS}&points=longshore-drift:2.1,longshore-drift:9.9,nowhere:1`)
  expect(screen.getByText(/2 points of this list are no longer on the syllabus/)).toBeVisible()
  expect(screen.getByText('Points: 1 of 1')).toBeVisible()
})

test.each(['?check=nobody', '?syllabus=nowhere&topic=none', `?syllabus=${SYLLABUS}&points=a:b`])(
  'an address that names nothing leads to the choice of a topic: %s',
  async (query) => {
    await open(query)
    expect(screen.getByRole('heading', { name: 'There is nothing here to print' })).toBeVisible()
    expect(screen.getByRole('link', { name: 'Choose a topic' })).toHaveAttribute('href', '/sheet')
  },
)

test('without an address every topic can be chosen', async () => {
  await open('')
  expect(screen.getByRole('link', { name: 'Longshore drift' })).toHaveAttribute(
    'href',
    `/sheet?syllabus=${SYLLABUS}&topic=longshore-drift`,
  )
})

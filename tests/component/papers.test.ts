/** The log of exam questions as the page has it: what is typed is kept, told at its field, logged, and on tonight's list. */
import { render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { beforeEach, expect, test } from 'vitest'
import { findTopic } from '$lib/components/library'
import { tonight } from '$lib/recall'
import { listChecks, listEntries, listPapers, putPaper, saveEntry } from '$lib/store'
import PapersRoute from '../../src/routes/papers/+page.svelte'

const SYLLABUS = 'shoreline-science-level-2'
const TOPIC = 'longshore-drift'

beforeEach(() => history.replaceState({}, '', '/papers'))

async function open() {
  render(PapersRoute)
  await screen.findByRole('button', { name: /Log a question or a paper|Log it/ })
  return userEvent.setup()
}

async function fillIn(user: ReturnType<typeof userEvent.setup>) {
  await user.click(screen.getByRole('button', { name: 'Log a question or a paper' }))
  await user.type(await screen.findByLabelText('Paper'), 'Harbour mock')
  await user.selectOptions(screen.getByLabelText('Topic'), 'Longshore drift')
  await user.type(screen.getByLabelText('Marks won'), '1')
  await user.type(screen.getByLabelText('Out of'), '3')
}

test('an empty log says what it is for', async () => {
  await open()
  expect(screen.getByText(/Mark a past paper with its mark scheme/)).toBeVisible()
  expect(screen.queryByRole('button', { name: /CSV/ })).not.toBeInTheDocument()
})

test('a lost point goes from the form to tonight’s list', async () => {
  const user = await open()
  await fillIn(user)
  await user.click(screen.getByRole('button', { name: 'Points it touched' }))
  const { topic } = (await findTopic(SYLLABUS, TOPIC))!
  const point = topic.points[6]!
  const group = await screen.findByRole('group', { name: `${point.ref} ${point.text}` })
  await user.click(within(group).getByLabelText('lost a mark'))
  await user.click(screen.getByRole('button', { name: 'Log it' }))
  await screen.findByText(/^Logged: Harbour mock/)

  const [{ papers }, { checks }] = await Promise.all([listPapers(), listChecks()])
  const list = tonight({
    topics: [{ syllabusId: SYLLABUS, topicId: TOPIC, refs: topic.points.map(({ ref }) => ref) }],
    checks,
    papers,
    minutes: 60,
    secondsPerPoint: 90,
    now: { nowMs: Date.now(), zone: 'UTC' },
  })
  expect(list.points[0]).toMatchObject({ ref: point.ref, why: { rule: 'not-full', in: 'paper' } })
  expect(await listEntries()).toEqual([])
})

test('each field that stands in the way is told where it is, and the first has the cursor', async () => {
  const user = await open()
  await user.click(screen.getByRole('button', { name: 'Log a question or a paper' }))
  await user.click(await screen.findByRole('button', { name: 'Log it' }))
  expect(await screen.findByRole('alert')).toHaveTextContent('Nothing is logged yet: 4 fields need')
  await waitFor(() => expect(screen.getByLabelText('Paper')).toHaveFocus())
  expect(screen.getByLabelText('Paper')).toHaveAccessibleDescription(/Name the paper/)
  expect(screen.getByLabelText('Topic')).toHaveAccessibleDescription(/Choose the topic/)
  expect(screen.getByLabelText('Marks won')).toBeInvalid()
  expect((await listPapers()).papers).toEqual([])
})

test('what went wrong is asked once a mark is lost', async () => {
  const user = await open()
  await fillIn(user)
  expect(screen.getByRole('group', { name: 'What went wrong' })).toBeVisible()
  await user.clear(screen.getByLabelText('Marks won'))
  await user.type(screen.getByLabelText('Marks won'), '3')
  expect(screen.queryByRole('group', { name: 'What went wrong' })).not.toBeInTheDocument()
})

test('a half-written entry is opened again, and cleared with a way back', async () => {
  await saveEntry({
    schema: 1,
    id: 'new',
    day: '2027-03-01',
    source: 'Quay mock',
    rows: [],
    savedAtMs: 1,
  })
  const user = await open()
  expect(screen.getByLabelText('Paper')).toHaveValue('Quay mock')
  await user.click(screen.getByRole('button', { name: 'Clear this entry' }))
  await screen.findByText('The entry was cleared.')
  expect(await listEntries()).toEqual([])
  await user.click(screen.getByRole('button', { name: 'Undo' }))
  expect(await screen.findByLabelText('Paper')).toHaveValue('Quay mock')
})

test('a question of a syllabus that was removed keeps its place', async () => {
  await putPaper({
    schema: 1,
    id: 'old',
    syllabusId: 'gone',
    topicId: 'old-topic',
    day: '2027-03-01',
    source: 'Quay mock',
    marksWon: 1,
    marksOutOf: 2,
    points: [],
  })
  const user = await open()
  expect(screen.getByText('1 of 2 marks in 1 question of 1 paper.')).toBeVisible()
  await user.click(screen.getByRole('button', { name: 'Change Quay mock' }))
  expect(await screen.findByLabelText('Topic')).toHaveDisplayValue('old-topic (no longer here)')
  await user.click(screen.getByRole('button', { name: 'Leave it as it was' }))
  expect((await listPapers()).papers).toHaveLength(1)
})

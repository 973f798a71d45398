/** Settings: each number with its source, exams by syllabus, and that every change is kept at once or told. */
import { fireEvent, render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import { defaultSettings } from '$lib/recall'
import { getSettings, saveSettings } from '$lib/store'
import SettingsPage from '../../src/routes/settings/+page.svelte'

const SHORES = 'shoreline-science-level-2'

async function open() {
  render(SettingsPage)
  await screen.findByRole('heading', { level: 2, name: 'Exams' })
  return userEvent.setup()
}

async function set(name: RegExp, value: string) {
  const field = screen.getByRole('spinbutton', { name })
  await fireEvent.change(field, { target: { value } })
  return field
}

const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10)

describe('numbers', () => {
  test.each([
    { name: /Full sessions in a row/, value: '4', part: { sessionsNeeded: 4 } },
    { name: /From the first of them/, value: '14', part: { daysApart: 14 } },
    { name: /Minutes a day/, value: '45', part: { minutesADay: 45 } },
    { name: /Time for one point/, value: '60', part: { secondsPerPoint: 60 } },
  ])('$name is kept at once, and told', async ({ name, value, part }) => {
    await open()
    await set(name, value)
    await waitFor(() => expect(screen.getByRole('status')).toHaveTextContent(/^Kept: /))
    expect(await getSettings()).toEqual({ ...defaultSettings, ...part })
  })

  test('3 and 7 have their source beside them', async () => {
    await open()
    for (const [name, value] of [
      [/Full sessions/, 3],
      [/From the first/, 7],
    ] as const) {
      const field = screen.getByRole('spinbutton', { name })
      expect(field).toHaveValue(value)
      expect(field).toHaveAccessibleDescription(/Rawson and Dunlosky \(2011\)/)
    }
  })

  test.each(['0', '21', '2.5', ''])(
    '"%s" sessions are refused and what is kept stays',
    async (value) => {
      await open()
      const field = await set(/Full sessions/, value)
      expect(screen.getByRole('alert')).toHaveTextContent(
        /whole number from 1 to 20. It is still 3/,
      )
      expect(field).toBeInvalid()
      expect(await getSettings()).toEqual(defaultSettings)
    },
  )

  test('one press goes back to the usual', async () => {
    await saveSettings({ ...defaultSettings, daysApart: 2 })
    const user = await open()
    await user.click(screen.getByRole('button', { name: /^Back to 7/ }))
    await waitFor(async () => expect((await getSettings()).daysApart).toBe(7))
    await waitFor(() => expect(screen.queryByRole('button', { name: /^Back to/ })).toBeNull())
  })
})

describe('switches', () => {
  test.each([
    { name: /follows the tutor/, part: 'tutorMarksCount' },
    { name: /learn from the marks/, part: 'learnsFromChanges' },
  ] as const)('$name is on until it is turned off', async ({ name, part }) => {
    const user = await open()
    const box = screen.getByRole('checkbox', { name })
    expect(box).toBeChecked()
    await user.click(box)
    await waitFor(async () => expect((await getSettings())[part]).toBe(false))
    await waitFor(() => expect(screen.getByRole('status')).toHaveTextContent(/off\.$/))
    await user.click(box)
    await waitFor(async () => expect((await getSettings())[part]).toBe(true))
  })
})

describe('exams', () => {
  test('one is added for chosen topics, then changed, then removed', async () => {
    const user = await open()
    await user.click(screen.getByRole('button', { name: 'Add an exam' }))
    const form = within(screen.getByRole('form', { name: 'A new exam' }))
    expect(form.getByLabelText('Syllabus')).toHaveFocus()
    await user.selectOptions(form.getByLabelText('Syllabus'), 'Shoreline Science, Level 2')
    await fireEvent.input(form.getByLabelText('Day of the exam'), { target: { value: inDays(9) } })
    await user.type(form.getByLabelText(/What it is called/), 'Paper 1')
    await user.click(form.getByLabelText('only some topics'))
    await user.click(form.getByLabelText('Longshore drift'))
    await user.click(form.getByRole('button', { name: 'Keep this exam' }))
    await screen.findByText('The exam is added.')
    const exam = {
      syllabusId: SHORES,
      day: inDays(9),
      title: 'Paper 1',
      topicIds: ['longshore-drift'],
    }
    expect((await getSettings()).exams).toEqual([exam])
    expect(screen.getByText(/, in 9 days$/)).toBeVisible()
    expect(screen.getByText('1 topic')).toBeVisible()

    await user.click(screen.getByRole('button', { name: /^Change Paper 1/ }))
    const change = within(screen.getByRole('form', { name: 'Change the exam' }))
    await user.click(change.getByLabelText('all topics'))
    await user.click(change.getByRole('button', { name: 'Keep this exam' }))
    await screen.findByText('The exam is changed.')
    expect((await getSettings()).exams).toEqual([
      { syllabusId: SHORES, day: inDays(9), title: 'Paper 1' },
    ])

    await user.click(screen.getByRole('button', { name: /^Remove Paper 1/ }))
    await screen.findByText('The exam is removed.')
    expect((await getSettings()).exams).toEqual([])
  })

  test('a syllabus may have several, and those that are over stand apart', async () => {
    const exams = [-3, 5, 20].map((days) => ({
      syllabusId: SHORES,
      day: inDays(days),
      title: `Day ${days}`,
    }))
    await saveSettings({ ...defaultSettings, exams })
    await open()
    expect(screen.getByText(/, in 5 days$/)).toBeVisible()
    expect(screen.getByText(/, in 20 days$/)).toBeVisible()
    expect(screen.getByText('Over (1)')).toBeVisible()
    expect(screen.getByText(/, 3 days ago$/)).not.toBeVisible()
  })

  test.each([
    { why: 'no day', fill: false, some: false, says: 'Give the day of the exam.' },
    { why: 'no topic chosen', fill: true, some: true, says: /Choose at least one topic/ },
  ])('$why: says so and keeps nothing', async ({ fill, some, says }) => {
    const user = await open()
    await user.click(screen.getByRole('button', { name: 'Add an exam' }))
    if (fill)
      await fireEvent.input(screen.getByLabelText('Day of the exam'), {
        target: { value: inDays(9) },
      })
    if (some) await user.click(screen.getByLabelText('only some topics'))
    await user.click(screen.getByRole('button', { name: 'Keep this exam' }))
    expect(screen.getByRole('alert')).toHaveTextContent(says)
    expect((await getSettings()).exams).toEqual([])
  })

  test('of a syllabus that is gone it can still be removed', async () => {
    await saveSettings({
      ...defaultSettings,
      exams: [{ syllabusId: 'gone', day: inDays(9), title: 'Old paper' }],
    })
    const user = await open()
    await user.click(screen.getByRole('button', { name: 'Remove Old paper' }))
    await waitFor(async () => expect((await getSettings()).exams).toEqual([]))
  })
})

test('where nothing can be kept, says so and shows what holds', async () => {
  vi.stubGlobal('indexedDB', undefined)
  await open()
  expect(screen.getByRole('alert')).toHaveTextContent(/does not let Second Ink keep anything/)
  const field = await set(/Full sessions/, '5')
  await waitFor(() => expect(screen.getByRole('alert')).toHaveTextContent(/^This was not kept/))
  await waitFor(() => expect(field).toHaveValue(3))
})

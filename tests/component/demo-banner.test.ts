/** The bar over every page while the demo is loaded: one tap takes it away, unless something of the user's would go with it. */
import { render, screen, waitFor } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { expect, test, vi } from 'vitest'
import DemoBanner from '$lib/components/DemoBanner.svelte'
import { addCheck, addDemo, demoState, listChecks } from '$lib/store'
import { check, page, syllabus } from '../unit/store/records'

const ID = 'demo:shores'
const load = () =>
  addDemo({
    syllabus: { ...syllabus(ID), id: ID },
    checks: [{ check: check('demo:1', { syllabusId: ID }), page: page('demo:1') }],
    papers: [],
    exams: [],
    ratings: [],
  })

test('no demo, no bar', async () => {
  await addCheck(check('a'), page('a'))
  render(DemoBanner)
  await demoState()
  expect(screen.queryByRole('complementary', { name: 'Demo' })).toBeNull()
})

test('one tap takes the demo away and leaves what is the user’s', async () => {
  await addCheck(check('a'), page('a'))
  await load()
  const onremoved = vi.fn()
  render(DemoBanner, { onremoved })
  expect(await screen.findByRole('complementary', { name: 'Demo' })).toHaveTextContent(
    'an invented pupil',
  )
  await userEvent.click(screen.getByRole('button', { name: 'Remove the demo' }))
  await waitFor(() => expect(onremoved).toHaveBeenCalled())
  expect((await listChecks()).checks.map(({ id }) => id)).toEqual(['a'])
  await waitFor(() => expect(screen.queryByRole('button', { name: 'Remove the demo' })).toBeNull())
})

test('with pages written on its topics it asks first, and no means no', async () => {
  await load()
  await addCheck(check('mine', { syllabusId: ID }), page('mine'))
  const onremoved = vi.fn()
  render(DemoBanner, { onremoved })
  await userEvent.click(await screen.findByRole('button', { name: 'Remove the demo' }))
  expect(await screen.findByText(/You wrote 1 page on topics of the demo/)).toBeInTheDocument()
  await userEvent.click(screen.getByRole('button', { name: 'Keep the demo' }))
  expect((await demoState()).loaded).toBe(true)
  expect(onremoved).not.toHaveBeenCalled()

  await userEvent.click(screen.getByRole('button', { name: 'Remove the demo' }))
  await userEvent.click(await screen.findByRole('button', { name: 'Remove both' }))
  await waitFor(() => expect(onremoved).toHaveBeenCalled())
  expect((await listChecks()).checks).toEqual([])
})

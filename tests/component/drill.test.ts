/** The drill: what it shows before and after the writing, what it keeps, and what it says where something is missing. */
import { render, screen, waitFor } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { addCheck, getRound, listChecks, listRounds } from '$lib/store'
import DrillRoute from '../../src/routes/drill/+page.svelte'
import { check, page } from './marked-example'

beforeEach(() => {
  vi.stubGlobal('matchMedia', (media: string) =>
    Object.assign(new EventTarget(), { matches: false, media }),
  )
  history.replaceState({}, '', '/drill?check=one')
})

const open = () => {
  const rendered = render(DrillRoute)
  return { user: userEvent.setup(), ...rendered }
}
const answer = () => screen.findByRole('textbox')
const textOf = (ref: string) => page.topic.points.find((point) => point.ref === ref)!.text

async function asked(): Promise<string> {
  const said = await screen.findByText(/, point \d/)
  return said.textContent.replace(/^.*, point /, '')
}

describe('a drill of a check', () => {
  test('asks its gaps alone, cue first, and shows the point once something was marked', async () => {
    await addCheck(check, page)
    const { user, container } = open()
    await answer()
    expect(screen.getByText('4 points left')).toBeVisible()
    const ref = await asked()
    expect(ref).not.toBe('2.1')
    expect(container.textContent).not.toContain(textOf(ref))
    await user.click(screen.getByRole('button', { name: 'See the point' }))
    expect(await screen.findByRole('note', { name: `Point ${ref}` })).toHaveTextContent(textOf(ref))
    await waitFor(() => expect(screen.getByRole('button', { name: 'Go on' })).toHaveFocus())
    expect(screen.getByText('It comes round again.')).toBeVisible()
  })

  test('the student’s own mark decides, and it can be taken back', async () => {
    await addCheck(check, page)
    const { user } = open()
    await answer()
    await user.click(screen.getByRole('button', { name: 'See the point' }))
    await user.click(await screen.findByRole('button', { name: /change the mark/ }))
    await user.click(screen.getByRole('button', { name: 'full' }))
    expect(await screen.findByText('It leaves the pile.')).toBeVisible()
    await user.click(screen.getByRole('button', { name: /^Take back/ }))
    expect(await screen.findByText('It comes round again.')).toBeVisible()
  })

  test('goes on where it was left, in the middle of a word', async () => {
    await addCheck(check, page)
    const first = open()
    await first.user.type(await answer(), 'the water is shel')
    const ref = await asked()
    await waitFor(async () =>
      expect((await listRounds())[0]?.typing).toEqual(['the water is shel']),
    )
    first.unmount()
    open()
    expect(await answer()).toHaveValue('the water is shel')
    expect(await asked()).toBe(ref)
  })

  test('ended, it is kept as one gap check of what was written', async () => {
    await addCheck(check, page)
    const { user } = open()
    await answer()
    const ref = await asked()
    await user.click(screen.getByRole('button', { name: 'See the point' }))
    await user.click(await screen.findByRole('button', { name: 'Go on' }))
    await user.click(screen.getByRole('button', { name: 'End it here' }))
    expect(await screen.findByRole('heading', { name: 'Still does not come' })).toBeVisible()
    const gaps = (await listChecks()).checks.filter(({ kind }) => kind === 'gap')
    expect(gaps.map(({ marks }) => marks)).toEqual([[{ ref, outcome: 'missed' }]])
    expect((await getRound((await listRounds())[0]!.id))?.stage).toBe('over')
  })
})

describe('where there is nothing to drill', () => {
  test('a check that is not here is told', async () => {
    open()
    expect(await screen.findByRole('alert')).toHaveTextContent('There is no such check')
  })

  test('without an address, the drills that wait are listed, or none', async () => {
    history.replaceState({}, '', '/drill')
    open()
    expect(await screen.findByText(/No drill is open/)).toBeVisible()
  })
})

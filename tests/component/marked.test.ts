/** The marked page: what it shows of each mark, and that the student has the last word. */
import { render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { lastMarked } from '$lib/components/last-marked'
import { addCheck, getCheck } from '$lib/store'
import MarkedRoute from '../../src/routes/marked/+page.svelte'
import { check, page, TEXT } from './marked-example'

beforeEach(() => {
  lastMarked.current = undefined
  vi.stubGlobal(
    'matchMedia',
    (media: string) =>
      Object.assign(new EventTarget(), { matches: false, media }) as MediaQueryList,
  )
  history.replaceState({}, '', '/marked?check=one')
  Element.prototype.scrollIntoView = () => undefined
})

async function openKept() {
  await addCheck(check, page)
  const rendered = render(MarkedRoute)
  await screen.findByRole('heading', { level: 1, name: check.topicTitle })
  return { user: userEvent.setup(), ...rendered }
}

const point = (ref: string) => screen.getByRole('note', { name: `Point ${ref}` })
const written = (container: HTMLElement) =>
  [...container.querySelectorAll('[data-text]')].map(({ textContent }) => textContent).join('')

describe('the page', () => {
  test('has the student’s text character for character', async () => {
    const { container } = await openKept()
    expect(written(container)).toBe(TEXT)
  })

  test('says the score in words, and quietly the words, the time and the pastes', async () => {
    await openKept()
    expect(
      screen.getByText('1 of 5 points full; 1 part said; 2 missed; 1 says the opposite.'),
    ).toBeVisible()
    expect(screen.getByText('16 words in 12 minutes. 1 paste, 120 characters.')).toBeVisible()
    expect(screen.getByText('Check the tide table.')).toBeVisible()
  })

  test('shows each point after the statement that it belongs to', async () => {
    const { container } = await openKept()
    const order = [...container.querySelectorAll('[data-text], [role=note]')].map(
      (node) => node.getAttribute('aria-label') ?? node.textContent,
    )
    expect(order.indexOf('Point 2.2')).toBeGreaterThan(order.indexOf('runs up: point 2.2'))
    expect(order.indexOf('Point 2.2')).toBeLessThan(order.indexOf('groyne: point 2.3'))
  })

  test.each([
    { ref: '2.1', shows: ['Swash carries material up the beach.', 'Full', 'You said all of it.'] },
    {
      ref: '2.2',
      shows: ['Says the opposite', 'The syllabus has', 'runs down', 'You wrote “runs up”'],
    },
    { ref: '2.3', shows: ['groyne', 'traps', 'not said: ', 'up-drift', 'Part said'] },
    {
      ref: '2.4',
      shows: ['Behind a spit the water is sheltered.', 'Missed', 'Not said on this page.'],
    },
    { ref: '2.5', shows: ['Does this say it?', 'A groyne traps sand.'] },
  ])('$ref is marked in words', async ({ ref, shows }) => {
    await openKept()
    for (const words of shows) expect(point(ref)).toHaveTextContent(words.trim())
  })

  test('strikes through the words that clash and underlines those that count', async () => {
    await openKept()
    expect(screen.getByRole('link', { name: 'runs up: point 2.2' })).toHaveClass('struck')
    expect(screen.getByRole('link', { name: 'up the beach: point 2.1' })).toHaveClass('said')
    expect(screen.queryByRole('link', { name: /Gulls/ })).toBeNull()
  })

  test('lists what is not on the syllabus; markup is shown as text', async () => {
    const { container } = await openKept()
    const list = screen.getByRole('heading', { name: 'Not on this syllabus' }).parentElement!
    expect(within(list).getByText('<b>Gulls</b> like chips.')).toBeVisible()
    expect(container.querySelector('b, i')).toBeNull()
  })

  test('leads to the topic and to another check', async () => {
    await openKept()
    expect(screen.getByRole('link', { name: 'How this topic is going' })).toHaveAttribute(
      'href',
      '/topic?syllabus=shores&topic=drift',
    )
    expect(screen.getByRole('link', { name: 'Check it again' })).toHaveAttribute(
      'href',
      '/check?syllabus=shores&topic=drift',
    )
  })
})

describe('the tie between the words and their point', () => {
  test('shows from the point', async () => {
    const { user } = await openKept()
    await user.hover(point('2.3'))
    expect(screen.getByRole('link', { name: 'groyne: point 2.3' })).toHaveClass('tied')
    expect(screen.getByRole('link', { name: 'Swash: point 2.1' })).not.toHaveClass('tied')
  })

  test('shows from the words, and a tap goes to the point', async () => {
    const { user } = await openKept()
    const words = screen.getByRole('link', { name: 'traps: point 2.3' })
    await user.hover(words)
    expect(point('2.3')).toHaveClass('tied')
    await user.click(words)
    expect(point('2.3')).toHaveFocus()
  })

  test('is one tab stop, and the arrow keys go through the words', async () => {
    const { user } = await openKept()
    const links = screen.getAllByRole('link', { name: /: point/ })
    expect(links.filter((link) => link.tabIndex === 0)).toHaveLength(1)
    links[0]!.focus()
    await user.keyboard('{ArrowRight}{ArrowRight}')
    expect(links[2]).toHaveFocus()
    await user.keyboard('{ArrowLeft}')
    expect(links[1]).toHaveFocus()
  })
})

describe('the last word', () => {
  test('a mark is changed by the keyboard, told, kept, and the marker’s stays beside it', async () => {
    const { user, unmount } = await openKept()
    within(point('2.4'))
      .getByRole('button', { name: /^Missed/ })
      .focus()
    await user.keyboard('{Enter}{Tab}{Enter}')
    await waitFor(() =>
      expect(screen.getByRole('status')).toHaveTextContent(
        'Point 2.4: full, your mark. 2 of 5 points full; 1 part said; 1 missed; 1 says the opposite.',
      ),
    )
    await waitFor(() =>
      expect(within(point('2.4')).getByRole('button', { name: /^Full/ })).toHaveFocus(),
    )

    unmount()
    render(MarkedRoute)
    await screen.findByRole('heading', { level: 1 })
    expect(point('2.4')).toHaveTextContent(/Marker: missed\. Not said on this page\.\s+You: full\./)
    expect(screen.getByText(/^2 of 5 points full/)).toBeVisible()
  })

  test('is taken back', async () => {
    const { user } = await openKept()
    await user.click(within(point('2.1')).getByRole('button', { name: /^Full/ }))
    await user.click(within(point('2.1')).getByRole('button', { name: 'missed' }))
    await user.click(await within(point('2.1')).findByRole('button', { name: /^Take back/ }))
    await waitFor(() => expect(point('2.1')).not.toHaveTextContent('Marker:'))
    expect((await getCheck('one'))?.changes.map(({ outcome }) => outcome)).toEqual(['missed', null])
  })

  test.each([
    { answer: 'Yes, all of it', stands: 'You: full.', outcome: 'full' },
    { answer: 'No', stands: 'You: missed.', outcome: 'missed' },
  ])('a doubt is settled: $answer', async ({ answer, stands, outcome }) => {
    const { user } = await openKept()
    await user.click(within(point('2.5')).getByRole('button', { name: answer }))
    await waitFor(() => expect(point('2.5')).toHaveTextContent(stands))
    expect(point('2.5')).not.toHaveTextContent('Does this say it?')
    expect((await getCheck('one'))?.changes[0]).toMatchObject({
      ref: '2.5',
      outcome,
      by: 'student',
    })
  })

  test('a credited contradiction is no longer struck through', async () => {
    const { user, container } = await openKept()
    await user.click(within(point('2.2')).getByRole('button', { name: /^Says/ }))
    await user.click(within(point('2.2')).getByRole('button', { name: 'full' }))
    await waitFor(() => expect(container.querySelector('.struck')).toBeNull())
  })
})

describe('a check that is not there', () => {
  test('an unknown one leads back', async () => {
    render(MarkedRoute)
    await screen.findByRole('heading', { name: 'There is no such check here' })
    expect(screen.getByRole('link', { name: 'Back to Today' })).toHaveAttribute('href', '/')
  })

  test('one that could not be kept is shown, says why, and its text can be saved', async () => {
    lastMarked.current = { check, page, fault: 'There is no room left on this device.' }
    const user = userEvent.setup()
    const { container } = render(MarkedRoute)
    const told = await screen.findByRole('alert')
    expect(told).toHaveTextContent('This page is not kept. There is no room left on this device.')
    expect(within(told).getByRole('button', { name: 'Save my text as a file' })).toBeVisible()
    expect(written(container)).toBe(TEXT)

    await user.click(within(point('2.5')).getByRole('button', { name: 'Yes, all of it' }))
    await waitFor(() => expect(point('2.5')).toHaveTextContent('You: full.'))
  })
})

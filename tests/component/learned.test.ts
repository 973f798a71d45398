/** A point learns from a changed mark: what the page says, what the marker is told, and the way back. */
import { render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { beforeEach, expect, test, vi } from 'vitest'
import LearnedWordings from '$lib/components/LearnedWordings.svelte'
import { learnedOf, learnFrom } from '$lib/components/learn'
import { findTopic } from '$lib/components/library'
import { mark } from '$lib/marking'
import { addCheck, getSettings, listLearned, saveSettings } from '$lib/store'
import { wordingOf } from '$lib/view/learned'
import MarkedRoute from '../../src/routes/marked/+page.svelte'
import { check, page } from './marked-example'

const AT = { syllabusId: 'shoreline-science-level-2', topicId: 'longshore-drift' }
const SAID = 'The backwash slides back down the beach by its own weight.'

beforeEach(() => {
  vi.stubGlobal(
    'matchMedia',
    (media: string) =>
      Object.assign(new EventTarget(), { matches: false, media }) as MediaQueryList,
  )
  history.replaceState({}, '', '/marked?check=one')
  Element.prototype.scrollIntoView = () => undefined
})

async function openMarked(text: string) {
  const { topic } = (await findTopic(AT.syllabusId, AT.topicId))!
  const report = mark(topic, text)
  const marks = report.points.map(({ ref, outcome }) => ({ ref, outcome }))
  const made = {
    check: { ...check, ...AT, topicTitle: topic.title, marks, changes: [] },
    page: { ...page, text, topic, report },
  }
  await addCheck(made.check, made.page)
  render(MarkedRoute)
  await screen.findByRole('heading', { level: 1, name: topic.title })
  const user = userEvent.setup()
  const give = async (ref: string, outcome: string) => {
    const note = within(screen.getByRole('note', { name: `Point ${ref}` }))
    await user.click(note.getByRole('button', { name: /: change the mark of point/ }))
    await user.click(
      within(note.getByRole('group', { name: /^Your mark/ })).getByRole('button', {
        name: outcome,
      }),
    )
  }
  const again = async () => {
    const learned = await learnedOf(AT.syllabusId, topic)
    return mark(topic, text, learned ? { learned } : {}).points.find(({ ref }) => ref === '2.3')!
  }
  return { user, give, again, topic, made }
}

test('a wording counted as full counts from then on, until it is not to be learnt', async () => {
  const { user, give, again } = await openMarked(SAID)
  expect((await again()).outcome).toBe('missed')
  await give('2.3', 'full')
  expect(await screen.findByText(/From now on this wording counts for 2\.3/)).toBeVisible()
  expect((await again()).outcome).toBe('full')
  await user.click(screen.getByRole('button', { name: /^Do not learn this/ }))
  await waitFor(() => expect(screen.queryByText(/From now on/)).toBeNull())
  expect((await again()).outcome).toBe('missed')
})

test('taking the mark back takes the wording back', async () => {
  const { user, give } = await openMarked(SAID)
  await give('2.3', 'full')
  await screen.findByText(/From now on/)
  await user.click(screen.getByRole('button', { name: /^Take back/ }))
  await waitFor(async () => expect(await listLearned(AT)).toEqual([]))
})

test('what was marked down from full is asked about the next time', async () => {
  const { topic } = (await findTopic(AT.syllabusId, AT.topicId))!
  const { give, again } = await openMarked(topic.points.find(({ ref }) => ref === '2.3')!.text)
  await give('2.3', 'missed')
  expect(await screen.findByText(/this wording is not enough for 2\.3/)).toBeVisible()
  expect(await again()).toMatchObject({ outcome: 'partial', offered: true })
})

test('a statement in doubt is not learnt: it would not count the next time either', async () => {
  const { made } = await openMarked(`Maybe ${SAID.toLowerCase()}`)
  expect(wordingOf(made.page, '2.3', 'full')).toMatchObject({ credited: true })
  expect(await learnFrom(made.check, made.page, '2.3', 'full')).toBeUndefined()
  expect(await listLearned(AT)).toEqual([])
})

test('nothing is learnt, and nothing used, where points are not to learn', async () => {
  const { made, again } = await openMarked(SAID)
  expect(await learnFrom(made.check, made.page, '2.3', 'full')).toMatchObject({ text: SAID })
  await saveSettings({ ...(await getSettings()), learnsFromChanges: false })
  expect((await again()).outcome).toBe('missed')
  expect(await learnFrom(made.check, made.page, '2.3', 'full')).toBeUndefined()
  expect(await listLearned(AT)).toEqual([])
})

test('a point of another text has learnt nothing', async () => {
  const { give, topic } = await openMarked(SAID)
  await give('2.3', 'full')
  await screen.findByText(/From now on/)
  const points = topic.points.map((p) => (p.ref === '2.3' ? { ...p, text: 'Another.' } : p))
  expect(await learnedOf(AT.syllabusId, { ...topic, points })).toBeUndefined()
})

test('the list says by point what was learnt, by whom and when, and removes one', async () => {
  const kept = { schema: 1, ...AT, text: 'Said so.', pointText: 'P', atMs: 1e12 } as const
  const learned = [
    { ...kept, ref: '2.10', checkId: 'a', credited: true, by: 'student' },
    { ...kept, ref: '2.3', checkId: 'b', credited: false, by: 'tutor' },
  ] as const
  const onforget = vi.fn(() => Promise.resolve())
  const { rerender } = render(LearnedWordings, { learned, onforget })
  const user = userEvent.setup()
  await user.click(screen.getByText(/^2 wordings/))
  const refs = screen.getAllByRole('heading', { level: 3 }).map(({ textContent }) => textContent)
  expect(refs).toEqual(['2.3', '2.10'])
  expect(screen.getByText(/^Not enough, from your tutor, .*2001/)).toBeVisible()
  expect(screen.getByText(/^Accepted, by you/)).toBeVisible()
  await user.click(screen.getAllByRole('button', { name: /^Remove/ })[0]!)
  expect(onforget).toHaveBeenCalledWith(learned[1])
  await rerender({ learned: [], onforget })
  expect(screen.queryByRole('heading')).toBeNull()
})

/** A tutor's marks teach the point, on the pupil's side and on the tutor's: seen, off by the settings, and taken back. */
import { render, screen, waitFor } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { beforeEach, expect, test, vi } from 'vitest'
import { learnedOf, learnFrom, learnFromTutor } from '$lib/components/learn'
import { findTopic } from '$lib/components/library'
import { mark, type Outcome } from '$lib/marking'
import { makeReturnFile, newReview, withPoint } from '$lib/review'
import {
  addCheck,
  changeMark,
  changeSettings,
  getCheck,
  listLearned,
  listTaughtBy,
  openReturnFile,
  removePupil,
} from '$lib/store'
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
  Element.prototype.scrollIntoView = () => undefined
})

/** The marker has 2.3 as missed, with the only sentence as the nearest. */
async function checkIsKept() {
  const { topic } = (await findTopic(AT.syllabusId, AT.topicId))!
  const report = mark(topic, SAID)
  const marks = report.points.map(({ ref, outcome }) => ({ ref, outcome }))
  const own = { ...check, ...AT, topicTitle: topic.title, marks, changes: [] }
  const written = { ...page, text: SAID, topic, report }
  await addCheck(own, written)
  return { topic, own, written }
}

async function again() {
  const { topic } = (await findTopic(AT.syllabusId, AT.topicId))!
  const learned = await learnedOf(AT.syllabusId, topic)
  return mark(topic, SAID, learned ? { learned } : {}).points.find(({ ref }) => ref === '2.3')!
    .outcome
}

let madeAtMs = 0
/** A file from the tutor with this mark of 2.3, opened; gives how many wordings were learnt. */
async function tutorGives(outcome: Outcome | null) {
  madeAtMs += 1
  const empty = newReview('me', check.id)
  const review = withPoint(empty, { ref: '2.3', outcome, comment: '', atMs: madeAtMs })
  const file = makeReturnFile('me', { schema: 1, id: 't', name: 'Mr Tern' }, [review], madeAtMs)
  return learnFromTutor((await openReturnFile(JSON.stringify(file))).changed)
}

/** One word on a wording is later than another by the clock. */
const later = () => new Promise((done) => setTimeout(done, 3))

test('the tutor’s mark teaches, the setting turns it off, and a mark taken back takes it away', async () => {
  await checkIsKept()
  expect(await again()).toBe('missed')
  expect(await tutorGives('full')).toBe(1)
  expect(await listLearned(AT)).toMatchObject([
    { by: 'tutor', ref: '2.3', text: SAID, credited: true },
  ])
  expect(await again()).toBe('full')

  await changeSettings((settings) => ({ ...settings, tutorMarksCount: false }))
  expect(await again()).toBe('missed')
  await changeSettings((settings) => ({ ...settings, tutorMarksCount: true }))
  expect(await again()).toBe('full')
  await changeSettings((settings) => ({ ...settings, learnsFromChanges: false }))
  expect(await again()).toBe('missed')
  await changeSettings((settings) => ({ ...settings, learnsFromChanges: true }))

  expect(await tutorGives(null)).toBe(0)
  expect(await listLearned(AT)).toEqual([])
  expect(await again()).toBe('missed')
})

test('a tutor who overrules the student’s mark overrules what it taught; taken off, the student’s stands', async () => {
  const { own, written } = await checkIsKept()
  await changeMark(own.id, { ref: '2.3', outcome: 'full', by: 'student', atMs: 1 })
  await learnFrom(own, written, '2.3', 'full')
  expect(await again()).toBe('full')
  await later()
  expect(await tutorGives('missed')).toBe(1)
  expect(await again()).not.toBe('full')

  history.replaceState({}, '', `/marked?check=${own.id}`)
  render(MarkedRoute)
  const user = userEvent.setup()
  expect(await screen.findByText(/^From your tutor: .* not enough for 2\.3/)).toBeVisible()
  await user.click(screen.getByRole('button', { name: 'Take these marks off' }))
  expect(await screen.findByText(/^From now on this wording counts for 2\.3/)).toBeVisible()
  expect(screen.queryByText(/From your tutor/)).toBeNull()
  expect(await again()).toBe('full')
  expect((await getCheck(own.id))?.changes.at(-1)).toMatchObject({ by: 'tutor', outcome: null })
})

test('the student who overrules the tutor’s mark overrules what it taught', async () => {
  const { own, written } = await checkIsKept()
  await tutorGives('full')
  await later()
  await learnFrom(own, written, '2.3', 'missed')
  expect(await again()).not.toBe('full')
  await learnFrom(own, written, '2.3', null)
  expect(await again()).toBe('full')
})

test('what the tutor’s mark taught is removed on the marked page, and the mark stays', async () => {
  const { own } = await checkIsKept()
  await tutorGives('full')
  history.replaceState({}, '', `/marked?check=${own.id}`)
  render(MarkedRoute)
  const user = userEvent.setup()
  await user.click(await screen.findByRole('button', { name: /^Do not learn this/ }))
  await waitFor(() => expect(screen.queryByText(/From your tutor/)).toBeNull())
  expect(await again()).toBe('missed')
  expect((await getCheck(own.id))?.changes.at(-1)).toMatchObject({ by: 'tutor', outcome: 'full' })
})

test('on the tutor’s side the point learns from a pupil’s page, until the mark or the pupil goes', async () => {
  const { own, written } = await checkIsKept()
  const teach = (outcome: Outcome | null, pupilId: string) =>
    learnFrom(own, written, '2.3', outcome, { by: 'tutor', pupilId })
  await teach('full', 'ada')
  expect(await listTaughtBy('ada')).toHaveLength(1)
  expect(await listTaughtBy('bo')).toEqual([])
  // The setting is about the marks of this user's own tutor.
  await changeSettings((settings) => ({ ...settings, tutorMarksCount: false }))
  expect(await again()).toBe('full')
  await teach(null, 'bo')
  expect(await again()).toBe('full')
  await teach(null, 'ada')
  expect(await again()).toBe('missed')
  await teach('full', 'ada')
  await removePupil('bo')
  expect(await again()).toBe('full')
  await removePupil('ada')
  expect(await again()).toBe('missed')
})

/** What is kept is counted, taken away as a file and brought back; what cannot be read is never lost. */
import { render, screen, waitFor } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { beforeEach, expect, test, vi } from 'vitest'
import { download } from '$lib/components/download'
import {
  addCheck,
  exportAll,
  listChecks,
  removeCheck,
  saveDraft,
  unreadableRecords,
} from '$lib/store'
import { check, draft, page, rawSet } from '../unit/store/records'
import DataPage from '../../src/routes/data/+page.svelte'

vi.mock('$lib/components/download', () => ({ download: vi.fn() }))
beforeEach(() => vi.mocked(download).mockClear())

async function openPage() {
  const user = userEvent.setup({ applyAccept: false })
  render(DataPage)
  await waitFor(() => expect(screen.queryByText('Looking…')).toBeNull())
  return user
}

const chooser = () => screen.getByLabelText(/open a backup file/i)
const saved = () => vi.mocked(download).mock.calls.map(([name, text]) => ({ name, text }))

test('what is kept is counted', async () => {
  await addCheck(check('a'), page('a'))
  await addCheck(check('b'), page('b'))
  await saveDraft(draft('drift'))
  await openPage()
  expect(screen.getByText('2 checks')).toBeVisible()
  expect(screen.getByText('2 marked pages')).toBeVisible()
  expect(screen.getByText('1 page')).toBeVisible()
})

test('a backup that is saved brings everything back', async () => {
  await addCheck(check('a'), page('a'))
  const user = await openPage()
  await user.click(screen.getByRole('button', { name: 'Save a backup file' }))
  await waitFor(() => expect(download).toHaveBeenCalled())
  const [file] = saved()
  expect(file?.name).toMatch(/^second-ink-\d{4}-\d\d-\d\d\.json$/)

  await removeCheck('a')
  await user.upload(chooser(), new File([file!.text], file!.name))
  const preview = await screen.findByRole('region', { name: `What ${file!.name} would change` })
  expect(preview).toHaveTextContent('1 check: new')
  expect(preview).toHaveTextContent('1 marked page: new')
  expect((await listChecks()).checks).toEqual([])
  await user.click(screen.getByRole('button', { name: 'Restore it' }))
  await screen.findByText('2 records added', { exact: false })
  expect((await listChecks()).checks).toEqual([check('a')])

  await user.upload(chooser(), new File([file!.text], file!.name))
  await screen.findByText('Everything in it is here already', { exact: false })
  expect(screen.queryByRole('button', { name: 'Restore it' })).toBeNull()
  await user.click(screen.getByRole('button', { name: 'Close it' }))

  await user.click(screen.getByRole('button', { name: 'Undo the last restore' }))
  await screen.findByText('Undone: 2 records are as before', { exact: false })
  expect((await listChecks()).checks).toEqual([])
  expect(screen.queryByRole('button', { name: 'Undo the last restore' })).toBeNull()
})

test('a backup that was looked at and left changes nothing; what came meanwhile is shown anew', async () => {
  await addCheck(check('a'), page('a'))
  const text = JSON.stringify(await exportAll())
  await removeCheck('a')
  const user = await openPage()
  await user.upload(chooser(), new File([text], 'mine.json'))
  await user.click(await screen.findByRole('button', { name: 'Leave everything as it is' }))
  expect((await listChecks()).checks).toEqual([])

  await user.upload(chooser(), new File([text], 'mine.json'))
  await screen.findByText('1 check', { exact: false, selector: 'strong' })
  await addCheck(check('a'), page('a'))
  await user.click(screen.getByRole('button', { name: 'Restore it' }))
  expect(await screen.findByRole('alert')).toHaveTextContent('would do something else now')
  await screen.findByText('Everything in it is here already', { exact: false })
})

test.each([
  { what: 'something else', text: 'format: 1\ntitle: Shores\n', says: /not a backup/ },
  { what: 'cut short', text: '{"app":"Second Ink","backup":1,"rec', says: /cut short/ },
])('a file that is $what is refused, and nothing is changed', async ({ text, says }) => {
  await addCheck(check('a'), page('a'))
  const before = await exportAll(0)
  const user = await openPage()
  await user.upload(chooser(), new File([text], 'file.json'))
  expect(await screen.findByRole('alert')).toHaveTextContent(says)
  expect(await exportAll(0)).toEqual(before)
})

test('a record that cannot be read is counted, can be saved, and goes only when that was confirmed', async () => {
  await addCheck(check('a'), page('a'))
  const key = 'check/broken'
  await rawSet(key, { schema: 1, id: 'broken', marks: 'none' })
  const user = await openPage()
  expect(screen.getByRole('heading', { name: '1 record that could not be read' })).toBeVisible()

  await user.click(screen.getByRole('button', { name: 'Save them as a file' }))
  await waitFor(() => expect(download).toHaveBeenCalled())
  expect(JSON.parse(saved()[0]!.text)).toMatchObject([{ key, value: { marks: 'none' } }])

  await user.click(screen.getByRole('button', { name: `Remove ${key}` }))
  expect(await unreadableRecords()).toHaveLength(1)
  await user.click(screen.getByRole('button', { name: 'Remove it' }))
  await waitFor(async () => expect(await unreadableRecords()).toEqual([]))
  expect((await listChecks()).checks).toHaveLength(1)
})

test('where nothing can be kept, it says so', async () => {
  vi.stubGlobal('indexedDB', undefined)
  await openPage()
  expect(await screen.findByRole('alert')).toHaveTextContent(
    'does not let Second Ink keep anything',
  )
})

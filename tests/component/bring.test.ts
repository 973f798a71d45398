/** A syllabus is brought, looked at, kept and removed; one with a mistake is refused whole. */
import { render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import { EXAMPLE_SYLLABUS } from '$lib/components/example-syllabus'
import { addCheck, listChecks, listSyllabi } from '$lib/store'
import { check, page } from '../unit/store/records'
import BringPage from '../../src/routes/bring/+page.svelte'

async function openPage() {
  // The browser offers only such files first; any file can be dropped or chosen all the same.
  const user = userEvent.setup({ applyAccept: false })
  render(BringPage)
  await screen.findByRole('heading', { name: 'Shoreline Science, Level 2' })
  return user
}

const chooser = () => screen.getByLabelText(/open a syllabus file/i)
const yamlFile = (text: string | Uint8Array<ArrayBuffer>, name = 'mine.yaml') =>
  new File([text], name, { type: 'application/yaml' })
const kept = async () => (await listSyllabi()).syllabi

describe('a good file', () => {
  test('is looked at first and kept word for word when that is asked for', async () => {
    const user = await openPage()
    await user.upload(chooser(), yamlFile(EXAMPLE_SYLLABUS))
    const found = await screen.findByRole('region', { name: 'Rock Pools, Level 1' })
    expect(found).toHaveTextContent('2 topics, 7 points')
    expect(within(found).getByText('Counting limpets')).toBeVisible()
    expect(await kept()).toEqual([])

    await user.click(within(found).getByRole('button', { name: 'Keep this syllabus' }))
    await waitFor(async () => expect(await kept()).toHaveLength(1))
    expect((await kept())[0]).toMatchObject({ id: 'rock-pools-level-1', source: EXAMPLE_SYLLABUS })
    expect(await screen.findByRole('button', { name: 'Remove Rock Pools, Level 1' })).toBeVisible()
  })

  test('can be pasted as text', async () => {
    const user = await openPage()
    await user.click(screen.getByText('Or paste its text'))
    await user.click(screen.getByLabelText('The text of a syllabus file'))
    await user.paste(EXAMPLE_SYLLABUS)
    await user.click(screen.getByRole('button', { name: 'Read it' }))
    expect(await screen.findByRole('region', { name: 'Rock Pools, Level 1' })).toBeVisible()
  })

  test('left alone is not kept', async () => {
    const user = await openPage()
    await user.upload(chooser(), yamlFile(EXAMPLE_SYLLABUS))
    await user.click(await screen.findByRole('button', { name: 'Leave it' }))
    expect(screen.queryByRole('button', { name: 'Keep this syllabus' })).toBeNull()
    expect(await kept()).toEqual([])
  })

  test('that cannot be kept says why and stays to be tried again', async () => {
    const user = await openPage()
    await user.upload(chooser(), yamlFile(EXAMPLE_SYLLABUS))
    const keep = await screen.findByRole('button', { name: 'Keep this syllabus' })
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('No room.', 'QuotaExceededError')
    })
    await user.click(keep)
    expect(await screen.findByRole('alert')).toHaveTextContent('no room left')
    expect(keep).toBeVisible()
  })
})

describe('a file that cannot be used', () => {
  test('has every mistake listed with its line, column and place, and nothing of it is kept', async () => {
    const user = await openPage()
    const lines = EXAMPLE_SYLLABUS.split('\n')
    const second = lines.findIndex((line) => line.includes("ref: '1.2'"))
    const third = lines.findIndex((line) => line.includes('any: 2'))
    lines[second] = lines[second]!.replace('1.2', '1.1')
    lines[third] = lines[third]!.replace('2', '9')
    await user.upload(chooser(), yamlFile(lines.join('\n')))

    const refused = await screen.findByRole('region', { name: 'mine.yaml was not taken' })
    const items = within(refused).getAllByRole('listitem')
    expect(items).toHaveLength(2)
    expect(items[0]).toHaveTextContent(`Line ${second + 1}, column`)
    expect(items[0]).toHaveTextContent('1.1')
    expect(items[1]).toHaveTextContent(`Line ${third + 1}, column`)
    expect(screen.queryByRole('button', { name: 'Keep this syllabus' })).toBeNull()
    expect(await kept()).toEqual([])
  })

  test.each([
    {
      what: 'bytes that are no text',
      file: yamlFile(new Uint8Array([0x25, 0x50, 0x44, 0x46, 0xff, 0xfe, 0x00, 0xe2]), 'paper.pdf'),
      says: /paper\.pdf is not a text file/,
    },
    {
      what: 'nine million bytes',
      file: yamlFile(new Uint8Array(9_000_000).fill(0x61), 'huge.yaml'),
      says: /huge\.yaml is 9 MB; at most 8 MB/,
    },
  ])('because it is $what is refused plainly', async ({ file, says }) => {
    const user = await openPage()
    await user.upload(chooser(), file)
    expect(await screen.findByRole('alert')).toHaveTextContent(says)
    expect(await kept()).toEqual([])
  })

  test('because it is empty is refused plainly', async () => {
    const user = await openPage()
    await user.upload(chooser(), yamlFile('', 'empty.yaml'))
    expect(
      await screen.findByRole('region', { name: 'empty.yaml was not taken' }),
    ).toHaveTextContent('The file is empty')
  })
})

test('a syllabus that is removed leaves its checks', async () => {
  const user = await openPage()
  await user.upload(chooser(), yamlFile(EXAMPLE_SYLLABUS))
  await user.click(await screen.findByRole('button', { name: 'Keep this syllabus' }))
  await addCheck(check('a', { syllabusId: 'rock-pools-level-1' }), page('a'))

  await user.click(await screen.findByRole('button', { name: 'Remove Rock Pools, Level 1' }))
  expect(await kept()).toHaveLength(1)
  await user.click(screen.getByRole('button', { name: 'Remove it' }))
  await waitFor(async () => expect(await kept()).toEqual([]))
  expect((await listChecks()).checks).toHaveLength(1)
})

test('a syllabus that comes with the app cannot be removed', async () => {
  await openPage()
  expect(screen.queryByRole('button', { name: /^Remove/ })).toBeNull()
})

/** A syllabus is brought, looked at and kept; one with a mistake is refused whole. */
import { render, screen, waitFor, within } from '@testing-library/svelte'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import { EXAMPLE_SYLLABUS } from '$lib/components/example-syllabus'
import { getImport, listSyllabi } from '$lib/store'
import { readSyllabus } from '$lib/syllabus'
import BringPage from '../../src/routes/bring/+page.svelte'

async function openPage() {
  // The browser offers only such files first; any file can be dropped or chosen all the same.
  const user = userEvent.setup({ applyAccept: false })
  render(BringPage)
  await screen.findByRole('heading', { name: 'Bring a syllabus' })
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
    expect(
      await screen.findByRole('heading', { name: 'Rock Pools, Level 1 is kept.' }),
    ).toBeVisible()
    expect(screen.getByRole('link', { name: 'Check yourself on Between the tides' })).toBeVisible()
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
      says: /paper\.pdf does not begin as a PDF does/,
    },
    {
      what: 'thirteen million bytes',
      file: yamlFile(new Uint8Array(13_000_000).fill(0x61), 'huge.yaml'),
      says: /huge\.yaml is 13 MB; a text of at most 12 MB/,
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

describe('a draft', () => {
  const paste = async (text: string) => {
    const user = await openPage()
    await user.click(screen.getByText('Or paste its text'))
    await user.click(screen.getByLabelText('The text of a syllabus file'))
    await user.paste(text)
    await user.click(screen.getByRole('button', { name: 'Read it' }))
    await screen.findByRole('heading', { name: 'A draft of your syllabus' })
    return user
  }

  test('is kept as a file that reads again as the same syllabus', async () => {
    const user = await paste('3.1 Drift\n3.1.1 Waves come at an angle.\n3.1.2 Sand moves along.')
    await user.click(screen.getByRole('button', { name: 'Keep this syllabus' }))
    await screen.findByRole('heading', { name: 'My syllabus is kept.' })
    const [only] = await kept()
    const read = readSyllabus(only!.source)
    expect(read).toEqual({ ok: true, syllabus: only!.syllabus })
    expect(
      only!.syllabus.topics.map(({ title, points }) => [title, points.map(({ ref }) => ref)]),
    ).toEqual([['3.1 Drift', ['3.1.1', '3.1.2']]])
    await waitFor(async () => expect(await getImport()).toBeUndefined())
  })

  test('is no syllabus until then, is kept as a draft, and is gone when it is thrown away', async () => {
    const user = await paste('1. Waves come.\n2. Sand moves.')
    await waitFor(async () => expect((await getImport())?.tree.lines).toHaveLength(2))
    expect(await kept()).toEqual([])
    await user.click(screen.getByRole('button', { name: 'Throw the draft away' }))
    await user.click(screen.getByRole('button', { name: 'Throw it away' }))
    await waitFor(async () => expect(await getImport()).toBeUndefined())
  })

  test('of a syllabus file keeps all that its points have', async () => {
    const user = await openPage()
    await user.upload(chooser(), yamlFile(EXAMPLE_SYLLABUS))
    await user.click(await screen.findByRole('button', { name: 'Change it first' }))
    await user.click(await screen.findByRole('button', { name: 'Keep this syllabus' }))
    await waitFor(async () => expect(await kept()).toHaveLength(1))
    expect(readSyllabus(EXAMPLE_SYLLABUS)).toEqual({
      ok: true,
      syllabus: (await kept())[0]!.syllabus,
    })
  })
})

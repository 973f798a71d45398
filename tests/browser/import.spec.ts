/** From a file of another program to a marked check; and what is brought that cannot be used. */
import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import {
  expect,
  expectNoSideways,
  expectNoViolations,
  expectSoundAt,
  test,
  writingPage,
} from './app'
import { expectKept } from './records'

const fixture = (name: string) => `tests/fixtures/import/${name}`

type Upload = string | { name: string; mimeType: string; buffer: Buffer }

async function bring(page: Page, file: Upload): Promise<void> {
  await page.goto('/bring')
  await page.getByLabel('Open a syllabus file').setInputFiles(file)
}

const bytes = (name: string, buffer: Buffer) => ({ name, mimeType: '', buffer })
const draft = (page: Page) => page.getByRole('heading', { name: 'A draft of your syllabus' })
const lines = (page: Page) => page.getByRole('list', { name: 'Lines of the draft' })
const row = (page: Page, text: string) => lines(page).getByRole('button', { name: text })

async function sound(page: Page): Promise<void> {
  await expectNoSideways(page)
  await expectNoViolations(page)
}

test('from a PDF to a marked check, sound on a phone and on a wide screen', async ({ page }) => {
  const sound = () => expectSoundAt(page, [390, 1440])
  await page.setViewportSize({ width: 390, height: 844 })
  await bring(page, fixture('coast.pdf'))
  await expect(page.getByText('Page 1 of 3')).toBeVisible()
  await sound()
  await page.getByRole('button', { name: 'Read these 3 pages' }).click()
  await expect(draft(page)).toBeVisible()
  await expect(row(page, '3.1.2 Backwash runs straight down')).toBeVisible()
  await sound()

  // Dropped, taken back, retitled, split: nothing of it is a syllabus yet.
  await row(page, '3.1.2 Backwash').press('Delete')
  await expect(row(page, 'Left out: Backwash')).toBeVisible()
  await page.keyboard.press('Control+z')
  await expect(row(page, '3.1.2 Backwash')).toBeVisible()
  await expect(row(page, 'Left out: Backwash')).toHaveCount(0)
  await row(page, '3.1 Longshore drift').click()
  await page.getByLabel('Title', { exact: true }).last().fill('Drift along the shore')
  await sound()
  await page.getByRole('button', { name: 'Close', exact: true }).click()
  await expect(row(page, '3.1 Drift along the shore')).toBeFocused()

  await expectKept(page, 'import', 'Drift along the shore')
  await page.reload()
  await page.getByRole('button', { name: 'Go on with the draft' }).click()
  await expect(row(page, '3.1 Drift along the shore')).toBeVisible()

  await page.getByRole('button', { name: 'Keep this syllabus' }).click()
  await expect(page.getByRole('heading', { name: 'Coasts is kept.' })).toBeFocused()
  await sound()
  await page.getByRole('link', { name: 'Check yourself on 3.1 Drift along the shore' }).click()
  await writingPage(page).fill('Backwash runs straight down the beach under gravity.')
  await page.keyboard.press('Control+Enter')
  await expect(page.getByText('1 of 3 points full', { exact: false }).first()).toBeVisible()
})

test('by the keyboard alone: open, split, join, move, renumber', async ({ page }) => {
  await bring(page, fixture('coast-libreoffice.docx'))
  await expect(draft(page)).toBeFocused()
  await row(page, '3.1.1 Waves reach').focus()
  await page.keyboard.press('ArrowDown')
  await expect(row(page, '3.1.2 Backwash')).toBeFocused()
  await page.keyboard.press('Alt+ArrowDown')
  await expect(row(page, '3.1.2 Backwash')).toBeFocused()
  await page.keyboard.press('ArrowUp')
  await expect(row(page, '3.1.3 Sediment moves')).toBeFocused()
  await page.keyboard.press('Enter')
  const text = page.getByLabel('Text', { exact: true })
  await expect(text).toBeFocused()
  await text.evaluate((area: HTMLTextAreaElement) => area.setSelectionRange(31, 31))
  await page.keyboard.press('Enter')
  await page.keyboard.press('Escape')
  await expect(row(page, '3.1.3.2')).toBeFocused()
  await expect(row(page, '3.1.3 Sediment moves along the coast')).toBeVisible()
  await page.keyboard.press('Control+z')
  await expect(row(page, '3.1.3.2')).toHaveCount(0)
  await page.getByRole('button', { name: 'Number all anew' }).press('Enter')
  await expect(row(page, '3.2.3')).toBeVisible()
})

test('a table without names asks for its columns; doubled numbers are told with their place', async ({
  page,
}) => {
  await bring(
    page,
    bytes('rocks.csv', Buffer.from('1.1,Waves cut a notch.\n1.1,The cliff falls.\n')),
  )
  await expect(page.getByRole('heading', { name: 'rocks.csv' })).toBeVisible()
  await sound(page)
  await page.getByRole('button', { name: 'Read the table' }).click()
  await expect(page.getByText('The number 1.1 stands here a second time.')).toBeVisible()
  await expect(page.getByText('row 2:')).toBeVisible()
  await page.getByRole('button', { name: 'Keep this syllabus' }).click()
  await expect(page.getByRole('alert')).toContainText('1 thing to put right first')
  await sound(page)
  await page.getByRole('button', { name: 'Give doubled numbers their own' }).click()
  await page.getByRole('button', { name: 'Keep this syllabus' }).click()
  await expect(page.getByRole('heading', { name: 'rocks is kept.' })).toBeVisible()
})

test('text that is pasted; script in any field is shown as text', async ({ page }) => {
  const script = '<img src="ran.png" onerror="window.ran = true">'
  await page.goto('/bring')
  await page.getByText('Or paste its text').click()
  await page
    .getByLabel('The text of a syllabus file')
    .fill(`# Pools ${script}\n- Limpets ${script} graze.\n- Crabs hide.`)
  await page.getByRole('button', { name: 'Read it' }).click()
  await expect(row(page, `Limpets ${script}`)).toBeVisible()
  await page.getByRole('button', { name: 'Keep this syllabus' }).click()
  await expect(page.getByRole('heading', { name: 'My syllabus is kept.' })).toBeVisible()
  expect(await page.evaluate(() => 'ran' in window)).toBe(false)
})

const half = (name: string) => {
  const whole = readFileSync(fixture(name))
  return whole.subarray(0, whole.length / 2)
}
const wide = Buffer.from('\ufeff1.1 Wellen erreichen den Strand schräg.', 'utf16le')

const REFUSED = [
  ['a PDF with a password', fixture('encrypted.pdf'), /locked with a password/],
  ['a PDF that is noise', bytes('x.pdf', Buffer.from('%PDF-1.7\nnoise')), /This PDF is damaged/],
  ['half a Word file', bytes('x.docx', half('coast.docx')), /Word file is damaged/],
  ['a picture', bytes('x.png', Buffer.from('\u0089PNG', 'latin1')), /is a picture/],
  [
    'a table of 10 MB',
    bytes(
      'x.csv',
      Buffer.from('ref,text\n' + '1,aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\n'.repeat(280_000)),
    ),
    /row 5002|more than 5000 rows/,
  ],
  ['half a package', bytes('x.json', Buffer.from('{ "CFDocument": {')), /not complete JSON/],
] as const

test('what cannot be read is refused in words, and nothing of it is kept', async ({ page }) => {
  for (const [what, file, says] of REFUSED)
    await test.step(what, async () => {
      await bring(page, file)
      await expect(page.getByRole('alert').filter({ hasText: says })).toBeVisible()
      await expectNoViolations(page)
      await page.reload()
      await expect(page.getByLabel('Open a syllabus file')).toBeEnabled()
      await expect(page.getByRole('button', { name: 'Go on with the draft' })).toHaveCount(0)
    })
})

test('a scanned PDF says what it is and what to do', async ({ page }) => {
  await bring(page, fixture('scanned.pdf'))
  await page.getByRole('button', { name: 'Read these 2 pages' }).click()
  await expect(page.getByRole('alert').filter({ hasText: 'no text, only pictures' })).toBeVisible()
})

test('UTF-16 and Windows-1252 are read; the second is told', async ({ page }) => {
  await bring(page, bytes('wide.txt', wide))
  await expect(row(page, '1.1 Wellen erreichen den Strand schräg.')).toBeVisible()
  await bring(
    page,
    bytes(
      'west.txt',
      Buffer.from('1.1 Wellen erreichen den Strand schräg \u0096 immer.', 'latin1'),
    ),
  )
  await expect(row(page, '1.1 Wellen erreichen den Strand schräg – immer.')).toBeVisible()
  await expect(page.getByText('it was read as Windows-1252')).toBeVisible()
})

test('500 pages show how far they are and can be stopped', async ({ page, browser }) => {
  const maker = await browser.newPage()
  await maker.setContent(
    Array.from(
      { length: 500 },
      (_, i) => `<p style="break-after: page">${i + 1}.1 Waves come.</p>`,
    ).join(''),
  )
  const buffer = await maker.pdf({ format: 'A5' })
  await maker.close()
  await bring(page, bytes('long.pdf', buffer))
  await expect(page.getByText(/Page 1 of 50\d/)).toBeVisible()
  await page.getByRole('button', { name: /Read these 50\d pages/ }).click()
  await expect(page.getByText(/[1-9]\d* of 50\d pages read/)).toBeVisible()
  await page.getByRole('button', { name: 'Stop' }).click()
  await expect(page.getByText('Stopped. Nothing was kept.')).toBeVisible()
  // The memory of the document is that of its worker, and goes with it.
  await expect.poll(() => page.workers().length).toBe(0)
  await page.reload()
  await expect(page.getByRole('button', { name: 'Go on with the draft' })).toHaveCount(0)
})

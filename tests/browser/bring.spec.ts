import type { Page } from '@playwright/test'
import { expect, expectNoViolations, test, topic, writingPage } from './app'

/** Markup that would run, or fetch, if it were ever taken for markup. */
const SCRIPT = '<script>window.ran = true</script><img src="ran.png" onerror="window.ran = true">'

async function bring(page: Page, source: string, name = 'mine.yaml'): Promise<void> {
  await page.goto('/bring')
  const file = { name, mimeType: 'application/yaml', buffer: Buffer.from(source) }
  await page.getByLabel('Open a syllabus file').setInputFiles(file)
}

const ran = (page: Page) => page.evaluate(() => 'ran' in window)

test('a syllabus is looked at, kept, and its topic is on the front page', async ({ page }) => {
  await bring(
    page,
    'format: 1\ntitle: Rock pools\ntopics:\n  - title: Limpets\n    points:\n      - { ref: "1", text: Limpets graze algae. }\n',
  )
  await expect(page.getByRole('heading', { name: 'Rock pools' })).toBeVisible()
  await expectNoViolations(page)
  await page.getByRole('button', { name: 'Keep this syllabus' }).click()
  await expect(page.getByText('Rock pools is kept.', { exact: false })).toBeVisible()
  await page.goto('/')
  await page.getByRole('link', { name: 'Write what you remember of Limpets' }).click()
  await writingPage(page).fill('Limpets graze algae.')
  await page.keyboard.press('Control+Enter')
  await expect(page.getByRole('heading', { level: 1, name: 'Limpets' })).toBeVisible()
})

test('a syllabus with a mistake is refused, with the place of the mistake', async ({ page }) => {
  await bring(
    page,
    'format: 1\ntitle: Rock pools\ntopics:\n  - title: Limpets\n    points:\n      - ref: "1"\n        txt: Limpets graze.\n',
  )
  await expect(page.getByRole('heading', { name: 'mine.yaml was not taken' })).toBeVisible()
  await expect(page.getByText('Line 7, column 9').first()).toBeVisible()
  await expect(page.getByText('Nothing of it was kept', { exact: false })).toBeVisible()
  await expectNoViolations(page)
  await page.goto('/')
  await page.getByText(/other topics of Shoreline Science/).click()
  await expect(page.getByRole('link', { name: `Check ${topic.title}` })).toBeVisible()
  await expect(page.getByText('Limpets')).toHaveCount(0)
})

test('a file that is no syllabus at all is refused in words', async ({ page }) => {
  await bring(page, '\u0000\u0001PNG', 'photo.yaml')
  await expect(page.getByRole('alert')).toContainText('photo.yaml is not a text file')
})

test('a script in a syllabus is shown as text, wherever it goes', async ({ page }) => {
  const text = JSON.stringify(SCRIPT)
  await bring(
    page,
    `format: 1\ntitle: ${JSON.stringify(`Pools ${SCRIPT}`)}\nnote: ${text}\ntopics:\n  - title: ${JSON.stringify(`Limpets ${SCRIPT}`)}\n    id: limpets\n    caution: ${text}\n    points:\n      - ref: "1"\n        text: ${JSON.stringify(`Limpets graze ${SCRIPT}`)}\n`,
  )
  await page.getByRole('button', { name: 'Keep this syllabus' }).click()
  await expect(page.getByRole('heading', { name: SCRIPT }).first()).toBeVisible()
  expect(await ran(page)).toBe(false)
  await page.goto('/')
  await page.getByRole('link', { name: `Write what you remember of Limpets ${SCRIPT}` }).click()
  await expect(writingPage(page)).toBeFocused()
  await page.keyboard.press('Control+Enter')
  await page.getByRole('button', { name: 'Mark the empty page' }).click()
  await expect(page.getByRole('heading', { level: 1, name: `Limpets ${SCRIPT}` })).toBeVisible()
  await expect(page.getByRole('article')).toContainText(`Limpets graze ${SCRIPT}`)
  expect(await ran(page)).toBe(false)
  await page.getByRole('link', { name: 'How this topic is going' }).click()
  await expect(page.getByRole('heading', { level: 1, name: `Limpets ${SCRIPT}` })).toBeVisible()
  expect(await ran(page)).toBe(false)
})

test('a script in a page is shown as text', async ({ page }) => {
  await page.goto(topic.check)
  await writingPage(page).fill(`${topic.points[0]!.text} ${SCRIPT}`)
  await page.keyboard.press('Control+Enter')
  await expect(page.getByRole('article')).toContainText('<script>window.ran = true</script>')
  expect(await ran(page)).toBe(false)
  await expect(page.locator('main img, main script')).toHaveCount(0)
})

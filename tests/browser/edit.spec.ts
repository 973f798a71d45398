/** A syllabus is edited in a real browser: by keyboard alone, over a reload, with an old check left as it was. */
import type { Locator, Page } from '@playwright/test'
import { expect, expectSound, test, topic, writeAndMark } from './app'

const EDIT = '/edit?syllabus=shoreline-science-level-2'
const first = topic.points[0]!

const line = (page: Page, ref: string) =>
  page.getByRole('button', { name: new RegExp(`^${ref.replace('.', '\\.')} `) })
const textField = (page: Page) => page.getByLabel(/^Text, word for word/)
const use = (page: Page) => page.getByRole('button', { name: 'Use these changes' })

async function openTopic(page: Page): Promise<void> {
  await page.goto(EDIT)
  await page
    .getByRole('navigation', { name: 'Topics of this syllabus' })
    .getByRole('button', { name: topic.title })
    .click()
  await expect(page.getByRole('heading', { level: 2, name: topic.title })).toBeFocused()
}

async function openPoint(page: Page, ref: string): Promise<void> {
  await openTopic(page)
  await line(page, ref).click()
  await expect(textField(page)).toBeVisible()
}

/** The marked page in its words, whatever its lines. */
const said = async (page: Page): Promise<string> =>
  (await page.getByRole('article').innerText()).replace(/\s+/g, ' ')

async function putInUse(page: Page): Promise<void> {
  await use(page).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Use it' }).click()
  await expect(page.getByText('is in use as it stands here', { exact: false })).toBeVisible()
}

/** Presses Tab until the thing has the focus, as someone without a mouse does. */
async function tabTo(page: Page, wanted: Locator, key = 'Tab'): Promise<void> {
  await wanted.waitFor()
  for (let stops = 0; stops < 150; stops += 1) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press(key)
  }
  throw new Error(`${String(wanted)} cannot be reached with ${key}`)
}

test('every state of the page is sound at 390 px', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await openPoint(page, first.ref)
  await expectSound(page)
  await page.getByLabel('Try a sentence').fill('The waves come in at an angle')
  await expect(page.getByText('said:', { exact: true }).first()).toBeVisible()
  await page.getByRole('button', { name: 'a value', exact: true }).click()
  await page.getByLabel(/^Value, its unit/).fill('fast')
  await expect(page.getByText(/A number was expected/)).toBeVisible()
  await expectSound(page)
  await use(page).click()
  await expect(page.getByText(/1 mistake to put right/)).toBeFocused()
  await page.getByRole('button', { name: 'Undo' }).click()
  await textField(page).fill('Waves run up the beach at a slant.')
  await use(page).click()
  await expect(page.getByRole('dialog')).toBeVisible()
  await expectSound(page)
})

test('a point is changed, tried, taken back, done again and put in use by keyboard alone', async ({
  page,
}) => {
  await page.goto('/syllabi')
  const row = page.getByRole('listitem', { name: 'Shoreline Science, Level 2' })
  await tabTo(page, row.getByRole('button', { name: 'Add' }))
  await page.keyboard.press('Enter')
  await tabTo(page, row.getByRole('link', { name: 'Edit' }))
  await page.keyboard.press('Enter')

  const topics = page.getByRole('navigation', { name: 'Topics of this syllabus' })
  await tabTo(page, topics.getByRole('button', { name: topic.title }))
  await page.keyboard.press('Enter')
  await tabTo(page, line(page, first.ref))
  await page.keyboard.press('Enter')
  await tabTo(page, textField(page))
  await page.keyboard.press('Control+a')
  await page.keyboard.type('Groynes hold the sand.')
  await page.keyboard.press('Control+z')
  await expect(textField(page)).toHaveValue(first.text)
  await page.keyboard.press('Control+Shift+z')
  await expect(textField(page)).toHaveValue('Groynes hold the sand.')

  await tabTo(page, page.getByLabel('Try a sentence'))
  await page.keyboard.type('Something else altogether')
  await expect(page.getByText('Missed.', { exact: true })).toBeVisible()
  await tabTo(page, use(page), 'Shift+Tab')
  await page.keyboard.press('Enter')
  const yes = page.getByRole('dialog').getByRole('button', { name: 'Use it' })
  await tabTo(page, yes)
  await page.keyboard.press('Enter')
  await expect(page.getByText('is in use as it stands here', { exact: false })).toBeVisible()
})

test('a reload in the middle loses nothing, and nothing of it is in use yet', async ({ page }) => {
  await openPoint(page, first.ref)
  await textField(page).fill('Something quite different.')
  await expect(page.getByText('Kept here, not in use yet.')).toBeVisible()
  await page.reload()
  await expect(page.getByText(/^You go on where you left off/)).toBeVisible()
  await page.getByRole('button', { name: topic.title }).click()
  await line(page, first.ref).click()
  await expect(textField(page)).toHaveValue('Something quite different.')

  await writeAndMark(page, first.text)
  await expect(page.getByRole('article')).not.toContainText('Something quite different.')
})

test('an old check stays as it was; the point whose meaning changed begins anew', async ({
  page,
}) => {
  await writeAndMark(page, topic.points.map(({ text }) => text).join('\n'))
  const marked = page.url()
  const before = await said(page)

  await openPoint(page, first.ref)
  await textField(page).fill('Groynes hold the sand that drifts along.')
  await use(page).click()
  const question = page.getByRole('dialog')
  await expect(question).toContainText('Your check of it stays')
  await expect(question).toContainText(
    `begins anew, because what is asked has changed: ${first.ref}`,
  )
  await question.getByRole('button', { name: 'Use it' }).click()
  await expect(page.getByText('is in use as it stands here', { exact: false })).toBeVisible()

  await page.goto(marked)
  await expect(page.getByRole('heading', { level: 1, name: topic.title })).toBeVisible()
  expect(await said(page)).toBe(before)

  await page.goto(topic.atHome)
  const rows = page.getByRole('table').getByRole('row')
  await expect(rows.filter({ hasText: topic.points[1]!.ref })).toHaveCount(1)
  await expect(page.getByRole('rowheader', { name: first.ref, exact: true })).toHaveCount(0)
})

test('the user’s copy stands in for the shipped one, and there is a way back', async ({ page }) => {
  await openPoint(page, first.ref)
  await page.getByLabel('Title of the topic').fill('Drift along the shore')
  await expect(use(page)).toBeEnabled()
  await putInUse(page)
  await page.goto('/')
  await expect(page.getByRole('link', { name: 'Check Drift along the shore' })).toBeVisible()
  await page.goto(EDIT)
  await page.getByRole('button', { name: 'Go back to that one' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Go back' }).click()
  await expect(page.getByText('is in use again', { exact: false })).toBeVisible()
  await page.goto('/')
  await page.getByText(/other topics of Shoreline Science/).click()
  await expect(page.getByRole('link', { name: `Check ${topic.title}`, exact: true })).toBeVisible()
})

test('markup in a field is text wherever it goes', async ({ page }) => {
  const script = '<img src="ran.png" onerror="window.ran = true">'
  await openPoint(page, first.ref)
  await textField(page).fill(script)
  await page.getByLabel('Title of the topic').fill(script)
  await page.getByLabel('Try a sentence').fill(script)
  await expect(page.getByRole('heading', { level: 2, name: script })).toBeVisible()
  await expect(line(page, first.ref)).toContainText(script)
  expect(await page.evaluate(() => 'ran' in window)).toBe(false)
  await expect(page.locator('main img')).toHaveCount(0)
})

/** Today and a syllabus, from the first day to sixty topics; settings by keyboard. */
import {
  expect,
  expectNoSideways,
  expectNoViolations,
  expectSoundAt,
  test,
  topic,
  writingPage,
} from './app'
import { seedLongHistory, SYLLABUS_ID } from './seed'

const WIDTHS = [390, 320, 1440] as const

test('the first screen says what to do, and one press later is a check', async ({ page }) => {
  await page.goto('/')
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What do you remember?')
  await page.getByRole('link', { name: /^Try it on/ }).click()
  await expect(writingPage(page)).toBeFocused()
})

test('where the browser keeps nothing, the first day says so and leads to a check all the same', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('The operation is insecure.', 'SecurityError')
    }
  })
  await page.goto('/')
  await expect(page.getByRole('alert')).toContainText('does not let Second Ink keep anything')
  await expectNoViolations(page)
  await page.getByRole('link', { name: /^Try it on/ }).click()
  await expect(writingPage(page)).toBeFocused()
})

test('a page that was begun is gone on with', async ({ page }) => {
  await page.goto(topic.check)
  await writingPage(page).fill('Waves come in at an angle.')
  await expect(page.getByText('Kept', { exact: true })).toBeVisible()
  await page.goto('/')
  const begun = page.getByRole('region', { name: 'A page you have begun' })
  await begun.getByRole('link', { name: /^Go on writing/ }).click()
  await expect(writingPage(page)).toHaveValue('Waves come in at an angle.')
})

test('sixty topics: sound at every width, and rated by keyboard, the cursor going with it', async ({
  page,
}) => {
  await seedLongHistory(page)
  await page.goto('/')
  const due = page.getByRole('region', { name: /^Due as well/ })
  await expect(due.getByRole('listitem')).toHaveCount(8)
  await expect(page.getByRole('region', { name: 'Exams' })).toContainText('in 40 days')
  await expectSoundAt(page, WIDTHS)
  await due.getByRole('button', { name: /^Show all/ }).click()
  await expect(due.getByRole('button', { name: /^Show all/ })).toHaveCount(0)
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 844 })
    await expectNoSideways(page)
  }

  await page.reload()
  const choice = page
    .getByRole('region', { name: /^Due as well/ })
    .getByRole('combobox')
    .nth(2)
  const id = await choice.getAttribute('id')
  await choice.focus()
  await page.keyboard.press('h')
  await expect(page.getByText(/is hard for you\. Kept/)).toBeAttached()
  await expect(page.locator(`[id="${id}"]`)).toBeFocused()
  await page.reload()
  await expect(page.locator(`[id="${id}"]`)).toHaveValue('hard')

  await page.goto(`/syllabus?syllabus=${SYLLABUS_ID}`)
  const map = page.getByRole('region', { name: 'The whole at a glance' })
  await expect(map.getByRole('link')).toHaveCount(60)
  await expectSoundAt(page, WIDTHS)

  await page.goto('/settings')
  await page.getByRole('button', { name: 'Add an exam' }).click()
  await page.getByLabel('only some topics').check()
  await expectSoundAt(page, WIDTHS)
})

test('a setting holds after a reload', async ({ page }) => {
  await page.goto('/settings#exams')
  await expect(page.getByRole('heading', { name: 'Exams' })).toBeFocused()
  const sessions = page.getByLabel('Full sessions in a row')
  await sessions.fill('4')
  await sessions.press('Tab')
  await expect(page.getByText('Kept: 4 full in a row.')).toBeVisible()
  await page.reload()
  await expect(page.getByLabel('Full sessions in a row')).toHaveValue('4')
})

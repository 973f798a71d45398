/** The night before: an exam, the minutes, the list, the clock, and the page that is left. */
import type { Page } from '@playwright/test'
import { expect, expectSound, test, topic } from './app'
import { expectKept } from './records'

async function choose(page: Page, minutes: string): Promise<void> {
  await page.goto('/tonight')
  await page.getByLabel(/^Minutes/).fill(minutes)
  await page.getByLabel(topic.title).check()
}

test('from the list to the page that is printed', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await choose(page, '3')
  await expect(page.locator('section').getByRole('status')).toHaveText(
    /2 points of 12, 90 seconds\s+each\.\s+10 points will not be asked\./,
  )
  await expectSound(page)
  await page.getByRole('button', { name: 'Begin' }).click()
  const answer = page.getByRole('textbox', { name: 'Your answer' })
  await expect(answer).toBeFocused()
  expect(await page.content()).not.toContain(topic.points[0]!.text)
  await expectSound(page)
  await answer.fill(topic.points[0]!.text)
  await page.keyboard.press('Control+Enter')
  await page.getByRole('button', { name: 'Go on' }).press('Enter')
  await page.getByRole('button', { name: 'See the point' }).click()
  await expect(page.getByText('It comes round again.', { exact: true })).toBeVisible()
  await page.getByRole('button', { name: 'End it here' }).click()
  await expect(page.getByRole('heading', { name: 'Still does not come' })).toBeVisible()
  await expect(page.getByText(/Sleep after this is worth more/)).toBeVisible()
  await expectSound(page)
  await page.emulateMedia({ media: 'print' })
  await expect(page.getByText(topic.points[1]!.text)).toBeVisible()
  await expect(page.getByRole('heading', { name: 'Got back' })).toBeHidden()
  await expect(page.getByRole('button')).toHaveCount(0)
})

test('it goes on after a reload; the pause hides the cue', async ({ page }) => {
  await choose(page, '3')
  await page.getByRole('button', { name: 'Begin' }).click()
  await page.getByRole('textbox', { name: 'Your answer' }).fill('Waves come')
  await expectKept(page, 'round', '"typing":["Waves come"]')
  await page.reload()
  await expect(page.getByRole('textbox', { name: 'Your answer' })).toHaveValue('Waves come')
  await page.getByRole('button', { name: 'Pause' }).press('Enter')
  await expect(page.getByRole('textbox')).toHaveCount(0)
  await expect(page.getByRole('button', { name: 'Go on' })).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(page.getByRole('textbox', { name: 'Your answer' })).toHaveValue('Waves come')
})

test('an exam is added here and chosen', async ({ page }) => {
  await page.goto('/tonight')
  await page.getByRole('button', { name: 'Add an exam' }).click()
  await page.getByLabel('Day of the exam').fill('2099-06-01')
  await page.getByLabel(/What it is called/).fill('Paper 1')
  await page.getByRole('button', { name: 'Keep this exam' }).click()
  await expect(page.getByLabel('For')).toContainText('Paper 1')
  await expect(page.getByLabel('For')).toHaveValue('0')
})

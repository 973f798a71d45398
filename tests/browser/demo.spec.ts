/** An empty app, three months of an invented pupil on it, and gone again. */
import { expect, expectNoSideways, test } from './app'

const banner = 'aside[aria-label="Demo"]'

test('one button fills every page, one tap empties them again', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await page.goto('/data')
  await page.getByRole('button', { name: 'Load the demo' }).click()
  await expect(page.locator(banner)).toBeVisible()
  for (const path of ['/', '/plan', '/syllabi', '/papers', '/data']) {
    await page.goto(path)
    await expect(page.locator(banner)).toContainText('invented pupil')
    await expectNoSideways(page)
  }
  await page.goto('/topic?syllabus=demo%3Ashoreline-science-level-2&topic=longshore-drift')
  await expect(page.getByText('Reopened').first()).toBeVisible()
  await expect(page.getByText('(demo)').first()).toBeVisible()

  await page.getByRole('button', { name: 'Remove the demo' }).click()
  await expect(page.locator(banner)).toHaveCount(0)
  await page.goto('/data')
  await expect(page.getByText('Nothing yet.', { exact: false })).toBeVisible()
})

test('stopped while it is loading, nothing of it is kept', async ({ page }) => {
  await page.goto('/data')
  // The marker's worker never comes, so that there is time to stop.
  await page.route(/worker/, () => undefined)
  await page.getByRole('button', { name: 'Load the demo' }).click()
  await page.getByRole('button', { name: 'Stop', exact: true }).click()
  await expect(page.getByText('Stopped. Nothing was kept.')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Load the demo' })).toBeEnabled()
  await page.reload()
  await expect(page.getByText('Nothing yet.', { exact: false })).toBeVisible()
  await expect(page.locator(banner)).toHaveCount(0)
})

/** A topic with three dozen checks behind it: the chart, the grid, the way to each check as it was marked. */
import type { Page } from '@playwright/test'
import { expect, expectNoSideways, expectNoViolations, test } from './app'
import { seedLongHistory, topicHref } from './seed'

const grid = (page: Page) => page.getByRole('region', { name: 'Points by day' })
const chart = (page: Page) => page.getByRole('img', { name: /^Recall over time/ })

/** Pairs of words of the chart that lie on one another. */
const collisions = (page: Page) =>
  chart(page).evaluate((svg) => {
    const labels = [...svg.querySelectorAll('text')].filter((label) => label.textContent !== '')
    return labels.flatMap((label, i) =>
      labels.slice(i + 1).flatMap((other) => {
        const [a, b] = [label.getBoundingClientRect(), other.getBoundingClientRect()]
        const apart =
          a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top
        return apart ? [] : [`${label.textContent} on ${other.textContent}`]
      }),
    )
  })

test('is sound at every width, its labels stand apart, and the newest day is in sight', async ({
  page,
}) => {
  await seedLongHistory(page)
  await page.goto(topicHref)
  for (const [width, colorScheme] of [
    [320, 'dark'],
    [390, 'light'],
    [820, 'dark'],
    [1440, 'light'],
  ] as const) {
    await page.setViewportSize({ width, height: 844 })
    await page.emulateMedia({ colorScheme })
    await expect(chart(page)).toBeVisible()
    await expectNoSideways(page)
    await expectNoViolations(page)
    await expect.poll(() => collisions(page)).toEqual([])
    const newest = grid(page).getByRole('columnheader').nth(1)
    await newest.scrollIntoViewIfNeeded()
    const box = (await newest.boundingBox())!
    expect(box.x).toBeGreaterThan(0)
    expect(box.x + box.width).toBeLessThan(width)
  }
})

test('by keyboard the days of the grid open the page as it was marked then', async ({ page }) => {
  await seedLongHistory(page)
  await page.goto(topicHref)
  await grid(page).focus()
  await page.keyboard.press('Tab')
  await expect(grid(page).getByRole('columnheader').nth(1).getByRole('link')).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(page).toHaveURL(/\/marked\?check=check-/)
  await expect(
    page.getByRole('heading', { level: 1, name: 'Stretch 7 of the shore' }),
  ).toBeVisible()
})

test('on paper the chart keeps its width and its lines, in ink that grey print shows', async ({
  page,
}) => {
  await seedLongHistory(page)
  // The width of A4 between the margins of the page.
  await page.setViewportSize({ width: 672, height: 970 })
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
  await page.goto(topicHref)
  await expect(chart(page)).toBeVisible()
  await expectNoSideways(page)
  await expect.poll(() => collisions(page)).toEqual([])
  const stroke = await chart(page)
    .locator('path.said')
    .first()
    .evaluate((path) => getComputedStyle(path).stroke)
  expect(stroke).toBe('rgb(0, 0, 0)')
  await expect(page.getByRole('button', { name: 'Print this page' })).toBeHidden()
})

/** A topic with three dozen checks behind it: the chart, the grid, the way to each check as it was marked. */
import type { Page } from '@playwright/test'
import { expect, expectNoSideways, expectSoundAt, test } from './app'
import { seedLongHistory, topicHref } from './seed'

const WIDTHS = [320, 390, 820, 1440] as const
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

test('sound at every width, with labels that stand apart; its days open by keyboard; on paper in ink', async ({
  page,
}) => {
  await seedLongHistory(page)
  await page.goto(topicHref)
  await expect(chart(page)).toBeVisible()
  await expectSoundAt(page, WIDTHS)
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 844 })
    await expect.poll(() => collisions(page)).toEqual([])
    // The newest day is in sight.
    const newest = grid(page).getByRole('columnheader').nth(1)
    await newest.scrollIntoViewIfNeeded()
    const box = (await newest.boundingBox())!
    expect(box.x).toBeGreaterThan(0)
    expect(box.x + box.width).toBeLessThan(width)
  }

  await grid(page).focus()
  await page.keyboard.press('Tab')
  await expect(grid(page).getByRole('columnheader').nth(1).getByRole('link')).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(page).toHaveURL(/\/marked\?check=check-/)
  await expect(
    page.getByRole('heading', { level: 1, name: 'Stretch 7 of the shore' }),
  ).toBeVisible()

  // The chart keeps its width and its lines on the width of A4 between the margins of the page, in ink that grey print shows.
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

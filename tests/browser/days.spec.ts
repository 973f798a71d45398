/** A topic over several days, with the clock moved: gaps, full, finished, reopened, and what the pages say then. */
import type { Page } from '@playwright/test'
import { expect, someOfIt, test, topic, writeAndMark } from './app'

const allOfIt = topic.points.map(({ text }) => text).join('\n')

/** Noon in London on a day of March 2027. */
const onDay = (page: Page, day: number) =>
  page.clock.setFixedTime(`2027-03-${String(day).padStart(2, '0')}T12:00:00Z`)

/** Both the page of the topic and the front page say it. */
async function expectStatus(page: Page, said: RegExp): Promise<void> {
  await page.goto(topic.atHome)
  await expect(page.getByRole('heading', { level: 1, name: topic.title })).toBeVisible()
  await expect(page.locator('main')).toContainText(said)
  await page.goto('/')
  await expect(page.getByRole('link', { name: topic.title, exact: true }).first()).toBeAttached()
  await expect(page.locator('main')).toContainText(said)
}

test('gaps, full on three days, finished, reopened', async ({ page }) => {
  await onDay(page, 1)
  await writeAndMark(page, someOfIt)
  await expectStatus(page, /\bGaps\b/)

  // The same day again: the answers have just been seen, so that it changes nothing.
  await writeAndMark(page, allOfIt)
  await expectStatus(page, /\bGaps\b/)

  await onDay(page, 2)
  await writeAndMark(page, allOfIt)
  await expectStatus(page, /Full, not yet finished/)

  await onDay(page, 5)
  await writeAndMark(page, allOfIt)
  await expectStatus(page, /Full, not yet finished/)

  await onDay(page, 9)
  await writeAndMark(page, allOfIt)
  await expectStatus(page, /\bFinished\b/)

  await onDay(page, 16)
  await writeAndMark(page, someOfIt)
  await expectStatus(page, /\bReopened\b/)

  await page.goto(topic.atHome)
  await expect(
    page
      .locator('section')
      .filter({ has: page.getByRole('heading', { name: 'Checks' }) })
      .getByRole('listitem'),
  ).toHaveCount(6)
})

/** The whole path of a student on a phone, each page of it sound at three widths; anyone.spec.ts has every page and state. */
import type { Page } from '@playwright/test'
import {
  changeMark,
  expect,
  expectMarked,
  expectSoundAt,
  markWord,
  pointNote,
  someOfIt,
  test,
  topic,
  writeAndMark,
  writingPage,
} from './app'

const WIDTHS = [390, 820, 1440] as const

test('from the front page to a second check beside the first', async ({ page }) => {
  await page.setViewportSize({ width: WIDTHS[0], height: 900 })
  await page.goto('/')
  await page.getByText(/other topics of Shoreline Science/).click()
  await expectSoundAt(page, WIDTHS)
  await page.getByRole('link', { name: `Check ${topic.title}`, exact: true }).click()

  await expect(writingPage(page)).toBeFocused()
  await expectNoPointInDocument(page)
  await writingPage(page).fill(someOfIt)
  await expectSoundAt(page, WIDTHS)
  await page.getByRole('button', { name: 'Stop and mark' }).click()

  await expectMarked(page)
  for (const { ref } of topic.points) await expect(pointNote(page, ref)).toBeVisible()
  await expectSoundAt(page, WIDTHS)
  const { ref } = topic.points[0]!
  const mark = await changeMark(page, ref)
  await markWord(page, ref).click()
  await expectSoundAt(page, WIDTHS)
  await page.reload()
  await expect(markWord(page, ref)).toContainText(new RegExp(`^\\s*${mark}`, 'i'))

  await writeAndMark(page, topic.points.map(({ text }) => text).join('\n'))
  await page.getByRole('link', { name: 'How this topic is going' }).click()
  await expect(page.getByRole('heading', { level: 1, name: topic.title })).toBeVisible()
  const checks = page
    .locator('section')
    .filter({ has: page.getByRole('heading', { name: 'Checks' }) })
  await expect(checks.getByRole('listitem')).toHaveCount(2)
  await expect(checks.getByRole('link')).toHaveCount(2)
  await expectSoundAt(page, WIDTHS)
  await checks.getByRole('link').first().click()
  await expectMarked(page)
})

test('Control and Enter stops and marks, from the middle of the page', async ({ page }) => {
  await page.goto(topic.check)
  await writingPage(page).fill(someOfIt)
  await writingPage(page).press('Control+Enter')
  await expectMarked(page)
})

/** Closed book: not hidden, not there. */
async function expectNoPointInDocument(page: Page): Promise<void> {
  const document = await page.content()
  for (const { text } of topic.points) expect(document).not.toContain(text)
}

import type { Locator, Page } from '@playwright/test'
import { anotherMark, expect, expectMarked, markWord, test, topic, writingPage } from './app'

const MOST_STOPS = 120

/** Presses Tab until the thing has the focus, as someone without a mouse does. */
async function tabTo(page: Page, wanted: Locator): Promise<void> {
  await wanted.waitFor()
  for (let stops = 0; stops < MOST_STOPS; stops += 1) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`${String(wanted)} cannot be reached with Tab`)
}

test('the whole path by keyboard alone', async ({ page }) => {
  await page.goto('/')
  await tabTo(page, page.getByText(/other topics of Shoreline Science/))
  await page.keyboard.press('Enter')
  await tabTo(page, page.getByRole('link', { name: `Check ${topic.title}`, exact: true }))
  await page.keyboard.press('Enter')

  await expect(writingPage(page)).toBeFocused()
  await page.keyboard.type('The waves come in at an angle.')
  await tabTo(page, page.getByRole('button', { name: 'Stop and mark' }))
  await page.keyboard.press('Enter')
  await expectMarked(page)

  const { ref } = topic.points[1]!
  const mark = await anotherMark(page, ref)
  await tabTo(page, markWord(page, ref))
  await page.keyboard.press('Enter')
  await tabTo(
    page,
    page
      .getByRole('group', { name: `Your mark for point ${ref}` })
      .getByRole('button', { name: mark }),
  )
  await page.keyboard.press('Enter')
  await expect(markWord(page, ref)).toContainText(new RegExp(`^\\s*${mark}`, 'i'))
  await expect(markWord(page, ref)).toBeFocused()

  await tabTo(page, page.getByRole('link', { name: 'How this topic is going' }))
  await page.keyboard.press('Enter')
  await expect(page.getByRole('heading', { level: 1, name: topic.title })).toBeVisible()
})

test('Escape closes the choice of marks and changes nothing', async ({ page }) => {
  await page.goto(topic.check)
  await writingPage(page).fill(topic.points[0]!.text)
  await page.keyboard.press('Control+Enter')
  await expectMarked(page)
  const word = markWord(page, topic.points[0]!.ref)
  const before = await word.innerText()
  await word.focus()
  await page.keyboard.press('Enter')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Escape')
  await expect(page.getByRole('group', { name: /^Your mark for point/ })).toHaveCount(0)
  await expect(word).toBeFocused()
  expect(await word.innerText()).toBe(before)
})

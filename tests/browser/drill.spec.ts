/** The gap drill: cue first, out of the pile only when written in full, kept at every moment. */
import type { Page } from '@playwright/test'
import { expect, expectSound, someOfIt, test, topic, writeAndMark } from './app'
import { expectKept } from './records'

const DRILL =
  '/drill?syllabus=shoreline-science-level-2&points=longshore-drift%3A2.1%2Clongshore-drift%3A2.2'
const answer = (page: Page) => page.getByRole('textbox', { name: 'Your answer' })
const textOf = (ref: string) => topic.points.find((point) => point.ref === ref)!.text

/** The number of the point that is asked. */
async function asked(page: Page): Promise<string> {
  const said = await page.getByText(/^Longshore drift, point /).innerText()
  return said.replace('Longshore drift, point ', '')
}

test('missed, seen, written in full, and the end of it', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await page.goto(DRILL)
  await expect(answer(page)).toBeFocused()
  const first = await asked(page)
  expect(await page.content()).not.toContain(textOf(first))
  await expectSound(page)
  await page.getByRole('button', { name: 'See the point' }).click()
  await expect(page.getByRole('note', { name: `Point ${first}` })).toContainText(textOf(first))
  await expect(page.getByText('It comes round again.', { exact: true })).toBeVisible()
  await expectSound(page)
  await page.getByRole('button', { name: 'Go on' }).click()
  await expect(page.getByText(/^Longshore drift, point /)).not.toContainText(first)
  for (const left of ['1 point left', 'end']) {
    await answer(page).fill(textOf(await asked(page)))
    await page.getByRole('button', { name: 'Mark it' }).click()
    await expect(page.getByText('It leaves the pile.', { exact: true })).toBeVisible()
    await page.getByRole('button', { name: /Go on|See what came back/ }).click()
    if (left !== 'end')
      await expect(page.locator('main').getByText(left, { exact: true }).first()).toBeVisible()
  }
  await expect(page.getByText('2 points of 2 written in full.')).toBeVisible()
  await expectSound(page)
  await page.getByRole('link', { name: /how it is going/ }).click()
  await expect(page.getByRole('heading', { level: 1, name: topic.title })).toBeVisible()
})

test('what is typed, and the pile, are there after a reload', async ({ page }) => {
  await page.goto(DRILL)
  const ref = await asked(page)
  await answer(page).fill('Waves come in at')
  await expectKept(page, 'round', '"typing":["Waves come in at"]')
  await page.reload()
  await expect(answer(page)).toHaveValue('Waves come in at')
  expect(await asked(page)).toBe(ref)
  await page.getByRole('button', { name: 'Mark it' }).click()
  await expect(page.getByText('You wrote')).toBeVisible()
  await page.reload()
  await expect(page.getByText('You wrote')).toBeVisible()
  await page.goto('/drill')
  await page.getByRole('link', { name: /chosen points/ }).click()
  await expect(page.getByText('You wrote')).toBeVisible()
})

test('by the keyboard alone, with the last word on a mark', async ({ page }) => {
  await page.goto(DRILL)
  await expect(answer(page)).toBeFocused()
  await page.keyboard.type('Nothing')
  await page.keyboard.press('Enter')
  await page.keyboard.type('of it.')
  await expect(answer(page)).toHaveValue('Nothing\nof it.')
  await page.keyboard.press('Control+Enter')
  await expect(page.getByRole('button', { name: 'Go on' })).toBeFocused()
  await expect(page.getByRole('status').first()).toContainText(
    /It comes round again. 2 points left/,
  )
  const word = page.getByRole('button', { name: /change the mark of point/ })
  await word.focus()
  await page.keyboard.press('Enter')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('status').first()).toContainText(/It leaves the pile. 1 point left/)
  await page.getByRole('button', { name: 'Go on' }).focus()
  await page.keyboard.press('Enter')
  await expect(answer(page)).toBeFocused()
})

test('from a marked page: the steps of a method are asked in order', async ({ page }) => {
  await writeAndMark(page, someOfIt)
  await page.getByRole('link', { name: 'Write only the gaps' }).click()
  await expect(page.getByRole('textbox')).toBeFocused()
  const step = page.getByRole('textbox', { name: 'Step 1 of 4' })
  for (let i = 0; i < topic.points.length && (await step.count()) === 0; i += 1) {
    await page.getByRole('button', { name: 'See the point' }).click()
    await page.getByRole('button', { name: 'Go on' }).click()
    await expect(page.getByRole('textbox')).toBeFocused()
  }
  for (const [i, said] of [
    'Mark a pebble',
    'Place it at the waterline',
    'Wait an hour',
    'Measure the distance',
  ].entries()) {
    await page.getByRole('textbox', { name: `Step ${i + 1} of 4` }).fill(said)
    await page.keyboard.press('Control+Enter')
  }
  await expect(page.getByText('It leaves the pile.', { exact: true })).toBeVisible()
})

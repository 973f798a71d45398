import { expect, expectMarked, someOfIt, test, topic, writeAndMark, writingPage } from './app'

test('marking is done in a worker, which ends with the job', async ({ page }) => {
  const started = page.waitForEvent('worker')
  await writeAndMark(page, someOfIt)
  expect((await started).url()).toContain('marking.worker')
  await expect.poll(() => page.workers()).toEqual([])
})

test('where no worker can start, the page is marked all the same', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'Worker', {
      value: class {
        constructor() {
          throw new DOMException('Workers are blocked here.', 'SecurityError')
        }
      },
    })
  })
  await writeAndMark(page, someOfIt)
})

test('nothing of the points is in the document while the page is written on', async ({ page }) => {
  await page.goto(topic.check)
  await writingPage(page).fill('waves')
  await expect(page.getByText('Kept', { exact: true })).toBeVisible()
  const all = (await page.content()).replace(/\s+/g, ' ').toLowerCase()
  expect(all).toContain(`${topic.points.length} points`)
  expect(topic.points.filter(({ text }) => all.includes(text.toLowerCase()))).toEqual([])
})

test('two windows on one page: the second is told, and can be marked', async ({
  page,
  context,
}) => {
  await page.goto(topic.check)
  await expect(writingPage(page)).toBeFocused()
  const second = await context.newPage()
  await second.goto(topic.check)
  await expect(second.getByText('open in another window')).toBeVisible()
  await writingPage(second).fill(someOfIt)
  await second.getByRole('button', { name: 'Stop and mark' }).click()
  await expectMarked(second)
})

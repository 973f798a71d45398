import { expect, someOfIt, test, topic, writingPage } from './app'

test('a draft is there after a reload', async ({ page }) => {
  await page.goto(topic.check)
  await writingPage(page).fill(someOfIt)
  // At most a second of writing may be lost; what the page says is kept is kept.
  await expect(page.getByText('Kept', { exact: true })).toBeVisible()
  await page.reload()
  await expect(writingPage(page)).toHaveValue(someOfIt)
})

test('a draft is there after the page was closed', async ({ page, context }) => {
  await page.goto(topic.check)
  await writingPage(page).fill('Waves come in at an angle.')
  await expect(page.getByText('Kept', { exact: true })).toBeVisible()
  await page.close()
  const again = await context.newPage()
  await again.goto(topic.check)
  await expect(writingPage(again)).toHaveValue('Waves come in at an angle.')
})

test('a page that is thrown away is gone, after one question', async ({ page }) => {
  await page.goto(topic.check)
  await writingPage(page).fill('Waves come in at an angle.')
  await page.getByRole('button', { name: 'Throw the page away' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Throw it away' }).click()
  await expect(writingPage(page)).toHaveCount(0)
  await page.goto(topic.check)
  await expect(writingPage(page)).toHaveValue('')
})

test('what is typed before the app is there goes on from the draft, and is kept', async ({
  page,
}) => {
  await page.goto(topic.check)
  await writingPage(page).fill('Waves come in')
  await expect(page.getByText('Kept', { exact: true })).toBeVisible()

  let letThrough = () => {}
  const late = new Promise<void>((done) => (letThrough = done))
  await page.route('**/*.js', async (route) => {
    await late
    await route.continue()
  })
  const opened = page.goto(topic.check)
  await expect(writingPage(page)).toHaveValue('')
  await expect(writingPage(page)).toBeFocused()
  await page.keyboard.type('at an angle')
  await expect(writingPage(page)).toHaveValue('at an angle')
  letThrough()
  await opened
  await expect(page.getByRole('heading', { name: topic.title })).toBeVisible()
  await expect(writingPage(page)).toHaveValue('Waves come in\nat an angle')
  await expect(page.getByText('Kept', { exact: true })).toBeVisible()
  await page.reload()
  await expect(writingPage(page)).toHaveValue('Waves come in\nat an angle')
})

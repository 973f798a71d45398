import {
  changeMark,
  expect,
  expectMarked,
  someOfIt,
  test,
  topic,
  writeAndMark,
  writingPage,
} from './app'

test('an empty page is marked after one question, and every point is shown as missed', async ({
  page,
}) => {
  await page.goto(topic.check)
  await expect(writingPage(page)).toBeFocused()
  await page.keyboard.press('Control+Enter')
  await page.getByRole('dialog').getByRole('button', { name: 'Mark the empty page' }).click()
  await expectMarked(page)
  await expect(
    page.getByText(`0 of ${topic.points.length} points full`, { exact: false }).first(),
  ).toBeVisible()
  for (const { text } of topic.points) await expect(page.getByRole('article')).toContainText(text)
})

test('20,000 words are marked, and the page can be used', async ({ page }) => {
  const words: string[] = []
  while (words.length < 20_000) words.push(...topic.points.flatMap(({ text }) => text.split(' ')))
  const text = words.slice(0, 20_000).join(' ')
  await writeAndMark(page, text)
  await expect(page.getByRole('article')).toContainText('20,000 words')
  const { ref } = topic.points[0]!
  const mark = await changeMark(page, ref)
  await page.reload()
  await expectMarked(page)
  await expect(
    page.getByRole('button', { name: `: change the mark of point ${ref}` }).first(),
  ).toContainText(new RegExp(mark, 'i'))
})

test('where the browser keeps nothing, the page says so, is marked all the same and offers the text', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('The operation is insecure.', 'SecurityError')
    }
  })
  await page.goto(topic.check)
  await writingPage(page).fill(someOfIt)
  await expect(page.getByRole('alert')).toBeVisible()
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save my text as a file' }).click()
  expect(await textOf(await saving)).toBe(someOfIt)

  await page.getByRole('button', { name: 'Stop and mark' }).click()
  await expectMarked(page)
  await expect(page.getByRole('alert')).toContainText('not kept')
  const savingAgain = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save my text as a file' }).click()
  expect(await textOf(await savingAgain)).toBe(someOfIt)
})

async function textOf(download: { path(): Promise<string> }): Promise<string> {
  const { readFile } = await import('node:fs/promises')
  return readFile(await download.path(), 'utf8')
}

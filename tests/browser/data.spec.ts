import {
  expect,
  expectMarked,
  expectNoSideways,
  expectNoViolations,
  someOfIt,
  test,
  topic,
  writeAndMark,
} from './app'

test('a backup brings everything to another browser, and twice changes nothing', async ({
  page,
  browser,
}, testInfo) => {
  await writeAndMark(page, someOfIt)
  const score = await page
    .getByText(/points full/)
    .first()
    .innerText()
  await page.goto('/data')
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save a backup file' }).click()
  const backup = testInfo.outputPath('backup.json')
  await (await saving).saveAs(backup)

  const elsewhere = await browser.newContext({ baseURL: testInfo.project.use.baseURL! })
  const other = await elsewhere.newPage()
  await other.goto('/data')
  await expect(other.getByText('Nothing yet.', { exact: false })).toBeVisible()
  const open = () => other.getByLabel('Open a backup file').setInputFiles(backup)
  const preview = other.getByRole('region', { name: 'What backup.json would change' })
  const told = (words: string) => other.getByRole('status').filter({ hasText: words })
  await open()
  await expect(preview).toContainText('1 check: new')
  await expect(preview.getByRole('heading')).toBeFocused()
  await expect(other.getByText('Nothing yet.', { exact: false })).toBeVisible()
  await expectNoViolations(other)
  await expectNoSideways(other)
  await preview.getByRole('button', { name: 'Restore it' }).click()
  await expect(told('Restored')).toContainText('2 records added')
  await open()
  await expect(preview).toContainText('1 check: here already')
  await expect(preview.getByRole('button', { name: 'Restore it' })).toHaveCount(0)

  // Undone with one tap, after a reload as well.
  await other.reload()
  await other.getByRole('button', { name: 'Undo the last restore' }).click()
  await expect(told('Undone')).toContainText('2 records are as before the restore')
  await expect(other.getByText('Nothing yet.', { exact: false })).toBeVisible()
  await open()
  await preview.getByRole('button', { name: 'Restore it' }).click()
  await expect(told('Restored')).toContainText('2 records added')
  await expectNoViolations(other)

  await other.goto(topic.atHome)
  await other.locator('section').filter({ hasText: 'Checks' }).last().getByRole('link').click()
  await expectMarked(other)
  await expect(other.getByText(score).first()).toBeVisible()
  await elsewhere.close()
})

test('a file that is no backup changes nothing', async ({ page }) => {
  await page.goto('/data')
  await expect(page.getByText('Nothing yet.', { exact: false })).toBeVisible()
  const file = { name: 'mine.json', mimeType: 'application/json', buffer: Buffer.from('{"a": 1}') }
  await page.getByLabel('Open a backup file').setInputFiles(file)
  await expect(page.getByRole('alert')).toBeVisible()
  await expect(page.getByText('Nothing yet.', { exact: false })).toBeVisible()
})

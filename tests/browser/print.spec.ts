import { spawnSync } from 'node:child_process'
import { expect, expectMarked, test, topic, writingPage } from './app'

const oneLine = (text: string) => text.replace(/\s+/g, ' ')

test('what is printed has the text of every missed point', async ({ page }, testInfo) => {
  await page.goto(topic.check)
  await writingPage(page).press('Control+Enter')
  await page.getByRole('button', { name: 'Mark the empty page' }).click()
  await expectMarked(page)
  await page.emulateMedia({ media: 'print' })
  const printed = oneLine(await page.locator('body').innerText())
  for (const { text } of topic.points) expect(printed).toContain(text)

  const path = testInfo.outputPath('marked.pdf')
  await page.pdf({ path, format: 'A4' })
  const read = spawnSync('pdftotext', [path, '-'], { encoding: 'utf8' })
  if (read.error) {
    // Without poppler-utils the print view above is what was checked.
    testInfo.annotations.push({ type: 'note', description: 'pdftotext is not installed' })
    return
  }
  for (const { text } of topic.points) expect(oneLine(read.stdout)).toContain(text)
  expect(read.stdout).not.toContain('Stop and mark')
})

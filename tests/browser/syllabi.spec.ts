/** The shelf of syllabi in a real browser: looked at, added, taken off, removed, by mouse and by keyboard alone. */
import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { expect, expectNoViolations, expectSound, test, topic } from './app'
import { putRecords } from './records'

const SHORES = 'Shoreline Science, Level 2'
const OWN =
  'format: 1\ntitle: Rock pools\ntopics:\n  - title: Limpets\n    points:\n      - { ref: "1", text: Limpets graze algae. }\n'

const row = (page: Page, name: string) => page.getByRole('listitem', { name, exact: true })
const yours = (page: Page) => page.getByRole('region', { name: 'Yours' })

test('every state of the page is sound at 390 px', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await page.goto('/syllabi')
  await row(page, SHORES).waitFor()
  await expectSound(page)
  await row(page, SHORES).getByRole('button', { name: 'Look inside' }).click()
  await row(page, SHORES).getByRole('heading', { name: topic.title }).waitFor()
  await row(page, SHORES).getByText('Read the points').first().click()
  await expectSound(page)
  await row(page, SHORES).getByRole('button', { name: 'Add' }).click()
  await yours(page).getByRole('link', { name: SHORES, exact: true }).waitFor()
  await expectSound(page)
})

test('a shipped syllabus is added by keyboard alone, and is still added after a reload', async ({
  page,
}) => {
  await page.goto('/syllabi')
  const add = row(page, SHORES).getByRole('button', { name: 'Add' })
  await add.waitFor()
  for (let stops = 0; stops < 60; stops += 1) {
    if (await add.evaluate((element) => element === document.activeElement)) break
    await page.keyboard.press('Tab')
  }
  await page.keyboard.press('Enter')
  await expect(page.getByRole('status')).toContainText(`${SHORES} is added.`)
  await expect(page.getByRole('heading', { name: SHORES })).toBeFocused()
  await page.reload()
  await expect(yours(page).getByRole('link', { name: SHORES, exact: true })).toBeVisible()
})

test('no point is on the page until somebody looks', async ({ page }) => {
  await page.goto('/syllabi')
  await row(page, SHORES).waitFor()
  const before = await page.content()
  for (const { text } of topic.points) expect(before).not.toContain(text)
})

test('one is taken away: its own file byte for byte, a table, a package, and all of it on paper', async ({
  page,
}) => {
  await page.addInitScript(() => {
    window.print = () => document.body.setAttribute('data-printed', '')
  })
  await page.goto('/syllabi')
  await row(page, SHORES).getByText('Save, print or share').click()
  await expectNoViolations(page)
  const saved = async (name: string) => {
    const waiting = page.waitForEvent('download')
    await row(page, SHORES).getByRole('button', { name }).click()
    const download = await waiting
    return {
      name: download.suggestedFilename(),
      text: readFileSync(await download.path(), 'utf8'),
    }
  }
  const source = readFileSync('syllabi/shoreline-science-2.yaml', 'utf8')
  expect(await saved('Its own file')).toEqual({
    name: 'shoreline-science-level-2.yaml',
    text: source,
  })
  expect((await saved('A table')).text).toContain(topic.points[0]!.text)
  expect((await saved('Open standard')).text).toContain('"caseVersion": "1.1"')

  await row(page, SHORES).getByRole('button', { name: 'Print' }).click()
  await expect(page.locator('body[data-printed]')).toHaveCount(1)
  await page.emulateMedia({ media: 'print' })
  await expect(page.getByText(topic.points[0]!.text)).toBeVisible()
  await expect(page.getByRole('button')).toHaveCount(0)
  await page.emulateMedia({ media: 'screen' })
  await page.evaluate(() => dispatchEvent(new Event('afterprint')))
  await expect(row(page, SHORES).getByRole('button', { name: 'Print' })).toBeVisible()
})

test('the checks of a removed syllabus are found at the end of the page and open', async ({
  page,
}) => {
  await page.goto('/help')
  const points = [{ ref: '1', text: 'Limpets graze algae.', ideas: [] }]
  const topics = [{ id: 'limpets', title: 'Limpets', points }]
  const syllabus = { format: 1, id: 'rock-pools', title: 'Rock pools', topics }
  const record = { schema: 1, id: 'rock-pools', source: OWN, syllabus, addedAtMs: 1 }
  await putRecords(page, [['syllabus/rock-pools', record]])
  await page.goto('/check?syllabus=rock-pools&topic=limpets')
  await page.getByRole('textbox', { name: 'Your page' }).fill('Limpets graze algae.')
  await page.keyboard.press('Control+Enter')
  await expect(page).toHaveURL(/\/marked\?check=/)

  await page.goto('/syllabi')
  await row(page, 'Rock pools').getByRole('button', { name: 'Remove' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Remove it' }).click()
  const former = page.getByRole('region', { name: /no longer here/ })
  await expectNoViolations(page)
  await former.getByRole('link', { name: 'Limpets' }).click()
  await expect(page.getByRole('heading', { level: 1, name: 'Limpets' })).toBeVisible()
})

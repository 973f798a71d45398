/** Exam questions: logged, changed, taken back, told by topic, on tonight's list, and taken away as CSV. */
import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import papa from 'papaparse'
import { expect, expectNoSideways, expectSoundAt, test, topic } from './app'
import { expectKept, putRecords } from './records'

const title = topic.title
const marked = (page: Page, n = 0) => ({
  question: page.getByLabel('Its number on the paper').nth(n),
  topic: page.getByLabel('Topic', { exact: true }).nth(n),
  won: page.getByLabel('Marks won').nth(n),
  outOf: page.getByLabel('Out of').nth(n),
  words: page.getByLabel('In your own words').nth(n),
})

/** What the page says of the last change. */
const told = (page: Page) => page.locator('#told').getByRole('status')

async function begin(page: Page): Promise<void> {
  await page.goto('/papers')
  await page.getByRole('button', { name: 'Log a question or a paper' }).click()
  await expect(page.getByLabel('Paper', { exact: true })).toBeFocused()
}

/** One question of the topic, with its first point lost. */
async function logOne(page: Page, words = 'Forgot the wind.'): Promise<void> {
  await begin(page)
  await page.getByLabel('Paper', { exact: true }).fill('Harbour mock')
  const fields = marked(page)
  await fields.question.fill('3 (b)')
  await fields.topic.selectOption({ label: title })
  await fields.won.fill('2')
  await fields.outOf.fill('4,5')
  await page.getByRole('button', { name: 'Points it touched' }).click()
  const first = page.getByRole('group', { name: new RegExp(`^${topic.points[0]!.ref} `) })
  await first.getByLabel('lost a mark').check()
  await page.getByLabel('Known, but left out').check()
  await fields.words.fill(words)
  await page.getByRole('button', { name: 'Log it' }).click()
  await expect(told(page)).toContainText('Logged: Harbour mock, question 3 (b)')
}

test('a question is logged, told, and leads to what to do', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 900 })
  await page.goto('/papers')
  await expect(page.getByRole('button', { name: 'Log a question or a paper' })).toBeVisible()
  await expectSoundAt(page, [390, 1440])
  await begin(page)
  await page.getByRole('button', { name: 'Log it' }).click()
  await expect(page.getByRole('alert')).toContainText('Nothing is logged yet')
  await expect(page.getByLabel('Paper', { exact: true })).toBeFocused()
  await expectSoundAt(page, [390, 1440])

  await logOne(page)
  await expect(page.getByText('2 of 4.5 marks in 1 question of 1 paper.')).toBeVisible()
  const lost = page.getByRole('region', { name: 'Marks lost by topic' }).last()
  await expect(lost.getByRole('row', { name: title })).toContainText('2.5')
  await expect(lost.getByRole('link', { name: /^Drill/ })).toHaveAttribute('href', /\/drill\?/)
  await expect(lost.getByRole('link', { name: /^Sheet/ })).toHaveAttribute(
    'href',
    /\/sheet\?.*points=/,
  )
  await expect(page.getByRole('row', { name: /Known, but left out/ })).toContainText('1')
  await expectSoundAt(page, [390, 1440])
})

test('a whole paper is logged in one go, and taken back in one go', async ({ page }) => {
  await begin(page)
  await page.getByLabel('Paper', { exact: true }).fill('Harbour mock')
  for (const n of [0, 1, 2]) {
    if (n > 0) await page.getByRole('button', { name: 'Add another question' }).click()
    const fields = marked(page, n)
    await expect(n > 0 ? fields.question : page.getByLabel('Paper', { exact: true })).toBeFocused()
    await fields.question.fill(String(n + 1))
    if (n === 0) await fields.topic.selectOption({ label: title })
    await fields.won.fill(String(n))
    await fields.outOf.fill('3')
  }
  await page.getByRole('button', { name: 'Log 3 questions' }).click()
  await expect(told(page)).toContainText('3 questions of Harbour mock')
  await expect(page.getByText('3 of 9 marks in 3 questions of 1 paper.')).toBeVisible()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByText('Taken back: the log is as it was.')).toBeVisible()
  await expect(page.getByText(/marks in 3 questions/)).toHaveCount(0)
})

test('marks that cannot be are told at their field, and nothing is logged until they are put right', async ({
  page,
}) => {
  await begin(page)
  await page.getByLabel('Paper', { exact: true }).fill('Harbour mock')
  const { topic: topicField, won, outOf } = marked(page)
  await topicField.selectOption({ label: title })
  await won.fill('5')
  await outOf.fill('4')
  await page.getByRole('button', { name: 'Log it' }).click()
  await expect(won).toBeFocused()
  await expect(won).toHaveAccessibleDescription('You cannot win 5 marks out of 4.')
  await won.fill('4')
  await expect(won).toHaveAccessibleDescription('')
  await page.getByRole('button', { name: 'Log it' }).click()
  await expect(told(page)).toContainText('4 of 4 marks')
})

test('a half-written entry is there again after the page was closed', async ({ page, context }) => {
  await begin(page)
  await page.getByLabel('Paper', { exact: true }).fill('Harbour mock')
  await marked(page).words.fill('Read “not” as “now”.')
  await expectKept(page, 'entry', 'Read “not”')
  await page.close()
  const again = await context.newPage()
  await again.goto('/papers')
  await expect(again.getByLabel('Paper', { exact: true })).toHaveValue('Harbour mock')
  await expect(marked(again).words).toHaveValue('Read “not” as “now”.')
})

test('a logged question is changed and removed, each with a way back', async ({ page }) => {
  await logOne(page)
  await page.getByRole('button', { name: 'Change Harbour mock, question 3 (b)' }).click()
  await expect(marked(page).won).toHaveValue('2')
  await marked(page).won.fill('3')
  await page.getByRole('button', { name: 'Keep the change' }).click()
  await expect(page.getByText('3 of 4.5 marks in 1 question of 1 paper.')).toBeVisible()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByText('2 of 4.5 marks in 1 question of 1 paper.')).toBeVisible()
  await page.getByRole('button', { name: 'Remove Harbour mock, question 3 (b)' }).click()
  await expect(page.getByText(/marks in 1 question/)).toHaveCount(0)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByText('2 of 4.5 marks in 1 question of 1 paper.')).toBeVisible()
})

// The Open Worldwide Application Security Project, "CSV Injection": cells that begin with = + - @ or a tab.
test('the log is taken away as CSV (RFC 4180), harmless to a spreadsheet as OWASP describes', async ({
  page,
}) => {
  const words = '=HYPERLINK("x")\nand, "then"'
  await logOne(page, words)
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save the log as CSV' }).click()
  const text = await readFile(await (await saving).path(), 'utf8')
  expect(text.replace(/\r\n/g, '').includes('\r')).toBe(false)
  const { data, errors } = papa.parse<Record<string, string>>(text, {
    header: true,
    skipEmptyLines: true,
  })
  expect(errors).toEqual([])
  expect(data).toHaveLength(1)
  expect(data[0]).toMatchObject({
    Paper: 'Harbour mock',
    Question: '3 (b)',
    Topic: title,
    'Marks won': '2',
    'Marks out of': '4.5',
    'Points that lost a mark': topic.points[0]!.ref,
    'What went wrong': 'Known, but left out',
    'In my own words': `'${words}`,
  })
})

test('by keyboard alone', async ({ page }) => {
  await page.goto('/papers')
  await page.getByRole('button', { name: 'Log a question or a paper' }).focus()
  await page.keyboard.press('Enter')
  await expect(page.getByLabel('Paper', { exact: true })).toBeFocused()
  await page.keyboard.type('Harbour mock')
  await page.keyboard.press('Tab')
  await page.keyboard.type('7')
  await page.keyboard.press('Tab')
  await page.keyboard.type(title)
  await page.keyboard.press('Tab')
  await page.keyboard.type('1')
  await page.keyboard.press('Tab')
  await page.keyboard.type('2')
  await page.keyboard.press('Enter')
  await expect(told(page)).toContainText('Logged: Harbour mock, question 7')
  await page.keyboard.press('Tab')
  await expect(page.getByRole('button', { name: 'Undo' })).toBeFocused()
})

test('where the browser keeps nothing, it says so and what was typed can be saved', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('The operation is insecure.', 'SecurityError')
    }
  })
  await page.goto('/papers')
  await expect(page.getByRole('alert').first()).toContainText('does not let Second Ink keep')
  await page.getByRole('button', { name: 'Log a question or a paper' }).click()
  await page.getByLabel('Paper', { exact: true }).fill('Harbour mock')
  await marked(page).topic.selectOption({ label: title })
  await marked(page).won.fill('1')
  await marked(page).outOf.fill('2')
  await page.getByRole('button', { name: 'Log it' }).click()
  await expect(page.getByText(/Nothing was logged; what you typed is still here/)).toBeVisible()
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save what I typed as CSV' }).click()
  expect(await readFile(await (await saving).path(), 'utf8')).toContain('Harbour mock')
})

test('500 questions are told and shown a few at a time', async ({ page }) => {
  await page.goto('/papers')
  await page.getByRole('button', { name: 'Log a question or a paper' }).waitFor()
  await putRecords(
    page,
    Array.from({ length: 500 }, (_, n) => [
      `paper/q${n}`,
      {
        schema: 1,
        id: `q${n}`,
        syllabusId: 'shoreline-science-level-2',
        topicId: ['longshore-drift', 'waves-and-tides', 'rocks-of-the-shore'][n % 3],
        day: `2026-${String(1 + (n % 12)).padStart(2, '0')}-15`,
        source: `Paper ${n % 12}`,
        question: String(n),
        marksWon: n % 4,
        marksOutOf: 4,
        points: [],
      },
    ]),
  )
  await page.reload()
  await expect(page.getByText('750 of 2,000 marks in 500 questions of 12 papers.')).toBeVisible()
  await expect(page.getByRole('button', { name: /^Remove/ })).toHaveCount(40)
  await page.getByRole('button', { name: 'Show older questions' }).click()
  await expect(page.getByRole('button', { name: /^Remove/ })).toHaveCount(80)
  await expectNoSideways(page)
})

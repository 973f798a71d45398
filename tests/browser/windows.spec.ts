/** Two windows of one browser write the same page: each is told, and neither's text is lost. */
import type { BrowserContext, Page } from '@playwright/test'
import { expect, expectMarked, expectNoViolations, test, topic, writingPage } from './app'
import { expectKept } from './records'

const kept = (page: Page) => expect(page.getByText('Kept', { exact: true })).toBeVisible()
const open = (page: Page) => page.getByText('is open in another window as well', { exact: false })
const asked = (page: Page) =>
  page.getByRole('alert').filter({ hasText: 'was written on in another window too' })
const beside = (page: Page) =>
  page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((done) => {
      const request = indexedDB.open('second-ink')
      request.onsuccess = () => done(request.result)
    })
    const store = database.transaction('records').objectStore('records')
    const [keys, values] = [store.getAllKeys(), store.getAll()]
    await new Promise((done) => (store.transaction.oncomplete = done))
    database.close()
    return Object.fromEntries(
      keys.result.map((key, i) => [String(key), (values.result[i] as { text?: string }).text]),
    )
  })

/** The page of the topic, begun in one window and open in a second one as well. */
async function inTwo(older: Page, context: BrowserContext): Promise<Page> {
  await older.goto(topic.check)
  await writingPage(older).fill('Waves come in.')
  await kept(older)
  const newer = await context.newPage()
  await newer.goto(topic.check)
  await expect(writingPage(newer)).toHaveValue('Waves come in.')
  return newer
}

/** Windows write before they hear of each other: the messages between them are held up. */
async function holdUp(...pages: readonly Page[]): Promise<void> {
  for (const page of pages)
    await page.evaluate(() => (BroadcastChannel.prototype.postMessage = () => undefined))
}

test('two windows on one page: both are told, an idle one goes along, and two texts are put together', async ({
  page: older,
  context,
}) => {
  const newer = await inTwo(older, context)
  await expect(open(newer)).toBeVisible()
  await expect(open(older)).toBeVisible()

  // Nothing unsaved in the older one: it shows what the newer wrote.
  await writingPage(newer).fill('Waves come in. Sand moves.')
  await expect(writingPage(older)).toHaveValue('Waves come in. Sand moves.')

  await holdUp(older, newer)
  await writingPage(older).fill('Waves come in. Sand moves. Older.')
  await kept(older)
  await writingPage(newer).fill('Waves come in. Sand moves. Newer.')
  await expect(asked(newer)).toBeVisible()
  await expect(writingPage(newer)).toHaveValue('Waves come in. Sand moves. Newer.')
  await expectNoViolations(newer)
  const texts = Object.values(await beside(newer))
  expect(texts).toContain('Waves come in. Sand moves. Older.')
  expect(texts).toContain('Waves come in. Sand moves. Newer.')

  // Undecided and closed: the question is there when the page is opened again.
  await newer.close()
  await older.close()
  const again = await context.newPage()
  await again.goto(topic.check)
  await expect(writingPage(again)).toHaveValue('Waves come in. Sand moves. Older.')
  await asked(again).getByText('See what the other window wrote').click()
  await expect(asked(again)).toContainText('Newer.')
  await asked(again).getByRole('button', { name: 'Put both together' }).click()
  await expect(asked(again)).toHaveCount(0)
  await expect(writingPage(again)).toHaveValue(/Older\.[^]*Newer\.|Newer\.[^]*Older\./)
  await kept(again)
  await again.reload()
  await expect(writingPage(again)).toHaveValue(/Older\.[^]*Newer\.|Newer\.[^]*Older\./)
  await expect(asked(again)).toHaveCount(0)
})

test('one of two is marked: the other says so, and what it wrote since is not lost', async ({
  page: older,
  context,
}) => {
  const newer = await inTwo(older, context)
  await newer.getByRole('button', { name: 'Stop and mark' }).click()
  await expectMarked(newer)
  await expect(older.getByText('was ended in another window', { exact: false })).toBeVisible()
  await writingPage(older).fill('Waves come in. And more.')
  await expectKept(older, 'draft', 'And more.')
  await older.reload()
  await expect(writingPage(older)).toHaveValue('Waves come in. And more.')

  // A drill in two windows is asked about in the same way.
  const answer = (page: Page) => page.getByRole('textbox', { name: 'Your answer' })
  for (const page of [older, newer])
    await page.goto('/drill?syllabus=shoreline-science-level-2&points=longshore-drift%3A2.1')
  await expect(open(older)).toBeVisible()
  await holdUp(older, newer)
  await answer(older).fill('Older.')
  await expectKept(older, 'round', 'Older.')
  await answer(newer).fill('Newer.')
  await expect(asked(newer)).toBeVisible()
  await expect(answer(newer)).toHaveValue('Newer.')
  await asked(newer).getByRole('button', { name: 'Take the other' }).click()
  await expect(asked(newer)).toHaveCount(0)
  await expect(answer(newer)).toHaveValue('Older.')
  await expectKept(newer, 'aside', 'Newer.')
})

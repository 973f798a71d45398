/** What browsers do to what is kept: no room, refusal, a closed database, records cleared. Told where it happens; no work lost. */
import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import {
  expect,
  expectMarked,
  expectNoSideways,
  expectNoViolations,
  someOfIt,
  test,
  topic,
  writeAndMark,
  writingPage,
} from './app'

const kept = (page: Page) => page.getByText('Kept', { exact: true })
const alertOf = (page: Page, words: string | RegExp) =>
  page.getByRole('alert').filter({ hasText: words })

/** From now on nothing can be put into the database, as where there is no room; or it can again. */
const room = (page: Page, there: boolean) =>
  page.evaluate((is) => {
    const world = globalThis as { realPut?: typeof IDBObjectStore.prototype.put }
    world.realPut ??= IDBObjectStore.prototype.put
    IDBObjectStore.prototype.put = is
      ? world.realPut
      : () => {
          throw new DOMException('The quota has been exceeded.', 'QuotaExceededError')
        }
  }, there)

/** Timers of just this length never fire. */
const without = (page: Page, length: number) =>
  page.addInitScript((never) => {
    const later = window.setTimeout.bind(window)
    window.setTimeout = ((work: () => void, ms?: number) =>
      ms === never ? 0 : later(work, ms)) as typeof window.setTimeout
  }, length)

async function savedBy(page: Page, name: string): Promise<string> {
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name }).click()
  return readFile(await (await saving).path(), 'utf8')
}

test('no room: the check page says so, gives the text as a file, and keeps it once there is room', async ({
  page,
  baseURL,
}) => {
  await without(page, 5_000)
  await page.goto(topic.check)
  // The browser's own limit, not a stand-in for it.
  const session = await page.context().newCDPSession(page)
  const quota = { origin: baseURL!, quotaSize: 1 }
  await session.send('Storage.overrideQuotaForOrigin', quota)
  const text = someOfIt.repeat(200)
  await writingPage(page).fill(text)
  const full = alertOf(page, 'There is no room left on this device')
  await expect(full).toBeVisible()
  await expect(page.getByText('Not kept', { exact: true })).toBeVisible()
  await expectNoViolations(page)
  expect(await savedBy(page, 'Save my text as a file')).toBe(text)
  await session.send('Storage.overrideQuotaForOrigin', { origin: baseURL! })
  await page.getByRole('button', { name: 'Try again now' }).click()
  await expect(full).toHaveCount(0)
  await expect(kept(page)).toBeVisible()
  await page.reload()
  await expect(writingPage(page)).toHaveValue(text)
})

test('no room while a draft, an edit, an answer or an entry is written: each page says so and gives it as a file', async ({
  page,
}) => {
  // It is tried again after five seconds: here after a quarter of one.
  await page.addInitScript(() => {
    const later = window.setTimeout.bind(window)
    window.setTimeout = ((work: () => void, ms?: number) =>
      later(work, ms === 5_000 ? 250 : ms)) as typeof window.setTimeout
  })
  const full = alertOf(page, 'There is no room left on this device')
  const endsWhenThereIsRoom = async () => {
    await expectNoViolations(page)
    await expectNoSideways(page)
    // It is tried again by itself.
    await room(page, true)
    await expect(full).toHaveCount(0)
  }

  await page.goto('/bring')
  await page.getByText('Or paste its text').click()
  await page.getByLabel('The text of a syllabus file').fill('# Pools\n- Limpets graze.')
  await room(page, false)
  await page.getByRole('button', { name: 'Read it' }).click()
  await expect(full).toBeVisible()
  expect(await savedBy(page, 'Save the draft as a file')).toContain('Limpets graze.')
  await endsWhenThereIsRoom()

  await page.goto('/edit?syllabus=shoreline-science-level-2')
  await room(page, false)
  await page.getByLabel('Title of the syllabus').fill('Shores of mine')
  await expect(full).toContainText('save them as a file')
  await endsWhenThereIsRoom()

  await page.goto('/drill?syllabus=shoreline-science-level-2&points=longshore-drift%3A2.1')
  const answer = page.getByRole('textbox', { name: 'Your answer' })
  await expect(answer).toBeFocused()
  await room(page, false)
  await answer.fill('Waves come in askew.')
  await expect(full).toBeVisible()
  await expect(page.getByText('Not kept', { exact: true })).toBeVisible()
  expect(await savedBy(page, 'Save what I wrote as a file')).toBe('2.1: Waves come in askew.')
  await endsWhenThereIsRoom()
  await expect(kept(page)).toBeVisible()

  await page.goto('/papers')
  await page.getByRole('button', { name: 'Log a question or a paper' }).click()
  await room(page, false)
  await page.getByLabel('Paper', { exact: true }).fill('Mock 1')
  await expect(full).toBeVisible()
  expect(await savedBy(page, 'Save what I typed as a file')).toContain('Mock 1')
  await endsWhenThereIsRoom()
})

test('a database that is closed under the page, or erased from another window, is opened again', async ({
  page,
  context,
}) => {
  await page.addInitScript(() => {
    const open = IDBFactory.prototype.open
    IDBFactory.prototype.open = function (...args) {
      const request = open.apply(this, args)
      request.addEventListener('success', () => {
        ;(globalThis as { database?: IDBDatabase }).database = request.result
      })
      return request
    }
  })
  await page.goto(topic.check)
  await writingPage(page).fill('Waves.')
  await expect(kept(page)).toBeVisible()
  await page.evaluate(() => {
    const { database } = globalThis as unknown as { database: IDBDatabase }
    database.close()
    database.dispatchEvent(new Event('close'))
  })
  await writingPage(page).fill('Waves come in.')
  await expect.poll(() => draftText(page)).toBe('Waves come in.')

  // Another window erases it: it must not wait for this one.
  const other = await context.newPage()
  await other.goto('/help')
  expect(
    await other.evaluate(
      () =>
        new Promise((done) => {
          const request = indexedDB.deleteDatabase('second-ink')
          request.onsuccess = () => done('gone')
          request.onblocked = () => done('blocked')
        }),
    ),
  ).toBe('gone')
  await writingPage(page).fill('Waves come in at an angle.')
  await expect.poll(() => draftText(page)).toBe('Waves come in at an angle.')

  // Closed for good: said, and the text is given.
  await page.evaluate(() => {
    IDBDatabase.prototype.transaction = () => {
      throw new DOMException('The database connection is closing.', 'InvalidStateError')
    }
  })
  await writingPage(page).fill('Waves come in at an angle. Sand moves.')
  await expect(alertOf(page, 'The browser closed the place where your work is kept')).toBeVisible()
  expect(await savedBy(page, 'Save my text as a file')).toContain('Sand moves.')
})

const draftText = (page: Page) =>
  page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((done) => {
      const request = indexedDB.open('second-ink')
      request.onupgradeneeded = () => request.result.createObjectStore('records')
      request.onsuccess = () => done(request.result)
    })
    const store = database.transaction('records').objectStore('records')
    const all = store.getAll()
    await new Promise((done) => (store.transaction.oncomplete = done))
    database.close()
    const drafts = all.result as { text?: string; savedAtMs?: number }[]
    return drafts.find(({ savedAtMs }) => savedAtMs !== undefined)?.text
  })

test('the first kept check says what the browser promised; a history that was cleared is missed', async ({
  page,
}) => {
  await page.addInitScript(() => {
    navigator.storage.persist = () => {
      localStorage.setItem('times', `${Number(localStorage.getItem('times') ?? 0) + 1}`)
      return Promise.resolve(false)
    }
    navigator.storage.persisted = () => Promise.resolve(false)
  })
  const said = page.getByText('This browser has not promised to keep it', { exact: false })
  await writeAndMark(page, someOfIt)
  await expect(said).toBeVisible()
  await expectNoViolations(page)
  await writeAndMark(page, someOfIt)
  await page.waitForLoadState('networkidle')
  await expect(said).toHaveCount(0)
  expect(await page.evaluate(() => localStorage.getItem('times'))).toBe('1')

  await page.goto('/')
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('second-ink-checks-seen')))
    .toContain('"checks":2')
  await page.goto('/help')
  await page.evaluate(
    () => new Promise((done) => (indexedDB.deleteDatabase('second-ink').onsuccess = done)),
  )
  await page.goto('/')
  const gone = alertOf(page, 'Your history is gone from this browser')
  await expect(gone).toContainText('2 checks were kept here')
  await expectNoViolations(page)
  await gone.getByRole('button', { name: 'Begin anew' }).click()
  await expect(gone).toHaveCount(0)
  await page.reload()
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  await expect(gone).toHaveCount(0)
})

test('what was typed in the last moment is kept when the page goes away, not by a timer', async ({
  page,
}) => {
  // The timer that keeps drafts.
  await without(page, 250)
  await page.goto(topic.check)
  await expect(page).toHaveTitle(/from memory/)
  await writingPage(page).fill('Waves come in.')
  await page.reload()
  await expect(writingPage(page)).toHaveValue('Waves come in.')

  await page.goto('/bring')
  await page.getByText('Or paste its text').click()
  await page.getByLabel('The text of a syllabus file').fill('# Pools\n- Limpets graze.')
  await page.getByRole('button', { name: 'Read it' }).click()
  const title = page.getByLabel('Title', { exact: true })
  await title.fill('Rock pools')
  await title.press('Tab')
  await page.reload()
  await page.getByRole('button', { name: 'Go on with the draft' }).click()
  await expect(title).toHaveValue('Rock pools')
  await page.goto(topic.check)
  await page.getByRole('button', { name: 'Stop and mark' }).click()
  await expectMarked(page)
})

/**
 * The browser's process is killed at random moments. While text is typed at most one second of it is lost; what is being kept
 * or restored is there whole or not at all; the history is never damaged. SECOND_INK_KILLS says how often (`npm run
 * test:kill`: 50), SECOND_INK_SEED repeats the moments.
 */
import type { Page } from '@playwright/test'
import { kindAt } from '../../src/lib/store/keys'
import { readRecord } from '../../src/lib/store/records'
import { longHistory, SYLLABUS_ID, syllabus } from '../bench/long-history'
import { expect, test as quiet, topic, writingPage } from './app'
import { newProfile, type Profile } from './killable'

const KILLS = Number(process.env['SECOND_INK_KILLS'] ?? 5)
const SEED = Number(process.env['SECOND_INK_SEED'] ?? Date.now() % 1_000_000)
/** What the killed browser may lose of what was typed. */
const MOST_LOST_MS = 1_000

/** Numbers from 0 to 1. The multiplier is that of Numerical Recipes (from memory). */
function numbers(seed: number): () => number {
  let state = seed >>> 0
  return () => (state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0) / 2 ** 32
}

const test = quiet.extend<{ profile: Profile }>({
  // eslint-disable-next-line no-empty-pattern
  profile: async ({}, use) => {
    const profile = newProfile()
    await use(profile)
    await profile.remove()
  },
})
test.describe.configure({ mode: 'serial' })

type Kept = Map<string, unknown>

const checks = longHistory(Date.parse('2027-03-01T12:00:00Z'))
const history: readonly [string, unknown][] = [
  [`syllabus/${SYLLABUS_ID}`, syllabus],
  ...checks.checks.slice(0, 40).map((one): [string, unknown] => [`check/${one.id}`, one]),
  ...checks.pages.slice(0, 40).map((one): [string, unknown] => [`page/${one.id}`, one]),
]

/** Everything in the database, raw; `put` goes in first. */
async function kept(page: Page, put: readonly [string, unknown][] = []): Promise<Kept> {
  const entries = await page.evaluate(async (records) => {
    const database = await new Promise<IDBDatabase>((done, fail) => {
      const request = indexedDB.open('second-ink')
      request.onupgradeneeded = () => request.result.createObjectStore('records')
      request.onsuccess = () => done(request.result)
      request.onerror = () => fail(request.error ?? new Error('no database'))
    })
    const transaction = database.transaction('records', 'readwrite')
    const store = transaction.objectStore('records')
    for (const [key, record] of records) store.put(record, key)
    const [keys, values] = [store.getAllKeys(), store.getAll()]
    await new Promise((done) => (transaction.oncomplete = done))
    database.close()
    return keys.result.map((key, i): [string, unknown] => [String(key), values.result[i]])
  }, put)
  return new Map(entries)
}

/** The history is as it was, byte for byte, and all of it can be read. */
function expectWhole(now: Kept, before: readonly [string, unknown][]): void {
  for (const [key, record] of before)
    expect(JSON.stringify(now.get(key)), key).toBe(JSON.stringify(record))
  for (const [key, raw] of now) {
    const kind = kindAt(key)
    if (kind) expect(readRecord(kind, raw), key).toMatchObject({ ok: true })
  }
}

const home = (baseURL: string | undefined) => `${baseURL}/help`
/** The page can be written on before its draft is there: with the title the draft has come too. */
async function openPage(page: Page, baseURL: string | undefined): Promise<void> {
  await page.goto(baseURL + topic.check)
  await expect(page.getByRole('heading', { name: topic.title })).toBeVisible()
}
const told = (what: string, figures: Record<string, unknown>) =>
  console.log(`${what}: ${JSON.stringify({ seed: SEED, ...figures })}`)
const after = (ms: number) => new Promise((done) => setTimeout(done, ms))

test('while text is typed', async ({ profile, baseURL }) => {
  test.setTimeout(60_000 + KILLS * 60_000)
  const random = numbers(SEED)
  const lost: number[] = []
  let typed = ''
  let running = await profile.start()
  await running.page.goto(home(baseURL))
  await kept(running.page, history)
  await openPage(running.page, baseURL)
  for (let round = 0; round < KILLS; round += 1) {
    const { page, kill } = running
    const sentMs: number[] = []
    const began = typed.length
    let over = false
    const killed = after(300 + random() * 4_000).then(async () => {
      const atMs = await kill()
      over = true
      return atMs
    })
    await writingPage(page).press('End')
    while (!over) {
      const letter = typed.length % 7 === 6 ? ' ' : 'abcdefghij'[typed.length % 10]!
      const atMs = Date.now()
      try {
        await page.keyboard.type(letter)
      } catch {
        break
      }
      typed += letter
      sentMs.push(atMs)
      await after(20 + random() * 60).catch(() => undefined)
    }
    const killedMs = await killed
    // The process is gone: what the next one finds is what was kept. What was lost is typed again: the text goes on from there.
    running = await profile.start()
    await running.page.goto(home(baseURL))
    expectWhole(await kept(running.page), history)
    await openPage(running.page, baseURL)
    const found = await writingPage(running.page).inputValue()
    expect(typed.startsWith(found) || found.startsWith(typed)).toBe(true)
    const firstLost = sentMs[found.length - began]
    lost.push(firstLost === undefined ? 0 : killedMs - firstLost)
    typed = found
  }
  const worst = Math.max(...lost)
  told('Killed while typing', { kills: lost.length, worstLossMs: worst, damaged: 0, lost })
  expect(worst).toBeLessThanOrEqual(MOST_LOST_MS)
})

test('while a check is being kept: both the check and the end of its draft, or neither', async ({
  profile,
  baseURL,
}) => {
  const kills = Math.ceil(KILLS / 5)
  test.setTimeout(120_000 + kills * 60_000)
  const random = numbers(SEED + 1)
  // Each page is another one, so that it is kept before it is marked.
  const textOf = (round: number) => `${topic.points[0]!.text} ${round}.`
  const draftKey = `draft/shoreline-science-level-2/${topic.check.split('topic=')[1]}`
  let before: readonly [string, unknown][] = history
  let usualMs = 0
  const found = { before: 0, after: 0 }

  async function press(page: Page, text: string): Promise<void> {
    await openPage(page, baseURL)
    await writingPage(page).fill(text)
    await expect(page.getByText('Kept', { exact: true })).toBeVisible()
    await page.getByRole('button', { name: 'Stop and mark' }).click({ noWaitAfter: true })
  }

  let running = await profile.start()
  await running.page.goto(home(baseURL))
  await kept(running.page, history)
  // The first time it is not killed before it is done: that says how long it takes on this machine.
  for (let round = 0; round <= kills; round += 1) {
    const { page, kill } = running
    await press(page, textOf(round))
    const pressedMs = Date.now()
    if (round === 0) {
      await page.waitForURL(/\/marked/)
      usualMs = Date.now() - pressedMs
    } else await after(random() * usualMs * 1.1)
    await kill()

    running = await profile.start()
    await running.page.goto(home(baseURL))
    const now = await kept(running.page)
    expectWhole(now, before)
    const known = new Set(before.map(([key]) => key))
    const fresh = [...now].filter(([key]) => /^(?:check|page)\//.test(key) && !known.has(key))
    const draft = now.get(draftKey) as { text: string } | undefined
    if (fresh.length === 0) {
      found.before += 1
      expect(draft?.text).toBe(textOf(round))
    } else {
      found.after += 1
      expect(fresh.map(([key]) => key.split('/')[0])).toEqual(['check', 'page'])
      expect(draft).toBeUndefined()
    }
    before = [...before, ...fresh]
  }
  told('Killed while a check was kept', { kills, ...found, damaged: 0 })
})

test('while a backup is restored: all of it or nothing', async ({ profile, baseURL }) => {
  const kills = Math.ceil(KILLS / 5)
  test.setTimeout(120_000 + kills * 60_000)
  const random = numbers(SEED + 2)
  const backup = {
    app: 'Second Ink',
    backup: 1,
    madeAtMs: 1,
    records: {
      check: checks.checks.slice(40, 1_000),
      page: checks.pages.slice(40, 240),
      draft: [],
      syllabus: [],
      paper: [],
      settings: [],
    },
    setAside: [],
  }
  const coming = [
    ...backup.records.check.map(({ id }) => `check/${id}`),
    ...backup.records.page.map(({ id }) => `page/${id}`),
  ]
  let usualMs = 0
  const found = { before: 0, after: 0 }

  let running = await profile.start()
  await running.page.goto(home(baseURL))
  await kept(running.page, history)
  for (let round = 0; round <= kills; round += 1) {
    const { page, kill } = running
    await page.goto(`${baseURL}/data`)
    const undo = page.getByRole('button', { name: 'Undo the last restore' })
    await expect(page.getByText('marked pages', { exact: false })).toBeVisible()
    await page.getByLabel('Open a backup file').setInputFiles({
      name: 'backup.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(backup)),
    })
    await page.getByRole('button', { name: 'Restore it' }).click({ noWaitAfter: true })
    const pressedMs = Date.now()
    if (round === 0) {
      await undo.waitFor()
      usualMs = Date.now() - pressedMs
    } else await after(random() * usualMs)
    await kill()

    running = await profile.start()
    await running.page.goto(home(baseURL))
    const now = await kept(running.page)
    expectWhole(now, history)
    const came = coming.filter((key) => now.has(key)).length
    expect([0, coming.length]).toContain(came)
    expect(now.has('made/restore')).toBe(came > 0)
    found[came > 0 ? 'after' : 'before'] += 1
    // Undone, it is as it was: the next round begins from there.
    if (came > 0) {
      await running.page.goto(`${baseURL}/data`)
      await running.page.getByRole('button', { name: 'Undo the last restore' }).click()
      await expect(running.page.getByText('Undone:', { exact: false })).toBeVisible()
      const undone = await kept(running.page)
      expect(coming.filter((key) => undone.has(key))).toEqual([])
      expectWhole(undone, history)
    }
  }
  told('Killed while a backup was restored', { kills, ...found, damaged: 0 })
})

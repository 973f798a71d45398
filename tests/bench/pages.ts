/**
 * npm run bench:pages [-- COUNT]: how long pages take to be usable with 5,000 checks over 60 topics, in a real browser on this machine,
 * with the built app. "Opened" counts from the request of the page, "gone to" from the press of a link in the app, both to the second
 * frame after what the page is for stands there. Nothing is asserted: a machine has moods.
 */
import { chromium, type Page } from '@playwright/test'
import { findBrowser } from '../../src/cli/browser.js'
import { serve } from '../../src/cli/serve.js'
import { longHistory, syllabus, SYLLABUS_ID, TOPICS } from './long-history'

const RUNS = 15
const CHECKS = Number(process.argv[2] ?? 5_000)
const TOPIC = `/topic?syllabus=${SYLLABUS_ID}&topic=topic-7`
const PAGES = [
  { name: 'Today', path: '/', ready: 'main section.lead a.button.main', from: '/help' },
  { name: 'a topic', path: TOPIC, ready: 'main tbody tr', from: '/' },
  {
    name: 'a syllabus',
    path: `/syllabus?syllabus=${SYLLABUS_ID}`,
    ready: 'main ol.map a',
    from: '/help',
  },
]

async function fill(page: Page): Promise<void> {
  await page.goto('/help')
  const records = [
    [`syllabus/${syllabus.id}`, syllabus] as const,
    ...(({ checks, pages }) => [
      ...checks.map((check) => [`check/${check.id}`, check] as const),
      ...pages.map((one) => [`page/${one.id}`, one] as const),
    ])(longHistory(Date.now(), CHECKS)),
  ]
  await page.evaluate(async (entries) => {
    const database = await new Promise<IDBDatabase>((done, fail) => {
      const request = indexedDB.open('second-ink')
      request.onupgradeneeded = () => request.result.createObjectStore('records')
      request.onsuccess = () => done(request.result)
      request.onerror = () => fail(request.error ?? new Error('no database'))
    })
    const transaction = database.transaction('records', 'readwrite')
    for (const [key, record] of entries) transaction.objectStore('records').put(record, key)
    await new Promise((done) => (transaction.oncomplete = done))
    database.close()
  }, records)
}

/** In the page: milliseconds from `start` to the second frame after `ready` matches. Text, because tsx names functions. */
const untilReady = (page: Page, ready: string, start: number): Promise<number> =>
  page.evaluate<number>(`new Promise((done) => {
    const look = () => {
      if (!document.querySelector(${JSON.stringify(ready)})) requestAnimationFrame(look)
      else requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now() - ${start})))
    }
    look()
  })`)

async function opened(page: Page, path: string, ready: string): Promise<number> {
  await page.goto(path, { waitUntil: 'commit' })
  return untilReady(page, ready, 0)
}

/** A link put into the page and pressed there, so that the app's own navigation takes it. */
async function goneTo(page: Page, from: string, path: string, ready: string): Promise<number> {
  await page.goto(from)
  await page.waitForLoadState('networkidle')
  const start = await page.evaluate((href) => {
    const link = Object.assign(document.createElement('a'), { href })
    document.querySelector('main')?.append(link)
    const now = performance.now()
    link.click()
    return now
  }, path)
  return untilReady(page, ready, start)
}

function tell(what: string, times: number[]): void {
  const sorted = [...times].sort((a, b) => a - b)
  const at = (share: number) => sorted[Math.floor((sorted.length - 1) * share)]!.toFixed(0)
  console.log(`${what}: median ${at(0.5)} ms, slowest ${at(1)} ms of ${times.length}`)
}

const { url, close } = await serve({ port: 0 })
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
})
try {
  const context = await browser.newContext({ baseURL: url, viewport: { width: 1280, height: 900 } })
  const page = await context.newPage()
  await fill(page)
  // The first reading of a long history leaves one text of it beside the records; what is measured comes after.
  await opened(page, '/', PAGES[0]!.ready)
  await page.waitForTimeout(6_000)
  console.log(`${CHECKS} checks of ${TOPICS} topics`)
  for (const { name, path, ready, from } of PAGES) {
    const times = { opened: [] as number[], goneTo: [] as number[] }
    await opened(page, path, ready)
    for (let run = 0; run < RUNS; run += 1) {
      times.opened.push(await opened(page, path, ready))
      times.goneTo.push(await goneTo(page, from, path, ready))
    }
    tell(`${name}, opened`, times.opened)
    tell(`${name}, gone to`, times.goneTo)
  }
} finally {
  await browser.close()
  await close()
}

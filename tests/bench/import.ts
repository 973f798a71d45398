/**
 * npm run bench:browser -- tests/bench/import.ts: a PDF of 40 pages and one of 500 brought to the built app in Chromium: how soon its first page is seen, how long
 * until the draft of its syllabus stands there, and what memory the page's process takes at most (on Linux, as the system counts it:
 * the page and its workers together). Nothing is asserted: a machine has moods.
 */
import { readFileSync } from 'node:fs'
import { chromium, type Browser } from '@playwright/test'
import { findBrowser } from '../../src/cli/browser.js'
import { serve } from '../../src/cli/serve.js'

/** A syllabus of many pages as a browser prints it: a heading and some points on each. */
async function manyPages(browser: Browser, pages: number): Promise<Buffer> {
  const page = await browser.newPage()
  const point = (p: number, n: number) =>
    `<p>${p}.${n} Waves reach stretch ${p} of the shore at an angle, and the shingle of sort ${n} moves along it.</p>`
  await page.setContent(
    Array.from(
      { length: pages },
      (_, p) =>
        `<section style="break-after: page"><h2>${p + 1} Stretch ${p + 1} of the shore</h2>${[1, 2, 3, 4, 5].map((n) => point(p + 1, n)).join('')}</section>`,
    ).join(''),
  )
  const made = await page.pdf({ format: 'A4' })
  await page.close()
  return made
}

/** Megabytes of the largest renderer; undefined where the system does not tell. */
async function largest(browser: Browser): Promise<number | undefined> {
  const session = await browser.newBrowserCDPSession()
  const { processInfo } = await session.send('SystemInfo.getProcessInfo')
  await session.detach()
  try {
    const sizes = processInfo
      .filter(({ type }) => type === 'renderer')
      .map(({ id }) =>
        Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1]),
      )
    return Math.max(...sizes.filter(Number.isFinite)) / 1_000
  } catch {
    return undefined
  }
}

async function bring(browser: Browser, url: string, name: string, buffer: Buffer): Promise<void> {
  const page = await browser.newPage({ baseURL: url })
  await page.goto('/bring')
  await page.waitForLoadState('networkidle')
  // As a pointer does on its way to the button: the reader is fetched meanwhile.
  await page.getByRole('region', { name: 'Bring a syllabus' }).hover()
  await page.waitForTimeout(2_000)
  const before = await largest(browser)
  const start = performance.now()
  await page
    .getByLabel('Open a syllabus file')
    .setInputFiles({ name: 'shore.pdf', mimeType: '', buffer })
  await page.getByText(/Page 1 of \d+/).waitFor()
  await page.locator('canvas').first().waitFor()
  const seen = performance.now() - start
  let most = 0
  let reading = true
  const watching = (async () => {
    while (reading) {
      most = Math.max(most, (await largest(browser)) ?? 0)
      await new Promise((done) => setTimeout(done, 250))
    }
  })()
  const asked = performance.now()
  await page.getByRole('button', { name: /^Read th/ }).click()
  await page
    .getByRole('heading', { name: 'A draft of your syllabus' })
    .waitFor({ timeout: 600_000 })
  const drafted = performance.now() - asked
  reading = false
  await watching
  console.log(
    `${name}: first page seen after ${seen.toFixed(0)} ms, draft after ${(drafted / 1000).toFixed(1)} s more, at most ${most.toFixed(0)} MB (${before?.toFixed(0)} before)`,
  )
  await page.close()
}

const { url, close } = await serve({ port: 0 })
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
})
try {
  await bring(browser, url, '40 pages', readFileSync('tests/fixtures/import/forty-pages.pdf'))
  await bring(browser, url, '500 pages', await manyPages(browser, 500))
} finally {
  await browser.close()
  await close()
}

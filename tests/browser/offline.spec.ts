/** After one visit the app works with the network off; a new version waits and never reloads by itself. */
import { appendFileSync, cpSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { serve } from '../../src/cli/serve.js'
import {
  alsoOurs,
  expect,
  expectMarked,
  someOfIt,
  test,
  topic,
  writeAndMark,
  writingPage,
} from './app'

test.use({ serviceWorkers: 'allow' })

/** One visit, until everything is kept. */
async function visit(page: Page) {
  await page.goto('/')
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined))
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null), {
      timeout: 60_000,
    })
    .toBe(true)
}

test('after one visit a page is written, marked and read again with the network off', async ({
  page,
  context,
}) => {
  await visit(page)
  await context.setOffline(true)
  await page.reload()
  await expect(page.getByRole('link', { name: 'Second Ink' })).toBeVisible()
  await page.goto(topic.check)
  await page.reload()
  await expect(writingPage(page)).toBeVisible()
  await writeAndMark(page, someOfIt)
  await page.reload()
  await expectMarked(page)
  await page.goto(topic.atHome)
  await expect(page.getByRole('heading', { level: 1, name: topic.title })).toBeVisible()
})

test('it can be installed: the manifest and its icons are there', async ({ page, request }) => {
  await page.goto('/')
  const address = await page.locator('link[rel=manifest]').getAttribute('href')
  const answer = await request.get(new URL(address!, page.url()).href)
  expect(answer.headers()['content-type']).toContain('application/manifest+json')
  const { icons } = (await answer.json()) as { icons: { src: string; type: string }[] }
  for (const { src, type } of icons) {
    const icon = await request.get(`/${src}`)
    expect(icon.status()).toBe(200)
    expect(icon.headers()['content-type']).toContain(type)
  }
  const worker = await request.get('/service-worker.js')
  expect(worker.headers()['content-type']).toContain('text/javascript')
  expect(worker.headers()['cache-control']).toBe('no-cache')
})

test('a new version waits while something is typed, and is loaded when it is asked for', async ({
  browser,
}, testInfo) => {
  const folder = testInfo.outputPath('build')
  cpSync('build', folder, { recursive: true })
  const { url, close } = await serve({ port: 0, folder })
  alsoOurs(url)
  const context = await browser.newContext({ serviceWorkers: 'allow', baseURL: url })
  try {
    const page = await context.newPage()
    await visit(page)
    const script = join(folder, 'service-worker.js')
    appendFileSync(script, '\n// The next version.\n')
    await page.goto('/data')
    const offer = page.getByText('A new version is ready.')
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update())
    await expect(offer).toBeVisible()
    await page.evaluate(() => document.body.dispatchEvent(new Event('input', { bubbles: true })))
    await expect(offer).toBeHidden()
    await page.getByRole('link', { name: 'Today' }).click()
    await expect(offer).toBeVisible()
    const reloaded = page.waitForEvent('load')
    await page.getByRole('button', { name: 'Load it' }).click()
    await reloaded
    await expect(page.getByRole('link', { name: 'Second Ink' })).toBeVisible()
    await expect(offer).toBeHidden()
  } finally {
    await context.close()
    await close()
  }
})

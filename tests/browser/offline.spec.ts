/** After one visit the app works with the network off; a new version waits and never reloads by itself. */
import { appendFileSync, cpSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { PNG } from 'pngjs'
import { parse } from 'yaml'
import { serve } from '../../src/cli/serve.js'
import { topicId } from '../../src/lib/syllabus'
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

test.use({ serviceWorkers: 'allow', apart: true })

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

/** What ships, as its authors wrote it: where each first topic is, and the text of its first point. */
const shipped = readdirSync('syllabi')
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => {
    const { title, topics } = parse(readFileSync(`syllabi/${name}`, 'utf8')) as {
      title: string
      topics: { title: string; points: { text: string }[] }[]
    }
    const place = `syllabus=${topicId(title)}&topic=${topicId(topics[0]!.title)}`
    return { place, text: topics[0]!.points[0]!.text.replace(/\s+/g, ' ') }
  })

test('with the network off and the server gone, every room of the app works', async ({
  browser,
}) => {
  const { url, close } = await serve({ port: 0 })
  alsoOurs(url)
  const context = await browser.newContext({ serviceWorkers: 'allow', baseURL: url })
  const page = await context.newPage()
  await visit(page)
  await context.setOffline(true)
  await close()

  for (const { place, text } of shipped) {
    await page.goto(`/sheet?${place}`)
    await expect(page.locator('main')).toContainText(text.slice(0, 30))
  }
  await page.goto('/drill?syllabus=shoreline-science-level-2&points=longshore-drift%3A2.1')
  await expect(page.getByRole('textbox', { name: 'Your answer' })).toBeFocused()

  await page.goto('/bring')
  const lines = page.getByRole('list', { name: 'Lines of the draft' })
  const open = page.getByLabel('Open a syllabus file')
  await page.waitForLoadState('networkidle')
  await open.setInputFiles('tests/fixtures/import/coast.docx')
  await expect(lines).toContainText('Backwash runs straight down')
  await page.getByRole('button', { name: 'Throw the draft away' }).click()
  await page.getByRole('button', { name: 'Throw it away' }).click()
  await open.setInputFiles('tests/fixtures/import/coast.pdf')
  await page.getByRole('button', { name: 'Read these 3 pages' }).click()
  await expect(lines).toContainText('Backwash runs straight down')
  await page.getByRole('button', { name: 'Keep this syllabus' }).click()
  await page.getByRole('link', { name: /^Check yourself on 3.1/ }).click()
  await writingPage(page).fill('Backwash runs straight down the beach under gravity.')
  await page.keyboard.press('Control+Enter')
  await expect(page.getByText('1 of 3 points full', { exact: false }).first()).toBeVisible()

  await page.goto('/data')
  await page.getByText('Choose what goes into the file').click()
  await page.getByLabel('Your name, as your tutor knows you').fill('Nell Rook')
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save a file for my tutor' }).click()
  const recall = await (await saving).path()
  await page.goto('/group')
  await page.getByLabel('Open pupils’ files').setInputFiles({
    name: 'recall.json',
    mimeType: 'application/json',
    buffer: readFileSync(recall),
  })
  const table = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save all of this as a table (CSV)' }).click()
  await table
  await page.getByRole('link', { name: 'Nell Rook' }).click()
  await page.getByRole('link', { name: /^Mark it yourself/ }).click()
  await expect(page.getByText('are hidden')).toBeVisible()
  for (const [path, name] of [
    ['/papers', 'Papers'],
    ['/plan', 'Plan'],
    ['/tonight', 'Tonight'],
    ['/syllabi', 'Syllabi'],
    ['/settings', 'Settings'],
    ['/help', 'Help'],
  ] as const) {
    await page.goto(path)
    await expect(page.getByRole('link', { name }).first()).toBeVisible()
  }
  await context.close()
})

/** W3C, Web Application Manifest, "Icon masks and safe zone": a circle with a radius of 2/5 of the icon's width. */
function outsideSafeZone(png: PNG): number {
  const { width, height, data } = png
  const colour = (at: number) => data.readUInt32BE(at * 4)
  let outside = 0
  for (let at = 0; at < width * height; at += 1) {
    const away = Math.hypot(
      (at % width) + 0.5 - width / 2,
      Math.floor(at / width) + 0.5 - height / 2,
    )
    if (away > width * 0.4 && colour(at) !== colour(0)) outside += 1
  }
  return outside
}

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
  const maskable = icons.find(({ src }) => src.includes('maskable'))!
  const drawn = PNG.sync.read(await (await request.get(`/${maskable.src}`)).body())
  expect(drawn.data.readUInt32BE(0) & 0xff).toBe(0xff)
  expect(outsideSafeZone(drawn)).toBe(0)
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
    await expect(page.getByText('A new version waits until you leave this page')).toBeVisible()
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

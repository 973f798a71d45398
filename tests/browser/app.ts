/** What the browser tests share: the app as a person meets it, by roles and visible names. */
import { readFileSync } from 'node:fs'
import { test as base, expect, type BrowserContext, type Page } from '@playwright/test'
import { parse } from 'yaml'
import { expectNoViolations } from './axe'
import { isPicture, KeptPage } from './kept-page'

export { expect, expectNoViolations }

interface SyllabusFile {
  readonly title: string
  readonly topics: readonly {
    readonly title: string
    readonly points: readonly { readonly ref: string; readonly text: string }[]
  }[]
}

/** The shipped syllabus, as its file has it. */
export const shipped = parse(
  readFileSync('syllabi/shoreline-science-2.yaml', 'utf8'),
) as SyllabusFile

/** The topic that every test checks. */
export const topic = {
  title: 'Longshore drift',
  check: '/check?syllabus=shoreline-science-level-2&topic=longshore-drift',
  atHome: '/topic?syllabus=shoreline-science-level-2&topic=longshore-drift',
  points: shipped.topics.find(({ title }) => title === 'Longshore drift')!.points,
}

/** The first points of the topic typed word for word; the others are left out. */
export const someOfIt = topic.points
  .slice(0, 4)
  .map(({ text }) => text)
  .join('\n')

/** What the servers of the tests answer for; a test that starts one of its own adds it. */
const ours = new Set<string>()

export const alsoOurs = (url: string) => ours.add(`${url}/`)

/**
 * A page that is loaded is drawn before it listens, and what is pressed before that is lost. SvelteKit puts in the place
 * where it announces pages once they listen.
 */
function listensFirst(page: Page): void {
  const listening = () => page.locator('#svelte-announcer').waitFor({ state: 'attached' })
  const goto = page.goto.bind(page)
  const reload = page.reload.bind(page)
  page.goto = async (...to) => {
    const answer = await goto(...to)
    if (!isPicture(page.url())) await listening()
    return answer
  }
  page.reload = async (...how) => {
    const answer = await reload(...how)
    await listening()
    return answer
  }
}

/** In the test that runs. */
const heard: string[] = []

/** Whatever of a context speaks: its pages, their workers and its service worker. */
function listen(context: BrowserContext): void {
  context.on('page', listensFirst)
  context.on('weberror', (fault) => heard.push(`error: ${fault.error().message}`))
  context.on('console', (message) => {
    const { url } = message.location()
    // A picture that is opened by itself looks for an icon of its own.
    if (message.type() === 'error' && !url.endsWith('/favicon.ico'))
      heard.push(`console: ${message.text()} ${url}`)
  })
  context.on('request', (request) => {
    const url = request.url()
    const own = [...ours].some((start) => url.startsWith(start))
    if (!own && !/^(?:data|blob):/.test(url)) heard.push(`request: ${url}`)
  })
}

/**
 * Every test fails on an error in a console (a breach of the content security policy is one) and on any request to another
 * host, in every window that it opens: no text leaves the browser.
 */
export const test = base.extend<{ quiet: void; apart: boolean }, { kept: KeptPage }>({
  // Set where a test needs a browser that has never been here, with nothing fetched yet.
  apart: [false, { option: true }],
  kept: [
    async ({ browser }, use) => {
      browser.on('context', listen)
      await use(new KeptPage())
    },
    { scope: 'worker' },
  ],
  context: async ({ browser, kept, apart, baseURL }, use, testInfo) => {
    if (apart) {
      const context = await browser.newContext()
      await use(context)
      return context.close()
    }
    await use((await kept.open(browser)).context)
    await kept.close(testInfo.status === testInfo.expectedStatus, baseURL!)
  },
  page: async ({ browser, context, kept, apart }, use) =>
    use(apart ? await context.newPage() : (await kept.open(browser)).page),
  quiet: [
    // The window is there before, and put in order after.
    async ({ context: _, baseURL }, use) => {
      alsoOurs(baseURL!)
      heard.length = 0
      await use()
      expect(heard).toEqual([])
    },
    { auto: true },
  ],
})

/** Nothing sticks out to the side. */
export async function expectNoSideways(page: Page): Promise<void> {
  await expect
    .poll(() =>
      page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      ),
    )
    .toBeLessThanOrEqual(0)
}

/** As it stands: nothing sticks out, and no violation by day or by night. The page is left in the scheme that it was in. */
export async function expectSound(page: Page): Promise<void> {
  await expectNoSideways(page)
  await page.emulateMedia({ colorScheme: 'dark' })
  await expectNoViolations(page)
  await page.emulateMedia({ colorScheme: 'light' })
  await expectNoViolations(page, 'colours')
  await page.emulateMedia({ colorScheme: null })
}

/** The same at each of these widths; the page is left at the first. */
export async function expectSoundAt(page: Page, widths: readonly number[]): Promise<void> {
  const [first = 0, ...others] = widths
  for (const width of others) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSideways(page)
    await expectNoViolations(page, 'all but colours')
  }
  await page.setViewportSize({ width: first, height: 900 })
  await expectSound(page)
}

export const writingPage = (page: Page) => page.getByRole('textbox', { name: 'Your page' })

/** Writes a page on the topic and has it marked; ends on the marked page. */
export async function writeAndMark(page: Page, text: string): Promise<void> {
  await page.goto(topic.check)
  await writingPage(page).fill(text)
  await page.getByRole('button', { name: 'Stop and mark' }).click()
  await expectMarked(page)
}

/** The marked page of the topic is open. */
export async function expectMarked(page: Page): Promise<void> {
  await expect(page).toHaveURL(/\/marked\?check=/)
  await expect(page.getByRole('heading', { level: 1, name: topic.title })).toBeVisible()
}

/** The point as it stands beside the page. */
export const pointNote = (page: Page, ref: string) =>
  page.getByRole('note', { name: `Point ${ref}`, exact: true })

/** The word that says the mark of a point, and opens the choice of another. */
export const markWord = (page: Page, ref: string) =>
  page.getByRole('button', {
    name: new RegExp(`: change the mark of point ${ref.replace('.', '\\.')}$`),
  })

/** A mark that the point does not have now: what the marker gave is not this test's affair. */
export async function anotherMark(page: Page, ref: string): Promise<'full' | 'missed'> {
  return /^missed/i.test((await markWord(page, ref).innerText()).trim()) ? 'full' : 'missed'
}

/** Changes the mark of a point; gives the words of the new one. */
export async function changeMark(page: Page, ref: string): Promise<string> {
  const mark = await anotherMark(page, ref)
  await markWord(page, ref).click()
  await page
    .getByRole('group', { name: `Your mark for point ${ref}` })
    .getByRole('button', { name: mark })
    .click()
  await expect(markWord(page, ref)).toContainText(new RegExp(`^\\s*${mark}`, 'i'))
  return mark
}
